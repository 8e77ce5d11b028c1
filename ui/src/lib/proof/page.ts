import { backend } from '../backend';
import { LoadedPage } from '../state/loaded.svelte';

/** The proof of the repair that was chosen for the unit of the inspection on the screen. */
export const proofPage = new LoadedPage((inspection) => backend.proof(inspection));
