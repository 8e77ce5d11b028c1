import type { Mark } from '../types/Mark';
import { drawn, type Share, type Shape, shifted, stretched } from './marks';
import type { Size } from './zoom';

/** A mark as it is under the finger: in the place of a kept one, or new at the end. */
interface Draft {
  place: number;
  mark: Mark;
}

/** How far an arrow key moves a mark, as a share of the photo's width. */
const NUDGE = 0.01;
/** How long a mark is that is made without a finger, as a share of what is in sight. */
const MIDDLING = 0.2;

const ARROWS: Readonly<Record<string, Share>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Marking a photo: which tool is taken up, which mark is chosen, what is on its way. Each change is handed on
 * the moment it ends, whatever ends it. */
export class Marking {
  tool = $state<Shape | null>(null);
  /** The marks can be looked under. */
  shown = $state(true);
  /** What is being written of the chosen mark; null where nothing was changed. */
  typed = $state<string | null>(null);
  #chosen = $state<number | null>(null);
  #draft = $state.raw<Draft | null>(null);
  readonly #kept: () => readonly Mark[];
  readonly #keep: (marks: Mark[]) => void;

  constructor(kept: () => readonly Mark[], keep: (marks: Mark[]) => void) {
    this.#kept = kept;
    this.#keep = keep;
  }

  /** What is kept, or on its way to be. */
  get list(): readonly Mark[] {
    return this.#kept();
  }

  /** The same with what is under the finger. */
  get seen(): readonly Mark[] {
    if (!this.shown) return [];
    const draft = this.#draft;
    return draft ? this.#with(draft) : this.list;
  }

  /** The place of the chosen mark; an undo may have taken it away. */
  get chosen(): number | null {
    const place = this.#chosen;
    return place !== null && this.shown && this.seen[place] ? place : null;
  }

  get mark(): Mark | null {
    return this.chosen === null ? null : (this.seen[this.chosen] ?? null);
  }

  choose(place: number | null): void {
    if (place === this.#chosen) return;
    this.finish();
    this.#chosen = place;
  }

  /** Takes a tool up, or lays it down. */
  turn(tool: Shape): void {
    this.finish();
    this.shown = true;
    this.tool = this.tool === tool ? null : tool;
  }

  /** Shows the marks, or the photo without them. */
  show(shown: boolean): void {
    this.finish();
    this.shown = shown;
    if (!shown) this.tool = null;
  }

  /** Ends what is being written. */
  finish(): void {
    const typed = this.typed;
    this.typed = null;
    const mark = this.#chosen === null ? undefined : this.list[this.#chosen];
    if (typed === null || !mark || mark.caption === typed.trim()) return;
    this.#put({ place: this.#chosen ?? 0, mark: { ...mark, caption: typed.trim() } });
  }

  /** A new mark follows the finger. */
  draw(shape: Shape, from: Share, to: Share): void {
    const mark = drawn(shape, from, to);
    this.#draft = mark && { place: this.list.length, mark };
  }

  /** A kept mark follows the finger, by shares of width and height. */
  drag(place: number, dx: number, dy: number): void {
    const mark = this.list[place];
    if (mark) this.#draft = { place, mark: shifted(mark, dx, dy) };
  }

  /** So does one of its handles. */
  stretch(place: number, handle: number, dx: number, dy: number): void {
    const mark = this.list[place];
    const made = mark && stretched(mark, handle, dx, dy);
    if (made) this.#draft = { place, mark: made };
  }

  /** The finger is lifted: what followed it is kept and chosen. */
  drop(): void {
    const draft = this.#draft;
    this.#draft = null;
    if (!draft) return;
    this.#chosen = draft.place;
    this.#put(draft);
  }

  /** The finger meant something else, such as to enlarge. */
  forget(): void {
    this.#draft = null;
  }

  /** A mark in the middle of what is in sight, for whoever has no finger to draw with. */
  place(shape: Shape, [x, y]: Share, scale: number): void {
    this.finish();
    this.shown = true;
    const half = MIDDLING / 2 / scale;
    const mark = shape === 'pin' ? drawn(shape, [x, y], [x, y]) : drawn(shape, [x - half, y - half], [x + half, y + half]);
    if (!mark) return;
    this.#draft = { place: this.list.length, mark };
    this.drop();
  }

  /** What a key does to a mark: arrows move it, with shift its second end, delete removes it. Gives whether it
   * means anything; it is kept by `drop` once the key is let go. */
  key(place: number, event: Pick<KeyboardEvent, 'key' | 'shiftKey'>, size: Size): boolean {
    if (event.key === 'Delete' || event.key === 'Backspace') {
      this.remove(place);
      return true;
    }
    const way = ARROWS[event.key];
    const draft = this.#draft;
    const mark = draft?.place === place ? draft.mark : this.list[place];
    if (!way || !mark) return false;
    this.choose(place);
    const [dx, dy] = [way[0] * NUDGE, (way[1] * NUDGE * size.width) / size.height];
    const end = mark.shape === 'arrow' ? 1 : 2;
    const moved = event.shiftKey ? stretched(mark, end, dx, dy) : shifted(mark, dx, dy);
    if (moved) this.#draft = { place, mark: moved };
    return true;
  }

  remove(place: number): void {
    this.typed = null;
    this.#draft = null;
    this.#chosen = null;
    if (this.list[place]) this.#keep(this.list.filter((_, other) => other !== place));
  }

  #put(draft: Draft): void {
    this.#keep(this.#with(draft));
  }

  #with({ place, mark }: Draft): Mark[] {
    return place < this.list.length
      ? this.list.map((one, other) => (other === place ? mark : one))
      : [...this.list, mark];
  }
}
