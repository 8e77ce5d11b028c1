import type { QuestionView } from '../../lib/types/QuestionView';

/** How a question is answered. */
export type Shape = 'one' | 'several' | 'value' | 'count' | 'types';

/** Tells it from the view: the few that are not a choice are known by their ids. */
export function shapeOf(question: QuestionView): Shape {
  if (question.id.startsWith('values.')) return 'value';
  if (question.id === 'tube_count') return 'count';
  if (question.id === 'tube_list') return 'types';
  return question.several ? 'several' : 'one';
}

/** Whether an answer needs a Next; a single choice is committed at the tap. */
export function needsNext(question: QuestionView): boolean {
  return shapeOf(question) !== 'one';
}
