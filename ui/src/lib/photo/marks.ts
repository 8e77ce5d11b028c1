/** Marks of a photo as they are drawn, hit and changed: places are shares of its width and height. */

import type { Mark } from '../types/Mark';
import type { Size } from './zoom';

export type Shape = Mark['shape'];
export type Share = readonly [x: number, y: number];
/** A place in px of the photo. */
export type Place = readonly [x: number, y: number];

/** The shortest arrow and the smallest box, as a share: the core takes none that is shorter. */
const LEAST = 0.01;
/** The finger's reach on the screen, CSS px: half of a 48 px target. */
export const REACH = 24;
/** Radius of a pin on the screen, CSS px: its number is read at arm's length. */
export const PIN = 16;

const inside = (share: number): number => Math.min(Math.max(share, 0), 1);
const isLong = (x: number, y: number): boolean => Math.max(Math.abs(x), Math.abs(y)) >= LEAST;

/** A mark of a shape from one place to another; nothing where they are too near to be two. */
export function drawn(shape: Shape, from: Share, to: Share): Mark | null {
  const [x1, y1, x2, y2] = [...from, ...to].map(inside) as [number, number, number, number];
  if (shape === 'pin') return { shape, x: x2, y: y2, caption: '' };
  return isLong(x2 - x1, y2 - y1) ? { shape, x1, y1, x2, y2, caption: '' } : null;
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

/** Where a mark can be taken to give it another shape: tail and head of an arrow, the corners of a box. */
export function handles(mark: Mark): Share[] {
  if (mark.shape === 'pin') return [];
  const { x1, y1, x2, y2 } = mark;
  return mark.shape === 'arrow'
    ? [[x1, y1], [x2, y2]]
    : [[x1, y1], [x2, y1], [x2, y2], [x1, y2]];
}

/** The same with one of its handles moved by shares; nothing where too little would be left of it. */
export function stretched(mark: Mark, handle: number, dx: number, dy: number): Mark | null {
  if (mark.shape === 'pin') return null;
  const isHead = mark.shape === 'arrow' && handle === 1;
  const second = { x: isHead || handle === 1 || handle === 2, y: isHead || handle === 2 || handle === 3 };
  const made = { ...mark };
  made[second.x ? 'x2' : 'x1'] = inside(made[second.x ? 'x2' : 'x1'] + dx);
  made[second.y ? 'y2' : 'y1'] = inside(made[second.y ? 'y2' : 'y1'] + dy);
  return isLong(made.x2 - made.x1, made.y2 - made.y1) ? made : null;
}

/** The number of a mark among those of its shape; a pin shows it. */
export function numberOf(marks: readonly Mark[], place: number): number {
  return marks.slice(0, place + 1).filter(({ shape }) => shape === marks[place]?.shape).length;
}

const placed = ([x, y]: Share, { width, height }: Size): Place => [x * width, y * height];
const apart = ([ax, ay]: Place, [bx, by]: Place): number => Math.hypot(ax - bx, ay - by);

/** How far a place is from the line between two others. */
function fromLine(at: Place, from: Place, to: Place): number {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const long = x * x + y * y;
  const along = long === 0 ? 0 : ((at[0] - from[0]) * x + (at[1] - from[1]) * y) / long;
  const share = inside(along);
  return apart(at, [from[0] + share * x, from[1] + share * y]);
}

/** How far a place is from what is drawn of a mark. */
function fromMark(at: Place, mark: Mark, size: Size, pin: number): number {
  if (mark.shape === 'pin') return Math.max(apart(at, placed([mark.x, mark.y], size)) - pin, 0);
  const corners = handles(mark).map((share) => placed(share, size));
  const sides = mark.shape === 'arrow' ? corners.slice(0, 1) : corners;
  const next = (place: number): Place => corners[(place + 1) % corners.length] ?? at;
  return Math.min(...sides.map((corner, place) => fromLine(at, corner, next(place))));
}

/** The area of a box around a place; nothing where it is not around it. */
function around([x, y]: Share, mark: Mark): number | null {
  if (mark.shape !== 'box') return null;
  const between = (at: number, one: number, other: number): boolean =>
    at >= Math.min(one, other) && at <= Math.max(one, other);
  const isAround = between(x, mark.x1, mark.x2) && between(y, mark.y1, mark.y2);
  return isAround ? Math.abs((mark.x2 - mark.x1) * (mark.y2 - mark.y1)) : null;
}

/** A mark that was hit, by its place in the list. */
export interface Hit {
  place: number;
  /** Not its outline, only what it lies around. */
  within: boolean;
}

/** The mark under a finger: the nearest that it reaches, the last drawn of those alike; else the smallest box
    around it. `px` is how many px of the photo one of the screen is. */
export function hit(marks: readonly Mark[], share: Share, size: Size, px: number): Hit | null {
  const at = placed(share, size);
  const far = marks.map((mark) => fromMark(at, mark, size, PIN * px));
  const least = Math.min(...far);
  if (least <= REACH * px) return { place: far.lastIndexOf(least), within: false };
  const areas = marks.map((mark) => around(share, mark) ?? Infinity);
  const smallest = Math.min(...areas);
  return smallest < Infinity ? { place: areas.lastIndexOf(smallest), within: true } : null;
}

/** The handle of a mark under a finger. */
export function handleAt(mark: Mark, share: Share, size: Size, px: number): number | null {
  const at = placed(share, size);
  const far = handles(mark).map((handle) => apart(at, placed(handle, size)));
  const least = Math.min(...far);
  return least <= REACH * px ? far.lastIndexOf(least) : null;
}
