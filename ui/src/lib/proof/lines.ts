/** In which order the lines of a proof are gone through. */

import { readNumber } from '../figure';
import { readWritten } from '../readings/written';
import type { JsonValue } from '../types/serde_json/JsonValue';
import type { ProofLineView } from '../types/ProofLineView';
import type { ProofView } from '../types/ProofView';
import type { TouchPosition } from '../types/TouchPosition';
import type { Who } from '../types/Who';

/** Who has to say who they are before a line is entered: what is done there is done at live parts. */
export function isLive(who: Who): boolean {
  return who === 'qualified_live' || who === 'electrician';
}

/** The groups of lines, each under who may do them and how. */
export const GROUPS: readonly { id: string; of: readonly Who[] }[] = [
  { id: 'unplugged', of: ['anyone', 'qualified'] },
  { id: 'outlet', of: ['electrician'] },
  { id: 'live', of: ['qualified_live'] },
];

/** The line to go on with from one of them: the first open one after it, else the first of all. */
export function nextOpen(page: ProofView, from: string | null): ProofLineView | null {
  const open = page.lines.filter((line) => line.mark === 'open' && line.id !== from && line.waits_for === null);
  const place = page.lines.findIndex(({ id }) => id === from);
  return open.find((line) => page.lines.indexOf(line) > place) ?? open[0] ?? null;
}

/** The readings that are kept for the positions of a line. */
export function keptPositions(entry: JsonValue | null): Partial<Record<TouchPosition, number>> {
  if (typeof entry !== 'object' || entry === null || Array.isArray(entry)) return {};
  return (entry['positions'] ?? {}) as Partial<Record<TouchPosition, number>>;
}

/** The most that is read as a number here; how much a line takes, the core says. */
const MOST = Number.MAX_VALUE;

/** What a person copies off a meter for a unit; null for anything else. */
export function readEntered(text: string, unit: string): number | 'OL' | null {
  if (unit === 'Ω') return readWritten(text);
  return /^\s*[o0]\.?l\.?\s*$/i.test(text) ? 'OL' : readNumber(text, MOST);
}

const UNITS: Readonly<Record<string, string>> = { Ω: 'ohms', MΩ: 'megohms', V: 'volts', mA: 'milliamps' };

/** The message that names the field for a unit. */
export function fieldOf(unit: string): string {
  return `proving-${UNITS[unit] ?? 'figure'}`;
}
