import { enlarged, moved, type Size, whole, type Zoom } from '../photo/zoom';
import {
  type Corner,
  type Frame,
  frame,
  gain,
  gripOff,
  gripWays,
  inPhoto,
  isShown,
  loupeCorner,
  nudged,
  type Place,
  type Share,
  steadied,
  toBoard,
  toShare,
} from './geometry';
import type { PointSet } from './points';

/** A tap is shorter than this, ms, and two of them within it are a double tap. */
const TAP_MS = 350;
/** A finger that rests moves no further than this, CSS px. */
const REST_PX = 8;
/** What a double tap enlarges by. */
const CLOSER = 2.5;

/** What a board is about, and what it hands back. */
export interface Asked {
  photo: Size;
  points: PointSet;
  onmove: (which: number, to: Share) => void;
  /** A tap beside all points; true where something came of it. */
  ontap: (at: Share) => boolean;
}

/** A finger that drags a point. */
interface Drag {
  which: number;
  /** Where the grips stood off when it began: none may jump from under the finger. */
  offs: readonly Place[];
  speed: number;
  time: number;
}

/** A photo with points on it under fingers: dragged by grips that stand off them, enlarged, nudged. It keeps what is
    looked at; the points themselves are the asker's. */
export class Board {
  size = $state.raw<Size>({ width: 0, height: 0 });
  zoom = $state.raw<Zoom>({ scale: 1, x: 0, y: 0 });
  /** The point that nudges move. */
  chosen = $state(0);
  /** The point that the loupe is on; null where there is no loupe. */
  close = $state<number | null>(null);
  corner = $state<Corner>('top-right');

  readonly #asked: () => Asked;
  #drag = $state.raw<Drag | null>(null);
  // Fingers on the glass; nothing is drawn from it.
  // eslint-disable-next-line svelte/prefer-svelte-reactivity
  readonly #fingers = new Map<number, Place>();
  #began: { at: Place; time: number; moved: boolean } | null = null;
  #lastTap = -TAP_MS;

  constructor(asked: () => Asked) {
    this.#asked = asked;
    this.zoom = whole(asked().photo);
  }

