import { backend, Trouble } from '../backend';
import { asTrouble } from '../state/inspection.svelte';
import type { BundleView } from '../types/BundleView';
import { bundleName, fileName } from './copies';

/** A bundle that was written, and where. */
export interface GivenBundle {
  name: string;
  view: BundleView;
}

/** Asks where a bundle shall go and has it written there; nothing where the person thinks better of it. */
export async function giveBundle(write: (path: string) => Promise<BundleView>): Promise<GivenBundle | null> {
  const path = await backend.askSavePath(bundleName());
  return path === null ? null : { name: fileName(path), view: await write(path) };
}

/** A bundle being written where the person wants it. */
export class BundleGiving {
  busy = $state(false);
  given = $state.raw<GivenBundle | null>(null);
  trouble = $state.raw<Trouble | null>(null);
  readonly #write: (path: string) => Promise<BundleView>;

  constructor(write: (path: string) => Promise<BundleView>) {
    this.#write = write;
  }

  async give(): Promise<void> {
    if (this.busy) return;
    this.busy = true;
    this.forget();
    try {
      this.given = await giveBundle(this.#write);
    } catch (thrown) {
      this.trouble = asTrouble(thrown);
    } finally {
      this.busy = false;
    }
  }

  forget(): void {
    this.given = this.trouble = null;
  }
}
