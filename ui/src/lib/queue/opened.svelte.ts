import { backend, type Trouble } from '../backend';
import { asTrouble } from '../state/inspection.svelte';
import type { QueueLine } from '../types/QueueLine';
import { queue } from './queue.svelte';

/** The unit of the queue on the screen, by its number for people. */
class Opened {
  line = $state.raw<QueueLine | null>(null);
  /** There is no such unit. */
  gone = $state(false);
  trouble = $state.raw<Trouble | null>(null);
  #wanted = '';

  async open(label: string): Promise<void> {
    this.#wanted = label;
    this.gone = false;
    this.trouble = null;
    // What the list shows is there at once; it is read anew all the same.
    this.line = queue.rows?.find((row) => row.unit.label === label) ?? null;
    try {
      // A number is among what is searched for, and few others begin with it.
      const { rows } = await backend.showQueue({ text: label, newest: true });
      if (this.#wanted !== label) return;
      this.line = rows.find((row) => row.unit.label === label) ?? null;
      this.gone = this.line === null;
      if (this.line) queue.put([this.line]);
    } catch (thrown) {
      if (this.#wanted === label) this.trouble = asTrouble(thrown);
    }
  }

  /** Shows what became of it. */
  put(lines: readonly QueueLine[]): void {
    this.line = lines.find((line) => line.unit.id === this.line?.unit.id) ?? this.line;
  }
}

export const opened = new Opened();
