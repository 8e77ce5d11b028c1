import type { InspectionView } from '../types/InspectionView';
import type { ReadingId } from '../types/ReadingId';
import type { ReadingsView } from '../types/ReadingsView';

/** Whether it was said of a reading that it could not be taken. */
export function isLeftOpen({ findings }: InspectionView, reading: string): boolean {
  return findings.some(({ path }) => path === `left_open.${reading}`);
}

/** The reading of the plan to take next: what could not be taken is not come back to. */
export function nextInPlan({ readings }: ReadingsView, view: InspectionView): ReadingId | null {
  return readings.find(({ id, kept }) => kept === null && !isLeftOpen(view, id))?.id ?? null;
}
