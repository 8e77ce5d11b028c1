import { backend, type Trouble } from '../backend';
import type { RegionView } from '../types/RegionView';
import { asTrouble } from './inspection.svelte';

/** The parts of the world to choose from, read once. */
class Regions {
  list = $state.raw<RegionView[]>([]);

  trouble = $state.raw<Trouble | null>(null);

  async load(): Promise<void> {
    if (this.list.length > 0) return;
    try {
      this.list = await backend.listRegions();
      this.trouble = null;
    } catch (thrown) {
      this.trouble = asTrouble(thrown);
    }
  }
}

export const regions = new Regions();
