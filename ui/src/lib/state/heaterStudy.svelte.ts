import { backend, type Trouble } from '../backend';
import type { Tubes } from '../heaters/list';
import type { HeaterView } from '../types/HeaterView';
import type { Supply } from '../types/Supply';
import { asTrouble } from './inspection.svelte';

/** What the core says of a list of tubes; what it said last stays until it has said something new. */
export class HeaterStudy {
  view = $state.raw<HeaterView | null>(null);
  trouble = $state.raw<Trouble | null>(null);
  #asked = 0;

  async of(tubes: Tubes, supply: Supply | null): Promise<void> {
    this.#asked += 1;
    const asked = this.#asked;
    if (tubes.length === 0 || supply === null) {
      this.view = null;
      this.trouble = null;
      return;
    }
    try {
      const view = await backend.studyHeaters([...tubes], supply.volts, supply.hertz);
      // A later list may have been answered first.
      if (asked !== this.#asked) return;
      this.view = view;
      this.trouble = null;
    } catch (thrown) {
      if (asked === this.#asked) this.trouble = asTrouble(thrown);
    }
  }
}
