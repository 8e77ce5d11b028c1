/** Marks of a photo as they are drawn and changed: places are shares of its width and height. */

import type { Mark } from '../types/Mark';

export type Shape = Mark['shape'];
export type Share = readonly [x: number, y: number];

const inside = (share: number): number => Math.min(Math.max(share, 0), 1);

/** A mark of a shape from one place to another; nothing where they are too near to be seen. */
export function drawn(shape: Shape, from: Share, to: Share): Mark | null {
  const [x1, y1, x2, y2] = [...from, ...to].map(inside) as [number, number, number, number];
  if (shape === 'pin') return { shape, x: x2, y: y2, caption: '' };
  if (Math.max(Math.abs(x2 - x1), Math.abs(y2 - y1)) < 0.02) return null;
  return { shape, x1, y1, x2, y2, caption: '' };
}

/** The same, moved by shares of width and height, and never out of the photo. */
export function shifted(mark: Mark, dx: number, dy: number): Mark {
  const xs = mark.shape === 'pin' ? [mark.x] : [mark.x1, mark.x2];
  const ys = mark.shape === 'pin' ? [mark.y] : [mark.y1, mark.y2];
  const by = (all: number[], wanted: number): number =>
    Math.min(Math.max(wanted, -Math.min(...all)), 1 - Math.max(...all));
  const [x, y] = [by(xs, dx), by(ys, dy)];
  if (mark.shape === 'pin') return { ...mark, x: mark.x + x, y: mark.y + y };
  return { ...mark, x1: mark.x1 + x, y1: mark.y1 + y, x2: mark.x2 + x, y2: mark.y2 + y };
}

/** The number of a pin: its place among the pins. */
export function numberOf(marks: readonly Mark[], place: number): number {
  return marks.slice(0, place + 1).filter(({ shape }) => shape === 'pin').length;
}
