import { backend } from '../backend';
import { type Tubes, tubesIn } from '../heaters/list';
import type { InspectionView } from '../types/InspectionView';
import { inspection } from './inspection.svelte';

/** The tubes of the open inspection. Each change shows at once and is stored at once; where several come
 * while one is being stored, the last of them is what is stored next. */
class KeptTubes {
  #changed = $state.raw<{ inspection: string; tubes: Tubes } | null>(null);
  #storing: Promise<void> | null = null;

  /** The list as the person left it. */
  of(view: InspectionView): Tubes {
    if (this.#changed?.inspection === view.id) return this.#changed.tubes;
    return tubesIn(view.findings.find(({ path }) => path === 'tubes')?.value);
  }

  /** Stores a list; an empty one withdraws the finding. */
  keep(id: string, tubes: Tubes): Promise<void> {
    this.#changed = { inspection: id, tubes };
    this.#storing ??= this.#store().finally(() => (this.#storing = null));
    return this.#storing;
  }

  /** Waits until all is stored. */
  async settled(): Promise<void> {
    await this.#storing;
  }

  async #store(): Promise<void> {
    let change = this.#changed;
    while (change) {
      const { inspection: id, tubes } = change;
      const stored = await inspection.runNext(() => put(id, tubes));
      // What was refused is not there: the screen goes back to what is.
      if (stored === null || this.#changed === change) this.#changed = null;
      change = this.#changed;
    }
  }
}

async function put(id: string, tubes: Tubes): Promise<InspectionView> {
  if (tubes.length > 0) return backend.setTubes(id, [...tubes]);
  const view = await backend.showInspection(id);
  const isKept = view.findings.some(({ path }) => path === 'tubes');
  return isKept ? backend.withdraw(id, 'tubes') : view;
}

export const keptTubes = new KeptTubes();
