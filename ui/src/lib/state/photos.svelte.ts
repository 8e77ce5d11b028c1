import { backend, type PhotoSize, type Trouble } from '../backend';
import type { PhotoView } from '../types/PhotoView';
import { say } from '../words';
import { asTrouble, inspection } from './inspection.svelte';

/** A picture that was refused, with the name its file had. */
export interface Refused {
  file: string;
  trouble: Trouble;
}

/** The photos on the screen: how many are being stored, what was refused, and the pictures themselves. */
class Photos {
  /** Photos on their way into the record. */
  storing = $state(0);
  refused = $state.raw<Refused[]>([]);
  /** What the last addition came to, for a screen reader. */
  told = $state('');

  /** Each picture is fetched once; the same name always means the same picture. */
  readonly #pictures = new Map<string, Promise<string>>();

  /** The address of a photo's picture, for as long as the app runs. */
  address({ sha256 }: PhotoView, size: PhotoSize): Promise<string> {
    const key = `${size} ${sha256}`;
    const known = this.#pictures.get(key);
    if (known) return known;
    const made = backend.showPhoto(sha256, size).then((photo) => URL.createObjectURL(photo));
    this.#pictures.set(key, made);
    // What could not be read once may be there the next time.
    made.catch(() => this.#pictures.delete(key));
    return made;
  }

  /** Stores photos of a finding, or (null) of the unit. Answering goes on meanwhile. */
  async add(id: string, finding: string | null, files: readonly File[]): Promise<void> {
    this.refused = [];
    this.told = '';
    let kept = 0;
    this.storing += files.length;
    for (const file of files) {
      try {
        await backend.addPhoto(id, finding, file);
        kept += 1;
      } catch (thrown) {
        this.refused = [...this.refused, { file: file.name, trouble: asTrouble(thrown) }];
      } finally {
        this.storing -= 1;
      }
      if (kept > 0) await inspection.readAgain(id);
    }
    if (kept > 0) this.told = say('photo-added', { count: kept });
  }

  /** Forgets what was refused, as when the screen is left. */
  forgetTrouble(): void {
    this.refused = [];
    this.told = '';
  }
}

export const photos = new Photos();
