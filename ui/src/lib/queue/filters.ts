/** What the queue is narrowed to: kept on this device, and asked of the core. */

import { CLASSES } from '../classes';
import type { QueueAsk } from '../types/QueueAsk';
import type { WorkState } from '../types/WorkState';

/** The states, in the order in which a shop goes. */
export const STATES: readonly WorkState[] = [
  'to_inspect',
  'do_not_power',
  'awaiting_parts',
  'in_repair',
  'proof_open',
  'ready',
  'handed_back',
];
/** Where a unit still stands in the shop. */
export const HERE: readonly WorkState[] = STATES.filter((state) => state !== 'handed_back');
/** A class that is not worked out, as the core is asked for it. */
export const UNKNOWN = 'unknown';
export const BASES = ['shown', 'not_ruled_out'] as const;
/** The cautions that can stand beside a class, in the order in which a verdict gives them. */
export const OVERLAYS = [
  'live_inside',
  'line_on_earth',
  'prove_outlet',
  'earth_carries_leakage',
  'aerial_terminal',
  'b_plus_on_terminals',
  'resistance_cord',
  'damaged_cord',
  'aged_cord',
  'no_fuse',
  'fuse_in_common_leg',
  'accessory_outlet',
  'filter_capacitors',
  'stored_charge',
  'asbestos',
  'selenium',
  'pcb',
  'radium',
  'wrong_supply',
] as const;
/** Letters that a search begins with: one alone finds nearly everything. */
const FEWEST_LETTERS = 2;

/** Lists of ids, of which any will do; of cautions all must stand. */
export interface Lists {
  states: readonly string[];
  classes: readonly string[];
  bases: readonly string[];
  overlays: readonly string[];
  places: readonly string[];
  kinds: readonly string[];
}
export type ListName = keyof Lists;

export interface Filters extends Lists {
  text: string;
  /** Days as a date field writes them, `2026-03-01`; empty where there is no such end. */
  from: string;
  to: string;
  newest: boolean;
}

export const LIST_NAMES: readonly ListName[] = ['states', 'classes', 'bases', 'overlays', 'places', 'kinds'];
const NO_LISTS: Lists = { states: [], classes: [], bases: [], overlays: [], places: [], kinds: [] };
/** All filters taken off; the text is none. */
export const NO_FILTERS: Omit<Filters, 'newest' | 'text'> = { ...NO_LISTS, from: '', to: '' };

const KEY = 'queue';

/** The filters as they were left. */
export function readFilters(): Filters {
  const usual = { ...NO_FILTERS, text: '', newest: false };
  try {
    const kept = JSON.parse(localStorage.getItem(KEY) ?? '{}') as Partial<Filters>;
    return known({ ...usual, ...kept });
  } catch {
    return usual;
  }
}

export function keepFilters(filters: Filters): void {
  localStorage.setItem(KEY, JSON.stringify(filters));
}

/** Without what this version knows nothing of: the core would refuse all of it. */
function known(kept: Filters): Filters {
  const among = (ids: readonly string[], all: readonly string[]): string[] => ids.filter((id) => all.includes(id));
  const texts = (ids: readonly string[]): string[] => ids.filter((id) => typeof id === 'string');
  return {
    ...kept,
    states: among(kept.states, STATES),
    classes: among(kept.classes, [...CLASSES, UNKNOWN]),
    kinds: texts(kept.kinds),
    places: texts(kept.places),
    bases: among(kept.bases, BASES),
    overlays: among(kept.overlays, OVERLAYS),
  };
}

/** What is searched for; nothing before there are letters enough. */
export function searched({ text }: Filters): string {
  const trimmed = text.trim();
  return trimmed.length < FEWEST_LETTERS ? '' : trimmed;
}

/** Whether the first day comes after the last. */
export function isTurned({ from, to }: Filters): boolean {
  return from !== '' && to !== '' && from > to;
}

/** What the core is asked. Of states none chosen are those in the shop; who searches looks everywhere. */
export function askOf(filters: Filters): Partial<QueueAsk> {
  const text = searched(filters);
  const { from, to, newest } = filters;
  const lists = Object.fromEntries(LIST_NAMES.map((name) => [name, [...filters[name]]]));
  const here = text === '' ? { states: [...HERE] } : {};
  return {
    ...lists,
    ...(filters.states.length === 0 ? here : {}),
    text,
    newest,
    ...(from === '' ? {} : { from: new Date(`${from}T00:00`).getTime() }),
    ...(to === '' ? {} : { to: new Date(`${to}T23:59:59.999`).getTime() }),
  };
}

/** How many filters are on, each value counted; the text is no filter. */
export function countOn(filters: Filters): number {
  const days = [filters.from, filters.to].filter((day) => day !== '').length;
  return LIST_NAMES.reduce((sum, name) => sum + filters[name].length, days);
}

/** The list with an id taken in or taken out. */
export function turned(ids: readonly string[], id: string): string[] {
  return ids.includes(id) ? ids.filter((one) => one !== id) : [...ids, id];
}
