import { backend } from '../backend';
import { LoadedPage } from '../state/loaded.svelte';

/** Touch current against time for the inspection on the screen. */
export const chartPage = new LoadedPage((inspection) => backend.chart(inspection));

/** Every state with every single fault of the inspection on the screen. */
export const gridPage = new LoadedPage((inspection) => backend.grid(inspection));
