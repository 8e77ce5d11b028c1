import { backend, onRefused, type Trouble } from '../backend';
import { asTrouble } from '../state/inspection.svelte';
import type { RecoveredView } from '../types/RecoveredView';
import type { SnapshotView } from '../types/SnapshotView';
import { readAnew } from './anew';
import { BundleGiving } from './bundle.svelte';
import { ofCopy } from './page.svelte';

/** What shuts the record: every command answers with it from then on. */
const SHUTS: readonly Trouble['code'][] = ['damaged', 'newer_file', 'not_our_file'];
/** These speak of copies; a damaged copy is no damaged record. */
const OF_COPIES: readonly string[] = ['list_snapshots', 'restore_snapshot', 'export_readable'];

/** What may be put in place: a copy, or (null) an empty record; with what can be read of the damaged file or not. */
export interface Way {
  copy: SnapshotView | null;
  readable: boolean;
}

/** A record that cannot be used, and the ways on from there. */
class ShutRecord {
  /** Why it is shut; null where it is not. */
  trouble = $state.raw<Trouble | null>(null);
  /** The copies, the newest first; null until they are looked for. */
  copies = $state.raw<SnapshotView[] | null>(null);
  /** Why the copies could not be looked for. */
  unlisted = $state.raw<Trouble | null>(null);
  /** What the person is asked about before it is done. */
  asked = $state.raw<Way | null>(null);
  failed = $state.raw<Trouble | null>(null);
  /** What came of it. */
  done = $state.raw<RecoveredView | null>(null);
  readonly bundle = new BundleGiving((path) => backend.exportReadable(path));
  #restoring = $state(false);

  get busy(): boolean {
    return this.#restoring || this.bundle.busy;
  }

  get restoring(): boolean {
    return this.#restoring;
  }

  /** Hears what a command was refused with. */
  hear(command: string, trouble: Trouble): void {
    if (!SHUTS.includes(trouble.code) || OF_COPIES.includes(command) || this.#restoring) return;
    const isNew = this.trouble === null || this.done !== null;
    this.trouble = trouble;
    if (!isNew) return;
    this.done = this.asked = this.failed = null;
    this.bundle.forget();
    void this.look();
  }

  /** Looks for copies. */
  async look(): Promise<void> {
    this.copies = this.unlisted = null;
    try {
      this.copies = await backend.listSnapshots();
    } catch (thrown) {
      this.unlisted = asTrouble(thrown);
    }
  }

  /** Says what would happen; null goes back to the choice. */
  ask(way: Way | null): void {
    if (this.busy) return;
    this.asked = way;
    this.failed = null;
  }

  /** Does what was asked about. */
  async restore(): Promise<void> {
    const way = this.asked;
    if (this.busy || way === null) return;
    this.#restoring = true;
    this.failed = null;
    try {
      this.done = await backend.restoreSnapshot(way.copy?.number ?? null, way.readable);
    } catch (thrown) {
      this.failed = ofCopy(thrown);
    } finally {
      this.#restoring = false;
    }
    if (this.done) await readAnew();
  }

  /** The record can be used again. */
  close(): void {
    this.trouble = this.copies = this.unlisted = this.asked = this.failed = this.done = null;
    this.bundle.forget();
  }
}

export const shut = new ShutRecord();

onRefused((command, trouble) => shut.hear(command, trouble));
