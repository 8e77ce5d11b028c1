/** Units whose repair was chosen, and what was entered for the lines of its proof. */

import type { ProofEntry, RemedyStack } from '../../ui/src/lib/backend/backend';
import type { ProofLine } from '../../ui/src/lib/types/ProofLine';
import type { Bridge } from './bridge';
import { inspect, type Unit } from './units';

/** A unit with a stack of repairs; a line is entered in the order in which it stands here. */
export interface Repaired {
  unit: Unit;
  stack: RemedyStack;
  entries?: readonly (readonly [ProofLine, ProofEntry])[];
  /** It was marked ready. */
  ready?: true;
}

/** Puts it into the record; gives its inspection. */
export async function repaired(bridge: Bridge, { unit, stack, entries = [], ready }: Repaired): Promise<string> {
  const inspection = await inspect(bridge, unit);
  await bridge.call('choose_remedies', { inspection, stack });
  for (const [line, entry] of entries) await bridge.call('enter_proof', { inspection, line, entry });
  if (ready) await bridge.call('mark_ready', { inspection, ready });
  return inspection;
}

/** What a sound repair reads: below the limits of data/proof.csv, which is what the lines are compared with. */
export const SOUND: readonly (readonly [ProofLine, ProofEntry])[] = [
  ['earth_bond', { read: 0.08 }],
  ['cord_pull', { holds: true }],
  ['hot_blade_open_off', { over_range: true }],
  ['insulation', { read: 20 }],
  ['outlet_proven', { holds: true }],
  ['chassis_volts_loaded', { positions: { first_off: 0.01, first_on: 0.02, second_off: 0.01, second_on: 0.03 } }],
  ['leakage_first', { read: 0.02 }],
  ['leakage_second', { read: 0.03 }],
];
