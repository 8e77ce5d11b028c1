import { backend, Trouble } from '../backend';
import type { InspectionView } from '../types/InspectionView';
import { say } from '../words';

/** The inspection on the screen. Each change is stored by the core before it is shown. */
class OpenInspection {
  view = $state.raw<InspectionView | null>(null);
  /** A command runs: until it is done no other may start, so a double tap does no harm. */
  busy = $state(false);
  trouble = $state.raw<Trouble | null>(null);

  /** The inspection that the screen is about; another may be asked for while a command runs. */
  #wanted: string | null = null;
  /** The last command, done or not. */
  #running: Promise<unknown> = Promise.resolve();

  /** Shows an inspection. */
  async open(id: string): Promise<void> {
    this.#wanted = id;
    if (this.view?.id === id) return;
    this.view = null;
    this.trouble = null;
    try {
      const view = await backend.showInspection(id);
      if (this.#wanted === id) this.view = view;
    } catch (thrown) {
      if (this.#wanted === id) this.trouble = asTrouble(thrown);
    }
  }

  /** Runs one command; gives the inspection after it, null where nothing came of it. */
  async run(command: () => Promise<InspectionView | null>): Promise<InspectionView | null> {
    if (this.busy) return null;
    const done = this.#carryOut(command);
    this.#running = done;
    return done;
  }

  /** Runs one command after what runs already, for changes that come faster than they are stored. */
  async runNext(command: () => Promise<InspectionView | null>): Promise<InspectionView | null> {
    while (this.busy) await this.#running;
    return this.run(command);
  }

  async #carryOut(
    command: () => Promise<InspectionView | null>,
  ): Promise<InspectionView | null> {
    this.busy = true;
    this.trouble = null;
    const wanted = this.#wanted;
    try {
      const view = await command();
      // The person has gone on to another inspection meanwhile: stored, but not shown.
      if (this.#wanted !== wanted) return null;
      if (view) this.#show(view);
      return view;
    } catch (thrown) {
      this.trouble = asTrouble(thrown);
      return null;
    } finally {
      this.busy = false;
    }
  }

  /** Shows what was changed beside the commands of the screen, such as a photo that was stored. */
  async readAgain(id: string): Promise<void> {
    // An answer under way brings its own view; read before it, ours would be older.
    await this.#running;
    if (this.view?.id !== id) return;
    try {
      const view = await backend.showInspection(id);
      if (this.view.id === id && !this.busy) this.view = view;
    } catch (thrown) {
      this.trouble = asTrouble(thrown);
    }
  }

  /** Shows none, as when it is no longer there. */
  close(): void {
    this.#wanted = null;
    this.view = null;
    this.trouble = null;
  }

  #show(view: InspectionView): void {
    this.#wanted = view.id;
    this.view = view;
  }
}

/** Trouble as a person can read it, whatever was thrown. */
export function asTrouble(thrown: unknown): Trouble {
  if (thrown instanceof Trouble && thrown.sentence !== '') return thrown;
  return new Trouble('unreachable', null, say('trouble-unreachable'));
}

export const inspection = new OpenInspection();
