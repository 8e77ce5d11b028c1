import { backend } from '../backend';
import { LoadedPage } from '../state/loaded.svelte';

/** The insulation test of the inspection on the screen. */
export const insulationPage = new LoadedPage((inspection) => backend.insulationTest(inspection));

/** The live touch test of the inspection on the screen. */
export const touchPage = new LoadedPage((inspection) => backend.touchTest(inspection));
