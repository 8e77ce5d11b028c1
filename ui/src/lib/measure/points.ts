/** Points on a photo, and which of them a person has put there. */

import type { Share } from './geometry';

export interface PointSet {
  readonly at: readonly Share[];
  /** Whether each was put where it is: what was not says nothing. */
  readonly placed: readonly boolean[];
}

/** Points that nobody has put anywhere yet. */
export function unplaced(at: readonly Share[]): PointSet {
  return { at, placed: at.map(() => false) };
}

/** The same with one of them put somewhere. */
export function put({ at, placed }: PointSet, which: number, to: Share): PointSet {
  return {
    at: at.map((one, place) => (place === which ? to : one)),
    placed: placed.map((one, place) => one || place === which),
  };
}

/** The first that is still to be placed; null where all are. */
export function nextUnplaced({ placed }: PointSet): number | null {
  const at = placed.indexOf(false);
  return at < 0 ? null : at;
}

/** What can be measured, besides the card. */
export const MEASURED = ['blades', 'length'] as const;
export type Measured = (typeof MEASURED)[number];

/** Each point's sign, as it stands on its grip. */
export const SIGNS: Readonly<Record<Measured | 'corners', readonly string[]>> = {
  corners: ['1', '2', '3', '4'],
  blades: ['1', '1', '2', '2'],
  length: ['A', 'B'],
};

/** Which points are joined by lines: round the card, across each blade, along the length. */
export const JOINED: Readonly<Record<Measured | 'corners', readonly (readonly [number, number])[]>> = {
  corners: [
    [0, 1],
    [1, 2],
    [2, 3],
    [3, 0],
  ],
  blades: [
    [0, 1],
    [2, 3],
  ],
  length: [[0, 1]],
};
