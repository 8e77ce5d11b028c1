import { backend } from '../lib/backend';
import type { Route, Turn } from '../lib/route/route';
import type { InspectionView } from '../lib/types/InspectionView';
import type { QuestionView } from '../lib/types/QuestionView';

/** The screen of what the core asks next; the verdict where it asks nothing more. */
export function nextAsked(view: InspectionView): Route {
  if (!view.question) return { screen: 'verdict', inspection: view.id };
  return { screen: 'question', inspection: view.id, turn: 'q', question: view.question.id };
}

/** The screen after an answer: the next question of the same kind, then the verdict. */
export function afterAnswer(view: InspectionView, turn: Turn): Route {
  const also = view.also[0];
  if (turn !== 'also' || !also) return nextAsked(view);
  return { screen: 'question', inspection: view.id, turn, question: also.id };
}

/** A question by its id, whether it is its turn or it is looked at again. */
export async function questionFor(view: InspectionView, id: string): Promise<QuestionView> {
  const known = [view.question, ...view.also].find((question) => question?.id === id);
  if (known) return known;
  if (!id.startsWith('values.')) return backend.showQuestion(id);
  // The core words a value's question only in its turn; looked at again, its name has to do.
  const text = view.findings.find(({ path }) => path === id)?.name ?? id;
  return { id, text, why: '', how: '', caution: null, several: false, answers: [] };
}
