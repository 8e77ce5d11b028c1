import { backend, type Trouble } from '../backend';
import type { CircuitPlace } from '../backend/backend';
import { asTrouble } from '../state/inspection.svelte';
import type { CircuitView } from '../types/CircuitView';

/** The picture on the screen, and the position that it is in. */
class CircuitPage {
  /** `undefined` until the core has said; `null` for a unit without a line side. */
  view = $state.raw<CircuitView | null | undefined>(undefined);
  trouble = $state.raw<Trouble | null>(null);
  #inspection = '';
  #asked = 0;

  /** Shows a position, or what the verdict quotes. What is shown stays until the next is there. */
  async show(inspection: string, at: CircuitPlace | null): Promise<void> {
    if (this.#inspection !== inspection) this.view = undefined;
    this.#inspection = inspection;
    this.#asked += 1;
    const asked = this.#asked;
    try {
      const view = await backend.circuit(inspection, at);
      if (asked !== this.#asked) return;
      this.view = view;
      this.trouble = null;
    } catch (thrown) {
      if (asked === this.#asked) this.trouble = asTrouble(thrown);
    }
  }
}

export const circuitPage = new CircuitPage();
