import { backend, type Trouble } from '../backend';
import type { RemedyStack } from '../backend/backend';
import { asTrouble } from '../state/inspection.svelte';
import { LoadedPage } from '../state/loaded.svelte';
import type { Modification } from '../types/Modification';
import type { RemediesView } from '../types/RemediesView';
import type { RepairView } from '../types/RepairView';
import { stackDraft } from './draft';

/** What each repair would change, of the inspection on the screen. */
export const remediesPage = new LoadedPage((inspection) => backend.remedies(inspection));

/** The stack of repairs that is put together on the screens, and what the core makes of it. */
class RepairStack {
  steps = $state.raw<Modification[]>([]);
  /** What the core says of the stack; of the one before while the new one is asked for, null where it is refused. */
  view = $state.raw<RepairView | null>(null);
  trouble = $state.raw<Trouble | null>(null);
  #limit = $state.raw<number | null>(null);
  #past = $state.raw<Modification[][]>([]);
  #inspection = $state.raw('');
  #asked = 0;

  /** The limit that class Y is sized for, mA; null is the one that is usual. */
  get limit(): number | null {
    return this.#limit;
  }

  /** As the commands take it. */
  get asked(): RemedyStack {
    return { steps: this.steps, ...(this.#limit === null ? {} : { limit_ma: this.#limit }) };
  }

  /** The step that is not offered where it stands; null where all are. */
  get refused(): number | null {
    const place = /^stack\.(\d+)$/.exec(this.trouble?.field ?? '')?.[1];
    return place === undefined ? null : Number(place);
  }

  /** Whether a change of the stack of this inspection can be taken back. */
  canUndo(inspection: string): boolean {
    return this.#inspection === inspection && this.#past.length > 0;
  }

  /** Shows the stack under way, else the one that was chosen. */
  async open(inspection: string, { chosen, limit_ma }: RemediesView): Promise<void> {
    if (this.#inspection !== inspection) this.view = null;
    const draft = stackDraft.of(inspection) ?? { steps: chosen, limit: limit_ma, past: [] };
    this.#inspection = inspection;
    this.steps = draft.steps;
    this.#limit = draft.limit;
    this.#past = draft.past;
    await this.#read();
  }

  async add(step: Modification): Promise<void> {
    if (!this.steps.includes(step)) await this.take([...this.steps, step]);
  }

  async remove(step: Modification): Promise<void> {
    if (this.steps.includes(step)) await this.take(this.steps.filter((one) => one !== step));
  }

  /** Puts a whole stack in the place of this one. */
  take(steps: Modification[]): Promise<void> {
    this.#past = [...this.#past, this.steps];
    this.steps = steps;
    return this.#keep();
  }

  undo(): Promise<void> {
    this.steps = this.#past.at(-1) ?? this.steps;
    this.#past = this.#past.slice(0, -1);
    return this.#keep();
  }

  size(limit: number): Promise<void> {
    this.#limit = limit;
    return this.#keep();
  }

  /** It is in the record now: from here on an undo takes back what the record holds. */
  settle(): void {
    this.#past = [];
    stackDraft.keep(this.#inspection, { steps: this.steps, limit: this.#limit, past: [] });
  }

  #keep(): Promise<void> {
    stackDraft.keep(this.#inspection, { steps: this.steps, limit: this.#limit, past: this.#past });
    return this.#read();
  }

  async #read(): Promise<void> {
    this.#asked += 1;
    const asked = this.#asked;
    try {
      const view = await backend.remedyStack(this.#inspection, this.asked);
      if (asked !== this.#asked) return;
      this.view = view;
      this.trouble = null;
    } catch (thrown) {
      if (asked !== this.#asked) return;
      this.view = null;
      this.trouble = asTrouble(thrown);
    }
  }
}

export const repairStack = new RepairStack();

let wanted = '';

/** Reads all that the screens of repairs show of an inspection. */
export async function openRepairs(inspection: string): Promise<void> {
  wanted = inspection;
  await remediesPage.load(inspection);
  // Another may have been opened meanwhile, and what is there now is of that one.
  if (wanted === inspection && remediesPage.view) await repairStack.open(inspection, remediesPage.view);
}
