import { backend, type Trouble } from '../backend';
import { asTrouble } from '../state/inspection.svelte';
import type { QueueCounts } from '../types/QueueCounts';
import type { QueueLine } from '../types/QueueLine';
import { askOf, type Filters, keepFilters, NO_FILTERS, readFilters } from './filters';

/** How long a search waits for the next letter, ms. */
const PAUSE = 200;
/** So many rows are read anew when one comes back; of more only the unit that was looked at. */
const MOST_ANEW = 500;

/** The intake queue: its counts, and as many pages of it as were scrolled to. */
class Queue {
  filters = $state.raw<Filters>(readFilters());
  rows = $state.raw<readonly QueueLine[] | null>(null);
  counts = $state.raw<QueueCounts | null>(null);
  /** Another page is there. */
  hasMore = $state(false);
  trouble = $state.raw<Trouble | null>(null);
  /** What was searched for when the rows came. */
  shown = $state.raw<Filters>(this.filters);
  #next: string | null = null;
  /** Counts what was asked: what is answered late is let go. */
  #asked = 0;
  #reads = false;
  #pause = 0;

  /** Changes what is asked for; a text waits for the letter after it. */
  set(change: Partial<Filters>): void {
    this.filters = { ...this.filters, ...change };
    keepFilters(this.filters);
    clearTimeout(this.#pause);
    if (change.text === undefined || change.text === '') void this.read();
    else this.#pause = window.setTimeout(() => void this.read(), PAUSE);
  }

  /** Takes all filters off, and the text. */
  clear(): void {
    this.set({ ...NO_FILTERS, text: '' });
  }

  /** Reads the first page and the counts. */
  async read(): Promise<void> {
    await this.#readUpTo(1);
  }

  /** Reads the pages anew that were scrolled to, where they are few enough, so that one's place stays. */
  async readAgain(): Promise<void> {
    const count = this.rows?.length ?? 0;
    if (count > MOST_ANEW) await this.recount();
    else await this.#readUpTo(count);
  }

  async #readUpTo(count: number): Promise<void> {
    this.#asked += 1;
    const asked = this.#asked;
    const { filters } = this;
    this.#reads = true;
    try {
      const [counts, first] = await Promise.all([backend.countQueue(), backend.showQueue(askOf(filters))]);
      let { rows, next } = first;
      while (next !== null && rows.length < count && asked === this.#asked) {
        const page = await backend.showQueue({ ...askOf(filters), after: next });
        rows = joined(rows, page.rows);
        next = page.next;
      }
      if (asked !== this.#asked) return;
      this.counts = counts;
      this.rows = rows;
      this.#end(next);
      this.shown = filters;
      this.trouble = null;
    } catch (thrown) {
      if (asked === this.#asked) this.trouble = asTrouble(thrown);
    }
    if (asked === this.#asked) this.#reads = false;
  }

  /** Reads the page after the last row. */
  async more(): Promise<void> {
    if (this.#reads || this.#next === null || !this.rows) return;
    const asked = this.#asked;
    this.#reads = true;
    try {
      const page = await backend.showQueue({ ...askOf(this.shown), after: this.#next });
      if (asked !== this.#asked) return;
      this.rows = joined(this.rows, page.rows);
      this.#end(page.next);
      this.trouble = null;
    } catch (thrown) {
      if (asked === this.#asked) this.trouble = asTrouble(thrown);
    }
    if (asked === this.#asked) this.#reads = false;
  }

  /** Reads the counts alone. */
  async recount(): Promise<void> {
    try {
      this.counts = await backend.countQueue();
    } catch (thrown) {
      this.trouble = asTrouble(thrown);
    }
  }

  /** Shows what became of units where they stand: a row that no longer fits does not go from under the hand. */
  put(lines: readonly QueueLine[]): void {
    const by = new Map(lines.map((line) => [line.unit.id, line]));
    this.rows = this.rows?.map((row) => by.get(row.unit.id) ?? row) ?? null;
  }

  #end(next: string | null): void {
    this.#next = next;
    this.hasMore = next !== null;
  }
}

/** Two pages; a unit that moved meanwhile may stand on both. */
function joined(rows: readonly QueueLine[], more: readonly QueueLine[]): QueueLine[] {
  const there = new Set(rows.map((row) => row.unit.id));
  return [...rows, ...more.filter((row) => !there.has(row.unit.id))];
}

export const queue = new Queue();
