import { backend, type Trouble } from '../backend';
import type { Share } from '../measure/geometry';
import { beside, bladesAbout, firstCard, lengthAbout } from '../measure/placing';
import { type Measured, nextUnplaced, type PointSet, put, unplaced } from '../measure/points';
import type { MeasureView } from '../types/MeasureView';
import type { OfferedAnswer } from '../types/OfferedAnswer';
import type { PhotoView } from '../types/PhotoView';
import { asTrouble } from './inspection.svelte';

/** What is measured on one photo: kept while the app runs, so that a look elsewhere or a turned phone loses nothing, and
    never stored. */
export class PhotoMeasure {
  card = $state.raw<PointSet>({ at: [], placed: [] });
  /** What is measured; null until somebody has said. */
  what = $state.raw<Measured | null>(null);
  result = $state.raw<MeasureView | null>(null);
  /** Why the corners are not those of a card. */
  cardTrouble = $state<string | null>(null);
  trouble = $state.raw<Trouble | null>(null);
  busy = $state(false);

  readonly #photo: PhotoView;
  #points = $state.raw<Partial<Record<Measured, PointSet>>>({});
  #asked = 0;

  constructor(photo: PhotoView) {
    this.#photo = photo;
    this.card = unplaced(firstCard(photo));
  }

  /** The points of what is measured: beside the card until they are put somewhere. */
  points(what: Measured): PointSet {
    return this.#points[what] ?? unplaced(this.#about(what, beside(this.card.at, this.#photo)));
  }

  putCorner(which: number, to: Share): void {
    this.card = put(this.card, which, to);
    this.#forget();
  }

  putPoint(what: Measured, which: number, to: Share): void {
    this.#points = { ...this.#points, [what]: put(this.points(what), which, to) };
    this.#forget();
  }

  /** Brings the points of what is measured about a place, while none of them was put anywhere by hand; gives whether it
      did. */
  bring(what: Measured, at: Share): boolean {
    if (this.points(what).placed.includes(true)) return false;
    this.#points = { ...this.#points, [what]: unplaced(this.#about(what, at)) };
    return true;
  }

  /** Whether the points have left the place that they began at. */
  isBrought(what: Measured): boolean {
    return this.#points[what] !== undefined;
  }

  /** The middle of the points. */
  middle(what: Measured): Share {
    const { at } = this.points(what);
    const mean = (axis: 0 | 1): number => at.reduce((sum, point) => sum + point[axis], 0) / at.length;
    return [mean(0), mean(1)];
  }

  /** The corner that is still to be placed; null where all are. */
  get openCorner(): number | null {
    return nextUnplaced(this.card);
  }

  /** Asks the core whether the corners are those of a card. */
  async checkCard(inspection: string): Promise<boolean> {
    const view = await this.#ask(inspection, null);
    this.cardTrouble = view?.card_trouble ?? null;
    return view !== null && view.card_trouble === null;
  }

  /** Says what is measured; what was said of something else is void. */
  choose(what: Measured): void {
    if (this.what !== what) this.#forget();
    this.what = what;
  }

  /** Asks the core what the points measure. */
  async measure(inspection: string): Promise<void> {
    this.result = await this.#ask(inspection, this.what);
  }

  /** Says no more that something could not be read. */
  hush(): void {
    this.trouble = null;
  }

  async #ask(inspection: string, what: Measured | null): Promise<MeasureView | null> {
    this.#asked += 1;
    const asked = this.#asked;
    this.trouble = null;
    this.busy = true;
    const pair = ([x, y]: Share): [number, number] => [x, y];
    const [first, second, third, fourth] = what === null ? [] : this.points(what).at.map(pair);
    try {
      const view = await backend.measurePhoto(inspection, this.#photo.id, {
        card: this.card.at.map(pair),
        length: what === 'length' && first && second ? [first, second] : null,
        blades: what === 'blades' && first && second && third && fourth ? [[first, second], [third, fourth]] : null,
      });
      return asked === this.#asked ? view : null;
    } catch (thrown) {
      if (asked === this.#asked) this.trouble = asTrouble(thrown);
      return null;
    } finally {
      if (asked === this.#asked) this.busy = false;
    }
  }

  /** What was said of other points says nothing of these. */
  #forget(): void {
    this.#asked += 1;
    this.result = null;
    this.cardTrouble = null;
    this.trouble = null;
    this.busy = false;
  }

  #about(what: Measured, at: Share): Share[] {
    return what === 'blades' ? bladesAbout(at, this.card.at, this.#photo) : lengthAbout(at, this.card.at, this.#photo);
  }
}

/** What is measured on each photo, and the answer that the last measurement offers: the person gives it or not. */
class Measuring {
  // Each is itself reactive; which of them there are is asked for by name.
  readonly #photos = new Map<string, PhotoMeasure>();
  #offer = $state.raw<{ inspection: string; answer: OfferedAnswer } | null>(null);

  of(photo: PhotoView): PhotoMeasure {
    const known = this.#photos.get(photo.id);
    if (known) return known;
    const made = new PhotoMeasure(photo);
    this.#photos.set(photo.id, made);
    return made;
  }

  /** Shows an answer at its question as the one that was measured. */
  offer(inspection: string, answer: OfferedAnswer): void {
    this.#offer = { inspection, answer };
  }

  /** The answer that is shown as measured at a question; null where none is. */
  offered(inspection: string, question: string): string | null {
    const offer = this.#offer;
    return offer?.inspection === inspection && offer.answer.question === question ? offer.answer.answer : null;
  }

  /** The question is answered, by whatever answer. */
  answered(inspection: string, question: string): void {
    if (this.offered(inspection, question) !== null) this.#offer = null;
  }

  /** Offers nothing any more: something is measured anew. */
  withdraw(inspection: string): void {
    if (this.#offer?.inspection === inspection) this.#offer = null;
  }
}

export const measuring = new Measuring();