  get frame(): Frame {
    return frame(this.size, this.#asked().photo, this.zoom);
  }

  /** The points on the board. */
  get places(): Place[] {
    const { photo, points } = this.#asked();
    return points.at.map((point) => toBoard(this.frame, photo, point));
  }

  /** From each point to the middle of its grip. */
  get offs(): readonly Place[] {
    if (this.#drag) return this.#drag.offs;
    const ways = gripWays(this.places);
    return this.places.map((place, at) => gripOff(place, ways[at] ?? 0, this.size));
  }

  get drags(): number | null {
    return this.#drag?.which ?? null;
  }

  /** A finger comes down on a grip, or (null) beside them all. */
  down(id: number, at: Place, time: number, which: number | null): void {
    this.#fingers.set(id, at);
    if (this.#fingers.size > 1) {
      this.lost(true);
      return;
    }
    this.#began = { at, time, moved: false };
    this.close = which;
    if (which === null) return;
    this.chosen = which;
    this.#drag = { which, offs: this.offs, speed: 1, time };
    this.#aim(at);
  }

  move(id: number, at: Place, time: number): void {
    const before = this.#fingers.get(id);
    if (!before) return;
    if (this.#fingers.size === 2) this.#pinch(id, before, at);
    else if (this.#began) this.#slide(before, at, time);
    this.#fingers.set(id, at);
  }

  up(id: number, time: number): void {
    if (!this.#fingers.delete(id) || this.#fingers.size > 0) return;
    const began = this.#began;
    const dragged = this.#drag;
    this.lost(true);
    if (!began || began.moved || time - began.time > TAP_MS) return;
    if (dragged) this.#keep(dragged.which);
    else this.#tap(began.at, time);
  }

  /** Whatever was begun ends; the fingers may still be there. */
  lost(stay = false): void {
    if (!stay) this.#fingers.clear();
    this.#began = null;
    this.#drag = null;
    this.close = null;
  }

  /** Moves the chosen point by px of the photo, and shows it close. */
  nudge(dx: number, dy: number): void {
    const { photo, points, onmove } = this.#asked();
    const from = points.at[this.chosen];
    if (!from) return;
    onmove(this.chosen, nudged(from, dx, dy, photo));
    this.show(this.chosen);
    this.close = this.chosen;
    this.#aim(null);
  }

  /** Brings a point to the middle if it is not to be seen. */
  show(which: number): void {
    this.chosen = which;
    const { photo, points } = this.#asked();
    const point = points.at[which];
    const place = this.places[which];
    if (!point || !place || this.size.width === 0 || isShown(place, this.size)) return;
    const [x, y] = [point[0] * photo.width, point[1] * photo.height];
    this.zoom = moved(this.zoom, x - this.zoom.x, y - this.zoom.y, photo);
  }

  /** Enlarges about the loupe's point, else the middle. */
  enlarge(factor: number): void {
    const { photo, points } = this.#asked();
    const point = this.close === null ? undefined : points.at[this.close];
    const about = point ? ([point[0] * photo.width, point[1] * photo.height] as const) : ([this.zoom.x, this.zoom.y] as const);
    this.zoom = enlarged(this.zoom, factor, about, photo);
  }

  /** Enlarges about a place on the board. */
  enlargeAt(factor: number, at: Place): void {
    this.zoom = enlarged(this.zoom, factor, this.#px(at), this.#asked().photo);
  }

  #px(at: Place): [number, number] {
    const { photo } = this.#asked();
    const [x, y] = toShare(this.frame, photo, at);
    return [x * photo.width, y * photo.height];
  }

  #pinch(id: number, before: Place, at: Place): void {
    const other = [...this.#fingers].find(([one]) => one !== id)?.[1];
    if (!other) return;
    const apart = (one: Place): number => Math.hypot(one.x - other.x, one.y - other.y);
    this.enlargeAt(apart(at) / Math.max(apart(before), 1), { x: (at.x + other.x) / 2, y: (at.y + other.y) / 2 });
  }

  #slide(before: Place, at: Place, time: number): void {
    const began = this.#began;
    if (began && Math.hypot(at.x - began.at.x, at.y - began.at.y) > REST_PX) began.moved = true;
    const { photo, points, onmove } = this.#asked();
    const [dx, dy] = [at.x - before.x, at.y - before.y];
    const drag = this.#drag;
    if (!drag) {
      this.zoom = moved(this.zoom, -dx / this.frame.scale, -dy / this.frame.scale, photo);
      return;
    }
    const from = points.at[drag.which];
    if (!from || (dx === 0 && dy === 0)) return;
    const speed = steadied(drag.speed, Math.hypot(dx, dy), time - drag.time);
    this.#drag = { ...drag, speed, time };
    const part = gain(speed, this.frame) / this.frame.scale;
    onmove(drag.which, nudged(from, dx * part, dy * part, photo));
    this.#aim(at);
  }

  /** Puts the loupe where neither the finger nor the point is. */
  #aim(finger: Place | null): void {
    const point = this.close === null ? undefined : this.places[this.close];
    const near = [finger, point].filter((place) => place !== null && place !== undefined);
    if (near.length > 0) this.corner = loupeCorner(this.corner, near, this.size);
  }

  /** A tap on a grip: its point is right where it is. */
  #keep(which: number): void {
    const { points, onmove } = this.#asked();
    const at = points.at[which];
    if (at) onmove(which, at);
  }

  #tap(at: Place, time: number): void {
    const { photo, ontap } = this.#asked();
    const share = toShare(this.frame, photo, at);
    const [x, y] = inPhoto(share);
    if (x === share[0] && y === share[1] && ontap(share)) {
      this.#lastTap = -TAP_MS;
      return;
    }
    const twice = time - this.#lastTap < TAP_MS;
    this.#lastTap = twice ? -TAP_MS : time;
    if (!twice) return;
    if (this.zoom.scale > 1) this.zoom = whole(photo);
    else this.enlargeAt(CLOSER, at);
  }
}
