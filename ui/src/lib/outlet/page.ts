import { backend } from '../backend';
import { LoadedPage } from '../state/loaded.svelte';

/** Where the unit of the inspection on the screen will be plugged in. */
export const feedsPage = new LoadedPage((inspection) => backend.feeds(inspection));
