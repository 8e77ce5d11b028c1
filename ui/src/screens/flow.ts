import { backend } from '../lib/backend';
import { asking, type Route, type Turn } from '../lib/route/route';
import type { InspectionView } from '../lib/types/InspectionView';
import type { QuestionView } from '../lib/types/QuestionView';

/** The screen of what the core asks next, a question or a reading; the verdict where it asks nothing more. */
export function nextAsked(view: InspectionView): Route {
  if (!view.question) return { screen: 'verdict', inspection: view.id };
  return asking(view.id, 'q', view.question.id);
}

/** The screen after an answer: the next question of the same kind, then the verdict. */
export function afterAnswer(view: InspectionView, turn: Turn): Route {
  const open = turn === 'also' ? view.also[0] : turn === 'hint' ? view.hints[0] : undefined;
  if (open) return asking(view.id, turn, open.id);
  // Cautions and hints are looked at from the verdict, and lead back to it.
  if (turn === 'also' || turn === 'hint') return { screen: 'verdict', inspection: view.id };
  return nextAsked(view);
}

/** A question by its id, whether it is its turn or it is looked at again. */
export async function questionFor(view: InspectionView, id: string): Promise<QuestionView> {
  const open = [view.question, ...view.also, ...view.hints];
  return open.find((question) => question?.id === id) ?? backend.showQuestion(id);
}
