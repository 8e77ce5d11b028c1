import type { CellLevel } from '../../lib/types/CellLevel';
import type { IconName } from '../shared/Icon.svelte';

/** The sign of each level: a shape, since a colour alone says nothing. */
export const CELL_ICONS: Readonly<Record<CellLevel, IconName>> = {
  live: 'bolt',
  leaks: 'jump',
  below: 'faint',
  breaker_trips: 'trip',
  behind_barrier: 'barrier',
};
