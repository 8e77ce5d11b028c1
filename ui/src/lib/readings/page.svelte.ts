import { backend, type Trouble } from '../backend';
import { asTrouble } from '../state/inspection.svelte';
import type { ReadingsView } from '../types/ReadingsView';

/** The readings of the inspection on the screen, read anew whenever that changes. */
class ReadingsPage {
  view = $state.raw<ReadingsView | null>(null);
  trouble = $state.raw<Trouble | null>(null);
  /** Said once a visit: it is unplugged. */
  unplugged = $state(false);
  #wanted = '';

  async load(inspection: string): Promise<void> {
    if (this.#wanted !== inspection) {
      this.view = null;
      this.unplugged = false;
    }
    this.#wanted = inspection;
    this.trouble = null;
    try {
      const view = await backend.meterReadings(inspection);
      if (this.#wanted === inspection) this.view = view;
    } catch (thrown) {
      if (this.#wanted === inspection) this.trouble = asTrouble(thrown);
    }
  }
}

export const readingsPage = new ReadingsPage();
