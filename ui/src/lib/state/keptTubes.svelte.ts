import { backend } from '../backend';
import { same, type Tubes, tubesIn } from '../heaters/list';
import type { InspectionView } from '../types/InspectionView';
import { inspection } from './inspection.svelte';

/** A list that the person has left so, and that is still to be stored. */
interface Change {
  inspection: string;
  tubes: Tubes;
  /** It is the list as it was before the last change. */
  back: boolean;
}

/** The tubes of the open inspection. Each change shows at once and is stored at once; where several come
 * while one is being stored, the last of them is what is stored next. */
class KeptTubes {
  #changed = $state.raw<Change | null>(null);
  #storing: Promise<void> | null = null;
  /** The list before the one stored last, and the inspection with that: what its undo takes back. */
  #last: { before: Tubes; after: InspectionView } | null = null;

  /** The list as the person left it. */
  of(view: InspectionView): Tubes {
    return this.#changed?.inspection === view.id ? this.#changed.tubes : listed(view);
  }

  /** Stores a list; an empty one withdraws the finding. */
  keep(id: string, tubes: Tubes): Promise<void> {
    return this.#change({ inspection: id, tubes, back: false });
  }

  /** Takes the last change back to this list, by the undo of the inspection where it is still the last of
   * all: then another undo goes further back instead of bringing the change again. */
  undo(id: string, before: Tubes): Promise<void> {
    return this.#change({ inspection: id, tubes: before, back: true });
  }

  /** Waits until all is stored. */
  async settled(): Promise<void> {
    await this.#storing;
  }

  #change(change: Change): Promise<void> {
    this.#changed = change;
    this.#storing ??= this.#store().finally(() => (this.#storing = null));
    return this.#storing;
  }

  async #store(): Promise<void> {
    let change = this.#changed;
    while (change) {
      const next = change;
      const stored = await inspection.runNext(() => this.#carryOut(next));
      // What was refused is not there: the screen goes back to what is.
      if (stored === null || this.#changed === change) this.#changed = null;
      change = this.#changed;
    }
  }

  async #carryOut({ inspection: id, tubes, back }: Change): Promise<InspectionView | null> {
    const last = this.#last;
    this.#last = null;
    const shown = inspection.view?.id === id ? inspection.view : await backend.showInspection(id);
    const before = listed(shown);
    if (same(before, tubes)) return shown;
    if (back && last?.after === shown && same(last.before, tubes)) return backend.undo(id);
    const after = tubes.length > 0 ? await backend.setTubes(id, [...tubes]) : await backend.withdraw(id, 'tubes');
    this.#last = { before, after };
    return after;
  }
}

function listed(view: InspectionView): Tubes {
  return tubesIn(view.findings.find(({ path }) => path === 'tubes')?.value);
}

export const keptTubes = new KeptTubes();
