import type { Trouble } from '../backend';
import { asTrouble } from './inspection.svelte';

/** A page that the core makes of an inspection, read anew whenever that changes. */
export class LoadedPage<View> {
  view = $state.raw<View | null>(null);
  trouble = $state.raw<Trouble | null>(null);
  #wanted = '';
  readonly #read: (inspection: string) => Promise<View>;

  constructor(read: (inspection: string) => Promise<View>) {
    this.#read = read;
  }

  async load(inspection: string): Promise<void> {
    if (this.#wanted !== inspection) {
      this.view = null;
      this.forget();
    }
    this.#wanted = inspection;
    this.trouble = null;
    try {
      const view = await this.#read(inspection);
      if (this.#wanted === inspection) this.view = view;
    } catch (thrown) {
      if (this.#wanted === inspection) this.trouble = asTrouble(thrown);
    }
  }

  /** What was said of another inspection says nothing of this one. */
  protected forget(): void {
    // A plain page has nothing of its own.
  }
}
