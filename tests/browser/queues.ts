/** A shop's queue: units in each state. */

import type { QueueLine } from '../../ui/src/lib/types/QueueLine';
import type { WorkState } from '../../ui/src/lib/types/WorkState';
import type { InspectionView } from '../../ui/src/lib/types/InspectionView';
import type { Bridge } from './bridge';
import { repaired, SOUND } from './proofs';
import {
  CLOSED_RADIO,
  CORD_SEEN,
  EARTHED_AMPLIFIER,
  HOT_CHASSIS,
  inspect,
  LEAKY_AMPLIFIER,
  PICNIC_PORTABLE,
  SHELF_RADIO,
  type Unit,
} from './units';

/** The unit of an inspection. */
export async function unitOf(bridge: Bridge, inspection: string): Promise<InspectionView['unit']> {
  return (await bridge.call<InspectionView>('show_inspection', { inspection })).unit;
}

/** Puts a unit into the record and its work into a state; gives the unit. */
export async function enqueue(bridge: Bridge, unit: Unit, state: WorkState | null): Promise<InspectionView['unit']> {
  const kept = await unitOf(bridge, await inspect(bridge, unit));
  if (state) await bridge.call<QueueLine>('set_unit_state', { unit: kept.id, state });
  return kept;
}

/** An amplifier that was given a three-wire cord, with so many lines of its proof entered. */
export async function proving(bridge: Bridge, lines: number): Promise<InspectionView['unit']> {
  const stack = { steps: ['three_wire_cord' as const] };
  const unit = { ...LEAKY_AMPLIFIER, name: 'Combo amplifier, new cord' };
  const inspection = await repaired(bridge, { unit, stack, entries: SOUND.slice(0, lines) });
  const kept = await unitOf(bridge, inspection);
  const state: WorkState = lines < SOUND.length ? 'proof_open' : 'ready';
  await bridge.call('set_unit_state', { unit: kept.id, state });
  return kept;
}

/** A week's intake: U-0001 the first, one in nearly every state. */
export async function shop(bridge: Bridge): Promise<string> {
  await bridge.call('set_inspector', { author: 'Kim', language: 'en' });
  await enqueue(bridge, SHELF_RADIO, null);
  await enqueue(bridge, HOT_CHASSIS, 'do_not_power');
  await enqueue(bridge, LEAKY_AMPLIFIER, 'awaiting_parts');
  await enqueue(bridge, CORD_SEEN, 'in_repair');
  await enqueue(bridge, CLOSED_RADIO, null);
  await proving(bridge, 3);
  await enqueue(bridge, EARTHED_AMPLIFIER, 'handed_back');
  await enqueue(bridge, PICNIC_PORTABLE, null);
  return '#/queue';
}
