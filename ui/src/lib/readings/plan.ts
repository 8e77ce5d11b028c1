import type { InspectionView } from '../types/InspectionView';

/** Whether it was said of a reading that it could not be taken. */
export function isLeftOpen({ findings }: InspectionView, reading: string): boolean {
  return findings.some(({ path }) => path === `left_open.${reading}`);
}
