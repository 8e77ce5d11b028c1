import type { RemedyView } from '../types/RemedyView';
import type { StandingView } from '../types/StandingView';

/** Repairs that are not offered, by their reason. */
export interface RefusedGroup {
  why: string;
  remedies: RemedyView[];
}

/** Repairs as they are listed: those that do something, those that change no current, those that are not offered. */
export interface Groups {
  doing: RemedyView[];
  idle: RemedyView[];
  refused: RefusedGroup[];
}

export function groupsOf(remedies: readonly RemedyView[]): Groups {
  const refused = new Map<string, RemedyView[]>();
  for (const remedy of remedies) {
    if (remedy.refused !== null) refused.set(remedy.refused, [...(refused.get(remedy.refused) ?? []), remedy]);
  }
  return {
    doing: remedies.filter(({ after }) => after?.changes === true),
    idle: remedies.filter(({ after }) => after?.changes === false),
    refused: [...refused].map(([why, of]) => ({ why, remedies: of })),
  };
}

/** What is said of a unit after something and was not said before. */
export function news(before: StandingView, after: StandingView): string[] {
  return after.sentences.filter((sentence) => !before.sentences.includes(sentence));
}

/** Whether the figures of two standings are the same to whoever reads them. */
export function looksSame(before: StandingView, after: StandingView): boolean {
  return (
    before.class === after.class &&
    before.margin === after.margin &&
    before.worst === after.worst &&
    before.as_found === after.as_found
  );
}
