import { type Tubes, tubesIn } from '../heaters/list';
import { type HeaterDraft, heaterDraft } from './draft';

/** The list of a radio that somebody may have owned: a five-tube set's usual one (common practice). */
const EXAMPLE: Tubes = ['12SA7', '12SK7', '12SQ7', '50L6GT', '35Z5GT'];

/** The tube list that belongs to no unit. It is kept on this device with each change. */
class FreeHeaters {
  #kept = $state.raw(start());
  /** What was cleared, until the next change. */
  cleared = $state.raw<HeaterDraft | null>(null);

  get tubes(): Tubes {
    return this.#kept.tubes;
  }
  /** The supply chosen here; null where the usual one counts. */
  get preset(): string | null {
    return this.#kept.preset;
  }
  get example(): boolean {
    return this.#kept.example;
  }

  setTubes(tubes: Tubes): void {
    // The example is an example for as long as nobody has changed it.
    this.#keep({ ...this.#kept, tubes: [...tubes], example: false });
  }

  setPreset(preset: string): void {
    this.#keep({ ...this.#kept, preset });
  }

  showExample(): void {
    this.#keep({ ...this.#kept, tubes: [...EXAMPLE], example: true });
  }

  clear(): void {
    const before = this.#kept;
    this.#keep({ ...before, tubes: [], example: false });
    if (!before.example) this.cleared = before;
  }

  undoClear(): void {
    if (this.cleared) this.#keep(this.cleared);
  }

  #keep(kept: HeaterDraft): void {
    this.#kept = kept;
    this.cleared = null;
    heaterDraft.keep(kept);
  }
}

function start(): HeaterDraft {
  const kept = heaterDraft.read();
  return { ...kept, tubes: tubesIn(kept.tubes) };
}

export const freeHeaters = new FreeHeaters();
