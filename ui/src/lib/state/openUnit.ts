import { backend } from '../backend';
import { router } from '../route/router.svelte';
import type { UnitView } from '../types/UnitView';
import { inspection } from './inspection.svelte';

/** Shows the last inspection of a unit; where there is none, begins one. */
export async function openUnit(unit: UnitView): Promise<void> {
  if (unit.inspection) {
    router.go({ screen: 'inspection', inspection: unit.inspection });
    return;
  }
  const view = await inspection.run(() => backend.startInspection(unit.id, ['outside']));
  if (view) router.go({ screen: 'inspection', inspection: view.id });
}
