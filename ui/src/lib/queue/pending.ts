import { backend } from '../backend';

/** How long after the first look comes the next, ms: a few units are done by then. */
const FIRST = 500;
/** Each later one comes after twice as long, but not more than this, ms. */
const LONGEST = 8_000;
/** Of the time, what may go by with reading: one part in so many. */
const SHARE = 10;

/** Classes that are worked out beside the window, such as those of units that came in a bundle. What shows classes
 * follows it and is read when more of them are there; while none is to come, nothing is asked. */
class Pending {
  readonly #following = new Set<() => Promise<void>>();
  #timer = 0;
  /** How many were still to come when what follows was read last. */
  #left = 0;
  #pause = FIRST;
  /** Counts what was asked: what is answered late is let go. */
  #asked = 0;

  /** Reads what shows classes now, and again when more are there; the answer ends that. */
  follow(read: () => Promise<void>): () => void {
    this.#following.add(read);
    void this.#begin([read]);
    return () => {
      this.#following.delete(read);
      if (this.#following.size === 0) this.#stop();
    };
  }

  /** Much may have come in: all that follows is read. */
  async look(): Promise<void> {
    if (this.#following.size > 0) await this.#begin([...this.#following]);
  }

  /** Asked before it is read: what is done in between is then in what is read, not missed by it. */
  async #begin(reads: readonly (() => Promise<void>)[]): Promise<void> {
    this.#stop();
    this.#pause = FIRST;
    const asked = this.#asked;
    const left = await count();
    const took = await timed(left === this.#left ? reads : [...this.#following]);
    this.#left = left;
    if (asked === this.#asked) this.#wait(took);
  }

  async #again(): Promise<void> {
    const asked = this.#asked;
    const left = await count();
    if (asked !== this.#asked) return;
    let took = 0;
    if (left !== this.#left) {
      this.#left = left;
      took = await timed([...this.#following]);
    }
    if (asked === this.#asked) this.#wait(took);
  }

  #wait(took: number): void {
    if (this.#left === 0 || this.#following.size === 0) return;
    this.#timer = window.setTimeout(() => void this.#again(), Math.max(this.#pause, took * SHARE));
    this.#pause = Math.min(this.#pause * 2, LONGEST);
  }

  #stop(): void {
    clearTimeout(this.#timer);
    this.#asked += 1;
  }
}

/** How many are to come. What keeps this from being answered, whatever is read will say. */
async function count(): Promise<number> {
  try {
    return await backend.countPending();
  } catch {
    return 0;
  }
}

/** Reads, and tells how long that took, ms. */
async function timed(reads: readonly (() => Promise<void>)[]): Promise<number> {
  const start = performance.now();
  await Promise.all(reads.map((read) => read()));
  return performance.now() - start;
}

export const pending = new Pending();
