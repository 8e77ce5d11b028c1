import type { QuestionView } from '../../lib/types/QuestionView';

/** Whether an answer needs a Next; a single choice is committed at the tap. */
export function needsNext(question: QuestionView): boolean {
  return question.entry !== 'one';
}
