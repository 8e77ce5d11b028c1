import type { Trouble } from '../backend';
import { asTrouble } from './inspection.svelte';

/** A page that the core makes of an inspection, read anew whenever that changes; a later question makes an
    earlier answer void. */
export class LoadedPage<View> {
  view = $state.raw<View | null>(null);
  trouble = $state.raw<Trouble | null>(null);
  #wanted = '';
  #asked = 0;
  readonly #read: (inspection: string) => Promise<View>;

  constructor(read: (inspection: string) => Promise<View>) {
    this.#read = read;
  }

  /** The last reading, done or not. */
  latest: Promise<void> = Promise.resolve();

  load(inspection: string): Promise<void> {
    this.latest = this.#load(inspection);
    return this.latest;
  }

  async #load(inspection: string): Promise<void> {
    if (this.#wanted !== inspection) {
      this.view = null;
      this.forget();
    }
    this.#wanted = inspection;
    this.#asked += 1;
    const asked = this.#asked;
    this.trouble = null;
    try {
      const view = await this.#read(inspection);
      if (asked === this.#asked) this.view = view;
    } catch (thrown) {
      if (asked === this.#asked) this.trouble = asTrouble(thrown);
    }
  }

  /** What was said of another inspection says nothing of this one. */
  protected forget(): void {
    // A plain page has nothing of its own.
  }
}
