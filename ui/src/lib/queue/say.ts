/** What the queue's ids are called. */

import type { QueueCounts } from '../types/QueueCounts';
import type { QueueLine } from '../types/QueueLine';
import type { WorkState } from '../types/WorkState';
import { has, locale, say } from '../words';
import { countOn, type Filters, HERE, LIST_NAMES, type ListName, UNKNOWN } from './filters';

/** The cautions that forbid power whatever the class: `OverlayId` in `permission.rs`. */
const FORBIDDING: readonly string[] = ['line_on_earth', 'damaged_cord', 'filter_capacitors', 'wrong_supply'];

/** What forbids to power a unit beside its class, by name; empty where nothing does. */
export function forbidding({ overlays }: QueueLine): string {
  const those = overlays.filter((id) => FORBIDDING.includes(id));
  return those.map((id) => say(`queue-overlay-${id}`)).join(', ');
}

export function stateName(state: WorkState | string): string {
  return say(`work-${state}`);
}

/** One value of a filter. A place is called what people called it. */
export function valueName(list: ListName, id: string): string {
  switch (list) {
    case 'states':
      return stateName(id);
    case 'classes':
      return id === UNKNOWN ? say(`queue-${UNKNOWN}`) : say(`class-${id}-short`);
    case 'bases':
      return say(`queue-basis-${id}`);
    case 'overlays':
      return say(`queue-overlay-${id}`);
    case 'kinds':
      return has(`answer-kind-${id}`) ? say(`answer-kind-${id}`) : id;
    case 'places':
      return id;
  }
}

/** A day as people write it. */
function dayName(day: string): string {
  return new Date(`${day}T12:00`).toLocaleDateString(locale(), { dateStyle: 'medium' });
}

/** A filter that is on, and what takes it off. */
export interface OnChip {
  key: string;
  text: string;
  off: Partial<Filters>;
}

export function chipsOf(filters: Filters): OnChip[] {
  if (countOn(filters) === 0) return [];
  const listed = LIST_NAMES.flatMap((name) =>
    filters[name].map((id) => ({
      key: `${name} ${id}`,
      text: valueName(name, id),
      off: { [name]: filters[name].filter((one) => one !== id) },
    })),
  );
  const { from, to } = filters;
  return [
    ...listed,
    ...(from === '' ? [] : [{ key: 'from', text: say('queue-since', { day: dayName(from) }), off: { from: '' } }]),
    ...(to === '' ? [] : [{ key: 'to', text: say('queue-until', { day: dayName(to) }), off: { to: '' } }]),
  ];
}

/** A unit by its number and name. */
export function unitName({ unit }: QueueLine): string {
  return say('queue-unit', { label: unit.label, name: unit.name || say('list-unnamed') });
}

/** The inspection that a unit's proof is entered in: another may have been begun since. */
export function proofIn({ proof, unit }: QueueLine): string | null {
  return proof ?? unit.inspection;
}

/** The queue in a line: how many units stand where, without those handed back. */
export function inQueue(counts: QueueCounts): string {
  const there = counts.states.filter(({ state, units }) => units > 0 && HERE.includes(state));
  const each = there.map(({ text, units }) => say('queue-of-state', { state: text, units }));
  return each.length === 0 ? say('queue-none-here') : each.reduce((before, after) => say('queue-and', { before, after }));
}
