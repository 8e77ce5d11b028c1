import { backend, type Trouble } from '../backend';
import { give } from '../give';
import { giveBundle } from '../record/bundle.svelte';
import { asTrouble } from '../state/inspection.svelte';
import type { DocumentView } from '../types/DocumentView';
import type { TagPaper } from '../types/TagPaper';
import { say } from '../words';

/** What is given away from the queue. */
export type Gift = 'tags' | 'list' | 'bundle';

/** Tags, a bundle or the whole list, given away from the queue. */
class Giving {
  busy = $state(false);
  /** What was asked for last: its outcome stands beside its button, under the finger. */
  of = $state<Gift | null>(null);
  /** What came of it, in sentences. */
  made = $state.raw<readonly string[]>([]);
  trouble = $state.raw<Trouble | null>(null);

  leave(): void {
    if (this.busy) return;
    this.made = [];
    this.trouble = null;
  }

  tags(units: readonly string[], paper: TagPaper): Promise<void> {
    return this.#run('tags', async () => giveDocument(await backend.makeTags([...units], paper)));
  }

  list(): Promise<void> {
    return this.#run('list', async () => giveDocument(await backend.listCsv()));
  }

  bundle(units: readonly string[]): Promise<void> {
    return this.#run('bundle', async () => {
      const given = await giveBundle((path) => backend.exportBundle([...units], path));
      return given?.view.says ?? [];
    });
  }

  async #run(of: Gift, make: () => Promise<readonly string[]>): Promise<void> {
    if (this.busy) return;
    this.leave();
    this.of = of;
    this.busy = true;
    try {
      this.made = await make();
    } catch (thrown) {
      this.trouble = asTrouble(thrown);
    }
    this.busy = false;
  }
}

async function giveDocument(made: DocumentView): Promise<readonly string[]> {
  return (await give(made)) ? [say('papers-made', { name: made.name })] : [];
}

export const giving = new Giving();
