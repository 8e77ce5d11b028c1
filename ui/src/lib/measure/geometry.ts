/** Where points on a photo lie on the display and back, and where what moves them is put: numbers only. */

import type { Size, Zoom } from '../photo/zoom';

/** A place of a photo in shares of its width and height. */
export type Share = readonly [x: number, y: number];

/** A place on the display, CSS px from the upper left corner of the board. */
export interface Place {
  x: number;
  y: number;
}

/** How the photo lies on the board: px of the board for one px of the photo, and where its upper left corner is. */
export interface Frame {
  scale: number;
  left: number;
  top: number;
}

/** Left free around the whole photo, CSS px: a point on its very edge can be taken from outside. */
export const MARGIN = 12;

/** From a point to the middle of the grip that moves it, CSS px: the finger's own radius is some 20. */
export const GRIP_OFF = 58;

/** Radius of a grip, CSS px: more than the 48 px that a finger in a glove needs. */
export const GRIP_RADIUS = 25;

/** The nearest that a grip comes to its own point: nearer, the finger on it would hide the point. */
const GRIP_LEAST = 46;

/** Radius of the loupe, CSS px. */
export const LOUPE_RADIUS = 58;

const LOUPE_INSET = 6;

/** How near a finger comes to the loupe's edge before it goes to the other side, CSS px. */
const LOUPE_CLEAR = 34;

/** Speeds of a finger, CSS px per ms: slower than the first it is placing, faster than the second it is going. */
const SPEEDS = [0.03, 0.15] as const;

/** How many px of the photo a slow finger moves a point for each CSS px: what a tap may miss by is 2. */
const SLOW_PX = 1.5;

const between = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most);

/** How a photo lies on a board of a size, enlarged as it is. */
export function frame(board: Size, photo: Size, zoom: Zoom): Frame {
  const room = (length: number): number => Math.max(length - 2 * MARGIN, 1);
  const fit = Math.min(room(board.width) / photo.width, room(board.height) / photo.height);
  const scale = fit * zoom.scale;
  return { scale, left: board.width / 2 - zoom.x * scale, top: board.height / 2 - zoom.y * scale };
}

/** A share of the photo as a place on the board. */
export function toBoard({ scale, left, top }: Frame, photo: Size, [x, y]: Share): Place {
  return { x: left + x * photo.width * scale, y: top + y * photo.height * scale };
}

/** A place on the board as a share of the photo; outside the photo it is below 0 or above 1. */
export function toShare({ scale, left, top }: Frame, photo: Size, { x, y }: Place): Share {
  return [(x - left) / scale / photo.width, (y - top) / scale / photo.height];
}

/** The nearest place that is in the photo. */
export function inPhoto([x, y]: Share): Share {
  return [between(x, 0, 1), between(y, 0, 1)];
}

/** Moved by px of the photo, and never out of it. */
export function nudged([x, y]: Share, dx: number, dy: number, photo: Size): Share {
  return inPhoto([x + dx / photo.width, y + dy / photo.height]);
}

/** How fast a finger is now, CSS px per ms, out of how fast it was and its last step: steadied, as steps come in whole
    px at odd times. */
export function steadied(speed: number, distance: number, ms: number): number {
  // Two steps at one time: as fast as can be.
  const now = ms > 0 ? distance / ms : SPEEDS[1];
  return 0.6 * Math.min(speed, SPEEDS[1]) + 0.4 * Math.min(now, SPEEDS[1]);
}

/** How much of a finger's way a point goes: all of it when the finger is quick, less when it is slow and one px of the
    display is many of the photo. */
export function gain(speed: number, { scale }: Frame): number {
  const least = between(SLOW_PX * scale, 0.2, 1);
  const [slow, quick] = SPEEDS;
  return least + (1 - least) * between((speed - slow) / (quick - slow), 0, 1);
}

/** The directions in which the grips of points stand off, radians: evenly spread in the points' order round their middle,
    so that no two meet however near the points are. */
export function gripWays(points: readonly Place[]): number[] {
  const count = Math.max(points.length, 1);
  const mean = (of: (point: Place) => number): number => points.reduce((sum, point) => sum + of(point), 0) / count;
  const [x, y] = [mean((point) => point.x), mean((point) => point.y)];
  const angles = points.map((point) => Math.atan2(point.y - y, point.x - x));
  const order = angles.map((_, place) => place).sort((a, b) => (angles[a] ?? 0) - (angles[b] ?? 0));
  const step = (2 * Math.PI) / count;
  const ranks = angles.map((_, place) => order.indexOf(place));
  // The turn of the whole spread that suits the points best.
  const off = angles.map((angle, place) => angle - (ranks[place] ?? 0) * step);
  const sum = (of: (angle: number) => number): number => off.reduce((total, angle) => total + of(angle), 0);
  const turn = Math.atan2(sum(Math.sin), sum(Math.cos));
  return ranks.map((rank) => turn + rank * step);
}

/** Where a grip stands off its point: in its direction, else across or on the other side, wherever the board has room
    without coming too near the point. */
export function gripOff(point: Place, way: number, board: Size): Place {
  for (const turn of [0, Math.PI / 4, -Math.PI / 4, Math.PI / 2, -Math.PI / 2, Math.PI]) {
    const x = between(point.x + GRIP_OFF * Math.cos(way + turn), GRIP_RADIUS, board.width - GRIP_RADIUS);
    const y = between(point.y + GRIP_OFF * Math.sin(way + turn), GRIP_RADIUS, board.height - GRIP_RADIUS);
    if (Math.hypot(x - point.x, y - point.y) >= GRIP_LEAST) return { x: x - point.x, y: y - point.y };
  }
  return { x: GRIP_OFF * Math.cos(way), y: GRIP_OFF * Math.sin(way) };
}

/** Whether a place is on the board. */
export function isShown({ x, y }: Place, board: Size): boolean {
  return x >= 0 && y >= 0 && x <= board.width && y <= board.height;
}

/** A corner of the board that the loupe is in. */
export type Corner = 'top-left' | 'top-right' | 'bottom-left' | 'bottom-right';

/** The hand comes from below: at the top the loupe is to be seen. */
const TOP: readonly Corner[] = ['top-right', 'top-left'];
const BOTTOM: readonly Corner[] = ['bottom-right', 'bottom-left'];

/** The middle of the loupe in a corner. */
export function loupeAt(corner: Corner, board: Size): Place {
  const off = LOUPE_INSET + LOUPE_RADIUS;
  return {
    x: corner.endsWith('left') ? off : board.width - off,
    y: corner.startsWith('top') ? off : board.height - off,
  };
}

/** The corner for the loupe: it stays at the top where it is until a finger or the point comes near, then goes to the
    other side; to the bottom only where there is no room beside both. */
export function loupeCorner(now: Corner, near: readonly Place[], board: Size): Corner {
  const clear = (corner: Corner): number => {
    const { x, y } = loupeAt(corner, board);
    return Math.min(...near.map((place) => Math.hypot(place.x - x, place.y - y))) - LOUPE_RADIUS;
  };
  const atTop = [...TOP].sort((one, other) => Number(other === now) - Number(one === now));
  const free = atTop.find((corner) => clear(corner) >= LOUPE_CLEAR);
  if (free) return free;
  const [best = now] = [...TOP, ...BOTTOM].sort((one, other) => clear(other) - clear(one));
  return best;
}

/** Px of the display for one px of the photo in the loupe: some times what the board shows, at least so that px can be
    told apart. */
export function loupeScale({ scale }: Frame): number {
  return between(4 * scale, 1.25, 6);
}
