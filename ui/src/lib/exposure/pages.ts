import { backend } from '../backend';
import { LoadedPage } from '../state/loaded.svelte';

/** Every state with every single fault of the inspection on the screen. */
export const gridPage = new LoadedPage((inspection) => backend.grid(inspection));
