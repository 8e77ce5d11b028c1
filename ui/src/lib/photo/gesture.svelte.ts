import type { Marking } from './marking.svelte';
import { handleAt, type Hit, hit, REACH, type Share } from './marks';
import { enlarged, type Frame, moved, perPixel, placeAt, type Size, whole, type Zoom } from './zoom';

/** As far as this a finger trembles, CSS px: less is a tap (common practice, from memory). */
const TREMBLE = 8;
/** The second tap of a double tap comes within this, ms, and as near, CSS px (common practice, from memory). */
const TWICE = 350;
const TWICE_NEAR = 40;
/** How much a double tap enlarges, and one turn of a wheel. */
const CLOSER = 2.5;
const NOTCH = 1.2;

/** A place of the screen, CSS px. */
interface Point {
  x: number;
  y: number;
}

/** What one finger began. */
interface Begun {
  from: Point;
  at: Share;
  on: Hit | null;
  /** A handle of the chosen mark. */
  handle: number | null;
  /** A tool that is taken up draws from here: it is on the photo, or as near as a finger means it. */
  draws: boolean;
  /** It has gone further than a finger trembles. */
  isDrag: boolean;
}

const between = (one: Point, other: Point): number => Math.hypot(one.x - other.x, one.y - other.y);
const middle = (one: Point, other: Point): Point => ({ x: (one.x + other.x) / 2, y: (one.y + other.y) / 2 });

/** Fingers on a photo: two enlarge and move it; one moves it, draws with the tool that is taken up, or takes a
 * mark by its handle, its outline or its inside. */
export class Gesture {
  zoom = $state.raw<Zoom>({ scale: 1, x: 0, y: 0 });
  readonly #size: Size;
  readonly #frame: () => Frame;
  readonly #marking: Marking;
  // Nothing is drawn from where the fingers are.
  // eslint-disable-next-line svelte/prefer-svelte-reactivity
  readonly #fingers = new Map<number, Point>();
  #begun: Begun | null = null;
  #lastTap: (Point & { time: number }) | null = null;

  constructor(size: Size, frame: () => Frame, marking: Marking) {
    this.#size = size;
    this.#frame = frame;
    this.#marking = marking;
    this.zoom = whole(size);
  }

  down(event: PointerEvent): void {
    // The first finger: whatever the page did not hear of, none was on the glass before.
    if (event.isPrimary) this.#fingers.clear();
    const at = { x: event.clientX, y: event.clientY };
    this.#fingers.set(event.pointerId, at);
    this.#marking.finish();
    const isFirst = this.#fingers.size === 1;
    // A second finger means to enlarge: what the first had begun was no mark.
    if (isFirst) this.#marking.drop();
    else this.#marking.forget();
    this.#begun = isFirst ? this.#begin(at) : null;
  }

