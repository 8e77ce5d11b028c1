import { backend, type Trouble } from '../backend';
import type { PresetView } from '../types/PresetView';
import { asTrouble } from './inspection.svelte';

/** The supplies to choose from, read once. */
class Presets {
  list = $state.raw<PresetView[]>([]);

  trouble = $state.raw<Trouble | null>(null);

  async load(): Promise<void> {
    if (this.list.length > 0) return;
    try {
      this.list = await backend.listPresets();
      this.trouble = null;
    } catch (thrown) {
      this.trouble = asTrouble(thrown);
    }
  }

  /** One by its id. None is the usual one until somebody says so: the figures hang on it. */
  named(id: string | null): PresetView | undefined {
    return this.list.find((preset) => preset.id === id);
  }
}

export const presets = new Presets();
