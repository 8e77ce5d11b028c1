import { backend } from '../backend';
import { LoadedPage } from '../state/loaded.svelte';
import type { ReadingsView } from '../types/ReadingsView';

/** The readings of the inspection on the screen. */
class ReadingsPage extends LoadedPage<ReadingsView> {
  /** Said once a visit: it is unplugged. */
  unplugged = $state(false);

  protected override forget(): void {
    this.unplugged = false;
  }
}

export const readingsPage = new ReadingsPage((inspection) => backend.meterReadings(inspection));
