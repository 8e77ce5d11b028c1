import { SvelteMap } from 'svelte/reactivity';

import { backend, type Trouble } from '../backend';
import { asTrouble, inspection } from '../state/inspection.svelte';
import type { InspectionView } from '../types/InspectionView';
import type { Mark } from '../types/Mark';
import type { PhotoView } from '../types/PhotoView';

/** What the person has changed and what is not stored yet, oldest first. */
interface Waiting<Value> {
  inspection: string;
  steps: Value[];
  /** Why the last could not be stored. */
  trouble: Trouble | null;
}

interface Part<Value> {
  of: (photo: PhotoView) => Value;
  store: (inspection: string, photo: string, value: Value) => Promise<InspectionView>;
}

/** A part of a photo that a person changes. Each change shows at once and is stored at once; where several
 * come while one is being stored, the last of them is stored next. What could not be stored stays as the person
 * left it, whatever screen is opened, until it is stored or taken back. */
class KeptPart<Value> {
  readonly #part: Part<Value>;
  /** By the photo's id. */
  readonly #waiting = new SvelteMap<string, Waiting<Value>>();
  readonly #storing = new SvelteMap<string, Promise<void>>();
  /** How many changes of a photo were stored one after the other, and the inspection after the last: while that
   * is what stands, an undo takes back one of them and nothing else. */
  #stored = $state.raw<{ photo: string; count: number; after: InspectionView } | null>(null);

  constructor(part: Part<Value>) {
    this.#part = part;
  }

  /** The part as the person left it. */
  of(photo: PhotoView): Value {
    return this.#waiting.get(photo.id)?.steps.at(-1) ?? this.#part.of(photo);
  }

  /** Why it is not stored yet; null while all goes well. */
  trouble(photo: string): Trouble | null {
    return this.#waiting.get(photo)?.trouble ?? null;
  }

  /** Stores a change. */
  keep(id: string, photo: string, value: Value): void {
    const steps = [...(this.#waiting.get(photo)?.steps ?? []), value];
    this.#waiting.set(photo, { inspection: id, steps, trouble: null });
    void this.#settle(photo);
  }

  /** Tries once more to store what could not be. */
  again(photo: string): void {
    const waiting = this.#waiting.get(photo);
    if (!waiting) return;
    this.#waiting.set(photo, { ...waiting, trouble: null });
    void this.#settle(photo);
  }

  /** Whether an undo would take back a change of this part of the photo. */
  canUndo(view: InspectionView, photo: string): boolean {
    if (this.#waiting.has(photo)) return true;
    const last = this.#stored;
    return view.can_undo && last?.photo === photo && last.after === view && last.count > 0;
  }

  /** Takes the last change back, stored or not. */
  async undo(id: string, photo: string): Promise<void> {
    await this.#storing.get(photo);
    const waiting = this.#waiting.get(photo);
    if (waiting) {
      const steps = waiting.steps.slice(0, -1);
      if (steps.length > 0) this.#waiting.set(photo, { ...waiting, steps });
      else this.#waiting.delete(photo);
      return;
    }
    await inspection.runNext(() => this.#takeBack(id, photo));
  }

  async #takeBack(id: string, photo: string): Promise<InspectionView | null> {
    const last = this.#stored;
    // Something else may have been done while this waited its turn.
    if (last?.photo !== photo || last.after !== inspection.view || last.count === 0) return null;
    const after = await backend.undo(id);
    this.#stored = after && { photo, count: last.count - 1, after };
    return after;
  }

  #settle(photo: string): Promise<void> {
    const running = this.#storing.get(photo);
    if (running) return running;
    const done = this.#store(photo).finally(() => this.#storing.delete(photo));
    this.#storing.set(photo, done);
    return done;
  }

  async #store(photo: string): Promise<void> {
    for (;;) {
      const next = this.#waiting.get(photo);
      const value = next?.steps.at(-1);
      if (!next || value === undefined) return;
      const trouble = await this.#carryOut(next.inspection, photo, value);
      const now = this.#waiting.get(photo);
      if (!now) return;
      const newer = now.steps.slice(next.steps.length);
      if (trouble) {
        this.#waiting.set(photo, { ...now, trouble: newer.length > 0 ? null : trouble });
        if (newer.length === 0) return;
      } else if (newer.length > 0) this.#waiting.set(photo, { ...now, steps: newer });
      else this.#waiting.delete(photo);
    }
  }

  /** Stores a value in its turn; gives what went wrong. */
  async #carryOut(id: string, photo: string, value: Value): Promise<Trouble | null> {
    let trouble: Trouble | null = null;
    await inspection.runNext(async () => {
      const before = inspection.view;
      const last = this.#stored;
      try {
        const after = await this.#part.store(id, photo, value);
        const count = last?.photo === photo && last.after === before ? last.count : 0;
        this.#stored = { photo, count: count + (this.#differs(photo, before, after) ? 1 : 0), after };
        return after;
      } catch (thrown) {
        trouble = asTrouble(thrown);
        return null;
      }
    });
    return trouble;
  }

  /** Whether it is another than before: what is stored as it was is nothing that an undo could take back. */
  #differs(id: string, before: InspectionView | null, after: InspectionView): boolean {
    const [was, is] = [before, after].map((view) => {
      const photo = view?.photos.find((one) => one.id === id);
      return JSON.stringify(photo ? this.#part.of(photo) : null);
    });
    return was !== is;
  }
}

/** What is drawn on photos. */
export const keptMarks = new KeptPart<Mark[]>({
  of: ({ marks }) => marks,
  store: (id, photo, marks) => backend.markPhoto(id, photo, marks),
});

/** What is written of photos. */
export const keptCaptions = new KeptPart<string>({
  of: ({ caption }) => caption,
  store: (id, photo, caption) => backend.captionPhoto(id, photo, caption),
});
