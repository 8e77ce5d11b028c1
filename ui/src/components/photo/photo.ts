import { numberOf } from '../../lib/photo/marks';
import type { InspectionView } from '../../lib/types/InspectionView';
import type { Mark } from '../../lib/types/Mark';
import type { PhotoView } from '../../lib/types/PhotoView';
import { has, say } from '../../lib/words';

/** The path that photos of a question are kept under, found already or not. */
export function photoPath(question: string): string {
  if (question.startsWith('values.') || question.startsWith('readings.')) return question;
  return question === 'tube_list' ? 'tubes' : `answers.${question}`;
}

/** What a photo shows, in words: its caption, else what it was taken of. */
export function shows({ caption, finding }: PhotoView, view: InspectionView): string {
  return caption || taken(finding, view);
}

/** What a photo was taken of: a finding, found already or not, or the unit as a whole. */
export function taken(finding: string | null, { findings }: InspectionView): string {
  if (finding === null) return say('photo-whole');
  const known = findings.find(({ path }) => path === finding)?.name;
  const id = `finding-${finding.replace(/^(answers|readings)\./, '').replace('values.', 'value-')}`;
  return known ?? (has(id) ? say(id) : say('photo-whole'));
}

/** What a mark is called, by its place in the list: by its number among those of its shape. */
export function markName(marks: readonly Mark[], place: number): string {
  const shape = marks[place]?.shape ?? 'pin';
  return say('mark-number', { mark: say(`mark-${shape}`), number: numberOf(marks, place) });
}
