import type { InspectionView } from '../types/InspectionView';

/** The photo that was removed last, for as long as an undo brings it back: until something else is done, or the
 * screen that one landed on is left. */
class RemovedPhoto {
  #last = $state.raw<{ after: InspectionView; from: string } | null>(null);
  #landed: string | null = null;

  /** It was removed at a screen, by its hash. */
  tell(after: InspectionView, from: string): void {
    this.#last = { after, from };
    this.#landed = null;
  }

  /** Whether the last thing that was done to an inspection was to remove a photo. */
  isLast(view: InspectionView): boolean {
    return this.#last?.after === view;
  }

  /** A screen is shown, by its hash. */
  arrive(hash: string): void {
    if (!this.#last || hash === this.#last.from) return;
    if (this.#landed !== null && this.#landed !== hash) this.#last = null;
    this.#landed = hash;
  }
}

export const removedPhoto = new RemovedPhoto();
