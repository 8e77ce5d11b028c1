import { backend, Trouble } from '../backend';
import { give } from '../give';
import { pending } from '../queue/pending';
import { asTrouble, inspection } from '../state/inspection.svelte';
import { units } from '../state/units.svelte';
import type { ImportView } from '../types/ImportView';
import type { SnapshotView } from '../types/SnapshotView';
import type { UnitView } from '../types/UnitView';
import { say } from '../words';
import { readAnew } from './anew';
import { BundleGiving } from './bundle.svelte';
import { when } from './copies';

/** What can run for seconds. */
type Work = 'take' | 'list' | 'back';

/** The record as a whole: given away, taken in, its copies. One thing at a time. */
class RecordPage {
  readonly bundle = new BundleGiving((path) => backend.exportBundle(null, path));
  /** The units that are there; null until they are read. */
  units = $state.raw<UnitView[] | null>(null);
  copies = $state.raw<SnapshotView[] | null>(null);
  /** What kept the last copy from being made. */
  uncopied = $state.raw<Trouble | null>(null);
  /** Why the units or the copies could not be read. */
  unread = $state.raw<Trouble | null>(null);
  taken = $state.raw<ImportView | null>(null);
  /** The file of the list that was saved. */
  listed = $state<string | null>(null);
  /** The copy that was put back. */
  back = $state.raw<SnapshotView | null>(null);
  /** What was put back is still to be told: it was done on another screen. */
  #untold = false;
  #work = $state<Work | null>(null);
  #failed = $state.raw<{ work: Work; trouble: Trouble } | null>(null);

  /** Something runs: nothing else may start. */
  get busy(): boolean {
    return this.#work !== null || this.bundle.busy;
  }

  /** There is something of the person's own to give: what is invented stays here. */
  get hasOwn(): boolean {
    return this.units?.some(({ demo }) => !demo) ?? false;
  }

  /** The units that the bundle changed. */
  get changed(): UnitView[] {
    const ids = new Set(this.taken?.units);
    return this.units?.filter(({ id }) => ids.has(id)) ?? [];
  }

  runs(work: Work): boolean {
    return this.#work === work;
  }

  trouble(work: Work): Trouble | null {
    return this.#failed?.work === work ? this.#failed.trouble : null;
  }

  /** What was done at an earlier visit says nothing now. */
  open(): void {
    if (this.busy) return;
    this.bundle.forget();
    this.#forget();
    if (!this.#untold) this.back = null;
    this.#untold = false;
  }

  async load(): Promise<void> {
    try {
      [this.units, this.copies, this.uncopied] = await Promise.all([
        backend.listUnits(null),
        backend.listSnapshots(),
        backend.copyTrouble(),
      ]);
      this.unread = null;
    } catch (thrown) {
      this.unread = asTrouble(thrown);
    }
  }

  async give(): Promise<void> {
    if (this.busy) return;
    this.#forget();
    await this.bundle.give();
  }

  async take(): Promise<void> {
    await this.#run('take', async () => {
      const path = await backend.askOpenPath();
      if (path === null) return;
      const taken = await backend.importBundle(path);
      // What is on the screens may have changed: whoever goes back to it reads it anew.
      inspection.close();
      await Promise.all([this.load(), units.refresh()]);
      this.taken = taken;
      void pending.look();
    });
  }

  async list(): Promise<void> {
    await this.#run('list', async () => {
      const list = await backend.listCsv();
      if (await give(list)) this.listed = list.name;
    });
  }

  /** Puts a copy in the record's place; says whether it is there. */
  async putBack(copy: SnapshotView): Promise<boolean> {
    await this.#run('back', async () => {
      await backend.restoreSnapshot(copy.number, false);
      await Promise.all([readAnew(), this.load()]);
      this.back = copy;
      this.#untold = true;
    });
    return this.back === copy;
  }

  async #run(work: Work, command: () => Promise<void>): Promise<void> {
    if (this.busy) return;
    this.#work = work;
    this.bundle.forget();
    this.#forget();
    this.back = null;
    try {
      await command();
    } catch (thrown) {
      this.#failed = { work, trouble: work === 'back' ? ofCopy(thrown) : asTrouble(thrown) };
    } finally {
      this.#work = null;
    }
  }

  #forget(): void {
    this.taken = this.listed = this.#failed = null;
  }
}

/** The core says of a damaged copy what it says of a damaged record. */
export function ofCopy(thrown: unknown): Trouble {
  const trouble = asTrouble(thrown);
  if (trouble.code !== 'damaged') return trouble;
  return new Trouble('damaged', null, say('record-copy-damaged'));
}

/** A copy in a heading. */
export function named(copy: SnapshotView): string {
  return say('record-back-of', { when: when(copy) });
}

export const recordPage = new RecordPage();
