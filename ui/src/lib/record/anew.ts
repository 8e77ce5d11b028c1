import { pending } from '../queue/pending';
import { inspection } from '../state/inspection.svelte';
import { settings } from '../state/settings.svelte';
import { units } from '../state/units.svelte';

/** Another record stands where one stood: nothing that was read of that holds any more. */
export async function readAnew(): Promise<void> {
  inspection.close();
  // A workbench that was opened anew does not know whose findings these are.
  settings.tellInspector();
  units.text = '';
  await units.refresh();
  void pending.look();
}
