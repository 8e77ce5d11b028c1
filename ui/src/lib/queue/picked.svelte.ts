import { SvelteMap } from 'svelte/reactivity';

import type { QueueLine } from '../types/QueueLine';

/** The units that are picked, to do one thing with all of them. */
class Picked {
  /** Rows are ticked, not opened. */
  on = $state(false);
  readonly #lines = new SvelteMap<string, QueueLine>();

  get lines(): QueueLine[] {
    return [...this.#lines.values()];
  }
  get count(): number {
    return this.#lines.size;
  }

  has(id: string): boolean {
    return this.#lines.has(id);
  }

  begin(): void {
    this.on = true;
  }

  end(): void {
    this.on = false;
    this.#lines.clear();
  }

  turn(line: QueueLine): void {
    if (!this.#lines.delete(line.unit.id)) this.#lines.set(line.unit.id, line);
  }

  add(lines: readonly QueueLine[]): void {
    for (const line of lines) this.#lines.set(line.unit.id, line);
  }

  none(): void {
    this.#lines.clear();
  }

  /** Shows what became of them. */
  put(lines: readonly QueueLine[]): void {
    for (const line of lines) if (this.#lines.has(line.unit.id)) this.#lines.set(line.unit.id, line);
  }
}

export const picked = new Picked();
