import { backend, type Trouble } from '../backend';
import type { CircuitPlace, RemedyStack } from '../backend/backend';
import { placeOf } from '../circuit/turns';
import { asTrouble } from '../state/inspection.svelte';
import type { CircuitView } from '../types/CircuitView';
import { fitted, type Side } from './pair';

/** The circuit before and after a stack of repairs, both in one position. */
class ComparedCircuits {
  /** `undefined` until the core has said; `null` for a unit without a line side. */
  before = $state.raw<CircuitView | null | undefined>(undefined);
  after = $state.raw<CircuitView | null | undefined>(undefined);
  /** The position that both are in, as far as each has it. */
  at = $state.raw<CircuitPlace | null>(null);
  trouble = $state.raw<Trouble | null>(null);
  /** The worst of each. */
  #worst: Record<Side, CircuitView> | null = null;
  #inspection = '';
  #stack: RemedyStack = { steps: [] };
  #asked = 0;

  /** Shows both where the verdict looks before the repair; the position of before stays where only the stack is new. */
  async open(inspection: string, stack: RemedyStack): Promise<void> {
    const isOther = this.#inspection !== inspection;
    if (isOther) this.before = this.after = undefined;
    this.#inspection = inspection;
    this.#stack = stack;
    this.#worst = null;
    await this.#run(async () => {
      const [before, after] = await Promise.all([this.#ask('before', null), this.#ask('after', null)]);
      if (before === null || after === null) return { before, after, at: null };
      this.#worst = { before, after };
      return this.#both(isOther || this.at === null ? placeOf(before) : this.at);
    });
  }

  /** Shows both in a position. */
  show(at: CircuitPlace): Promise<void> {
    return this.#run(() => this.#both(at));
  }

  /** Shows both where one of them is worst. */
  async showWorst(side: Side): Promise<void> {
    const worst = this.#worst?.[side];
    if (worst) await this.show(placeOf(worst));
  }

  async #both(at: CircuitPlace): Promise<Shown> {
    const worst = this.#worst;
    if (!worst) return { before: null, after: null, at: null };
    const [before, after] = await Promise.all([
      this.#ask('before', fitted(at, worst.before)),
      this.#ask('after', fitted(at, worst.after)),
    ]);
    return { before, after, at };
  }

  #ask(side: Side, at: CircuitPlace | null): Promise<CircuitView | null> {
    return side === 'before'
      ? backend.circuit(this.#inspection, at)
      : backend.circuitRepaired(this.#inspection, this.#stack, at);
  }

  /** What is shown stays until the next is there; of two that are asked for only the later is shown. */
  async #run(ask: () => Promise<Shown>): Promise<void> {
    this.#asked += 1;
    const asked = this.#asked;
    try {
      const shown = await ask();
      if (asked !== this.#asked) return;
      this.before = shown.before;
      this.after = shown.after;
      this.at = shown.at;
      this.trouble = null;
    } catch (thrown) {
      if (asked === this.#asked) this.trouble = asTrouble(thrown);
    }
  }
}

interface Shown {
  before: CircuitView | null;
  after: CircuitView | null;
  at: CircuitPlace | null;
}

export const comparedCircuits = new ComparedCircuits();
