import { backend, type Trouble } from '../backend';
import { asTrouble } from '../state/inspection.svelte';
import type { QueueLine } from '../types/QueueLine';
import type { WorkState } from '../types/WorkState';
import { opened } from './opened.svelte';
import { picked } from './picked.svelte';
import { queue } from './queue.svelte';

/** A unit that was not put into a state, and why. */
export interface Refused {
  line: QueueLine;
  trouble: Trouble;
}

/** What was changed last, so that it can be taken back. */
export interface Changed {
  to: WorkState;
  /** The units as they were before. */
  were: readonly QueueLine[];
}

/** Puts units into a state, one event for each, and takes all of that back by one tap. */
class Changing {
  busy = $state(false);
  /** What is being put where, while it runs. */
  to = $state<WorkState | null>(null);
  /** Done so far, and of how many. */
  done = $state(0);
  of = $state(0);
  /** How many were left as they were, because it was stopped. */
  left = $state(0);
  last = $state.raw<Changed | null>(null);
  /** Whose state was put back. */
  undone = $state.raw<readonly QueueLine[]>([]);
  refused = $state.raw<readonly Refused[]>([]);
  /** What they were refused for. */
  refusedTo = $state<WorkState | null>(null);

  #stops = false;

  /** What was said of other units says nothing of these. */
  leave(): void {
    if (this.busy) return;
    this.left = 0;
    this.last = this.refusedTo = null;
    this.refused = this.undone = [];
  }

  /** Puts each of the units into a state; what is refused keeps no other from it. */
  async put(lines: readonly QueueLine[], to: WorkState): Promise<void> {
    const moved = lines.filter((line) => line.state !== to);
    if (this.busy || moved.length === 0) return;
    this.leave();
    this.to = to;
    const were = await this.#run(moved, () => to);
    this.to = null;
    this.refusedTo = this.refused.length > 0 ? to : null;
    this.last = were.length > 0 ? { to, were } : null;
  }

  /** Puts back what was changed last, all of it; stopped, what is left of it can still be put back. */
  async undo(): Promise<void> {
    if (this.busy || !this.last) return;
    const { to, were } = this.last;
    this.leave();
    this.undone = await this.#run(were, (line) => line.state);
    const rest = were.slice(this.done);
    this.left = 0;
    this.last = rest.length > 0 ? { to, were: rest } : null;
  }

  /** Leaves the units that were not come to as they are. */
  stop(): void {
    this.#stops = true;
  }

  /** Gives those that were changed. */
  async #run(lines: readonly QueueLine[], to: (line: QueueLine) => WorkState): Promise<QueueLine[]> {
    this.busy = true;
    this.#stops = false;
    this.done = 0;
    this.of = lines.length;
    const changed: QueueLine[] = [];
    const refused: Refused[] = [];
    for (const line of lines) {
      if (this.#stops) break;
      try {
        show([await backend.setUnitState(line.unit.id, to(line))]);
        changed.push(line);
      } catch (thrown) {
        refused.push({ line, trouble: asTrouble(thrown) });
      }
      this.done += 1;
    }
    this.refused = refused;
    this.left = this.of - this.done;
    await queue.recount();
    this.busy = false;
    return changed;
  }
}

function show(lines: readonly QueueLine[]): void {
  queue.put(lines);
  picked.put(lines);
  opened.put(lines);
}

export const changing = new Changing();
