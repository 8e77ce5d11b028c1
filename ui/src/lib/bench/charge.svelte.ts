import { backend, type Trouble } from '../backend';
import { readFigure, readNumber } from '../figure';
import { asTrouble } from '../state/inspection.svelte';
import type { ChargeView } from '../types/ChargeView';

/** The most volts a capacitor of such a unit may hold; the core refuses more. */
const MOST_VOLTS = 9999;

/** A charged capacitor as it is written, and what the core says of it. It outlives a look elsewhere. */
class ChargeSheet {
  farads = $state('');
  volts = $state('');
  bleed = $state('');
  view = $state.raw<ChargeView | null>(null);
  trouble = $state.raw<Trouble | null>(null);
  #asked = 0;

  readonly read = $derived({
    farads: readFigure(this.farads, 'farads'),
    volts: readNumber(this.volts, MOST_VOLTS),
    bleed: this.bleed.trim() === '' ? null : readFigure(this.bleed, 'ohms'),
  });

  /** Asks the core again; a later question makes an earlier answer void. */
  async work(): Promise<void> {
    const { farads, volts, bleed } = this.read;
    this.#asked += 1;
    const asked = this.#asked;
    this.trouble = null;
    if (!('value' in farads) || volts === null || volts === 0 || (bleed !== null && !('value' in bleed))) {
      this.view = null;
      return;
    }
    try {
      const view = await backend.storedCharge(farads.value, volts, bleed?.value ?? null);
      if (asked === this.#asked) this.view = view;
    } catch (thrown) {
      if (asked !== this.#asked) return;
      this.view = null;
      this.trouble = asTrouble(thrown);
    }
  }
}

export const chargeSheet = new ChargeSheet();