  move(event: PointerEvent): void {
    const before = this.#fingers.get(event.pointerId);
    if (!before) return;
    const now = { x: event.clientX, y: event.clientY };
    this.#fingers.set(event.pointerId, now);
    if (this.#fingers.size > 1) this.#pinch(event.pointerId, before, now);
    else if (this.#begun) this.#drag(this.#begun, before, now);
  }

  up(event: PointerEvent): void {
    const at = this.#fingers.get(event.pointerId);
    if (!at || !this.#fingers.delete(event.pointerId)) return;
    const [left] = this.#fingers.values();
    if (left) {
      // The finger that stays moves the photo on.
      const still = { from: left, at: this.#share(left), on: null, handle: null, draws: false, isDrag: true };
      this.#begun = this.#fingers.size === 1 ? still : null;
      return;
    }
    const begun = this.#begun;
    this.#begun = null;
    this.#marking.drop();
    if (begun && !begun.isDrag) this.#tap(begun, event.timeStamp);
    else this.#lastTap = null;
  }

  /** Lets go of every finger, as when the system takes over or a button is tapped. */
  release(): void {
    this.#fingers.clear();
    this.#begun = null;
    this.#lastTap = null;
    this.#marking.forget();
  }

  wheel(event: WheelEvent): void {
    event.preventDefault();
    this.#enlarge(event.deltaY < 0 ? NOTCH : 1 / NOTCH, { x: event.clientX, y: event.clientY });
  }

  /** Enlarges about the middle of what is in sight. */
  by(factor: number): void {
    this.release();
    this.zoom = enlarged(this.zoom, factor, [this.zoom.x, this.zoom.y], this.#size);
  }

  /** Shows the whole photo. */
  reset(): void {
    this.release();
    this.zoom = whole(this.#size);
  }

  /** Moves the photo by shares of what is in sight. */
  look(dx: number, dy: number): void {
    const { width, height } = this.#size;
    this.zoom = moved(this.zoom, (dx * width) / this.zoom.scale, (dy * height) / this.zoom.scale, this.#size);
  }

  /** The middle of what is in sight. */
  get middle(): Share {
    return [this.zoom.x / this.#size.width, this.zoom.y / this.#size.height];
  }

  #begin(from: Point): Begun {
    const at = this.#share(from);
    const { chosen, list, mark, shown, tool } = this.#marking;
    const px = perPixel(this.zoom, this.#frame(), this.#size);
    const handle = mark && handleAt(mark, at, this.#size, px);
    if (chosen !== null && handle !== null) {
      return { from, at, on: { place: chosen, within: false }, handle, draws: false, isDrag: false };
    }
    const draws = tool !== null && this.#isOn(at, REACH * px);
    if (draws && tool === 'pin') this.#marking.draw('pin', at, at);
    const on = tool === null && shown ? hit(list, at, this.#size, px) : null;
    return { from, at, on, handle: null, draws, isDrag: false };
  }

  #drag(begun: Begun, before: Point, now: Point): void {
    const { tool } = this.#marking;
    const isPin = tool === 'pin' && begun.draws;
    if (!begun.isDrag && !isPin && between(begun.from, now) < TREMBLE) return;
    begun.isDrag = true;
    const to = this.#share(now);
    const [dx, dy] = [to[0] - begun.at[0], to[1] - begun.at[1]];
    if (begun.on && begun.handle !== null) this.#marking.stretch(begun.on.place, begun.handle, dx, dy);
    else if (begun.on && this.#takes(begun.on)) this.#marking.drag(begun.on.place, dx, dy);
    else if (tool && begun.draws) this.#marking.draw(tool, begun.at, to);
    else this.#move(before, now);
  }

  /** An enlarged photo is moved by its inside, also where a large box lies around all that is in sight. */
  #takes({ place, within }: Hit): boolean {
    return !within || this.zoom.scale <= 1 || this.#marking.chosen === place;
  }

  #tap({ from, on, handle }: Begun, time: number): void {
    if (handle !== null) return;
    if (this.#marking.tool === null) this.#marking.choose(on?.place ?? null);
    const last = this.#lastTap;
    this.#lastTap = null;
    if (this.#marking.tool !== null || (on && !on.within)) return;
    if (!last || time - last.time > TWICE || between(last, from) > TWICE_NEAR) this.#lastTap = { ...from, time };
    else if (this.zoom.scale > 1) this.zoom = whole(this.#size);
    else this.#enlarge(CLOSER, from);
  }

  #pinch(id: number, before: Point, now: Point): void {
    const other = [...this.#fingers].find(([one]) => one !== id)?.[1];
    if (!other || this.#fingers.size > 2) return;
    const factor = between(now, other) / Math.max(between(before, other), 1);
    const about = middle(before, other);
    this.#enlarge(factor, about);
    this.#move(about, middle(now, other));
  }

  #enlarge(factor: number, about: Point): void {
    this.zoom = enlarged(this.zoom, factor, this.#place(about), this.#size);
  }

  #move(from: Point, to: Point): void {
    const [[fromX, fromY], [toX, toY]] = [this.#place(from), this.#place(to)];
    this.zoom = moved(this.zoom, fromX - toX, fromY - toY, this.#size);
  }

  /** Whether a place lies on the photo, or no further beside it, px of the photo. */
  #isOn([x, y]: Share, near: number): boolean {
    const [right, down] = [near / this.#size.width, near / this.#size.height];
    return x >= -right && x <= 1 + right && y >= -down && y <= 1 + down;
  }

  /** A place of the screen in px of the photo. */
  #place({ x, y }: Point): [number, number] {
    return placeAt(this.zoom, this.#frame(), this.#size, x, y);
  }

  #share(point: Point): Share {
    const [x, y] = this.#place(point);
    return [x / this.#size.width, y / this.#size.height];
  }
}
