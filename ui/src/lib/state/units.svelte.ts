import { backend, type Trouble } from '../backend';
import type { UnitView } from '../types/UnitView';
import { router } from '../route/router.svelte';
import { asTrouble, inspection } from './inspection.svelte';

/** The list of units, and what is searched for in it. */
class Units {
  list = $state.raw<UnitView[] | null>(null);
  /** There are units, whether or not the search finds any. */
  any = $state(false);
  text = $state('');
  trouble = $state.raw<Trouble | null>(null);
  /** The demonstration is being loaded or removed. */
  busy = $state(false);
  #asked = 0;

  /** How many of the list are invented. */
  get demo(): number {
    return this.list?.filter((unit) => unit.demo).length ?? 0;
  }

  /** Loads the invented units, or removes them all. */
  async setDemo(there: boolean): Promise<void> {
    if (this.busy) return;
    this.busy = true;
    try {
      await (there ? backend.loadDemo() : backend.removeDemo());
      this.text = '';
      if (!there && inspection.view?.unit.demo) {
        inspection.close();
        if ('inspection' in router.route) router.replace({ screen: 'list' });
      }
      await this.refresh();
    } catch (thrown) {
      this.trouble = asTrouble(thrown);
    } finally {
      this.busy = false;
    }
  }

  /** Reads the list again. */
  async refresh(): Promise<void> {
    this.#asked += 1;
    const asked = this.#asked;
    const text = this.text.trim();
    try {
      const list = await backend.listUnits(text === '' ? null : text);
      // A later search may have been answered first.
      if (asked !== this.#asked) return;
      this.list = list;
      this.any = list.length > 0 || (text !== '' && this.any);
      this.trouble = null;
    } catch (thrown) {
      this.trouble = asTrouble(thrown);
    }
  }
}

export const units = new Units();
