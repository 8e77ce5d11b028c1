import type { TubeRow } from '../types/TubeRow';
import { say } from '../words';

/** A list of tubes as it is written: one entry for each tube, in the order of the list. */
export type Tubes = readonly string[];

/** The most tubes that the core takes. */
export const MOST_TUBES = 60;

/** Equal neighbours, shown in one row. */
export interface Group {
  name: string;
  count: number;
  /** Place of the first of them in the list. */
  from: number;
  /** Tells it from another group of the same type further down. */
  key: string;
}

/** The rows of a list. */
export function groups(tubes: Tubes): Group[] {
  const found: Group[] = [];
  const seen = new Map<string, number>();
  for (const [at, name] of tubes.entries()) {
    const last = found.at(-1);
    if (last?.name === name) {
      last.count += 1;
      continue;
    }
    const times = seen.get(name) ?? 0;
    seen.set(name, times + 1);
    found.push({ name, count: 1, from: at, key: `${name} ${times}` });
  }
  return found;
}

/** Equal heaters in equal places, told once. */
export interface Gathered {
  row: TubeRow;
  count: number;
  key: string;
}

/** Heaters with equal ones gathered, in the order of the list. */
export function gathered(rows: readonly TubeRow[]): Gathered[] {
  const found = new Map<string, Gathered>();
  for (const row of rows) {
    const key = `${row.name} ${row.volts} ${row.amperes} ${row.place}`;
    const before = found.get(key);
    if (before) before.count += 1;
    else found.set(key, { row, count: 1, key });
  }
  return [...found.values()];
}

/** The name of a type, and how many where there are several. */
export function nameOf(row: TubeRow, count: number): string {
  return count > 1 ? say('heaters-times', { type: row.name, count }) : row.name;
}

/** The list with so many tubes in one row; none takes the row away. */
export function withCount(tubes: Tubes, group: Group, count: number): string[] {
  const rest = tubes.slice(group.from + group.count);
  return [...tubes.slice(0, group.from), ...Array<string>(count).fill(group.name), ...rest];
}

/** The list with one row moved past its neighbour above (-1) or below (1). */
export function moved(tubes: Tubes, group: Group, by: -1 | 1): string[] {
  const rows = groups(tubes);
  const at = rows.findIndex(({ from }) => from === group.from);
  const [row] = rows.splice(at, 1);
  if (row) rows.splice(Math.max(at + by, 0), 0, row);
  return rows.flatMap(({ name, count }) => Array<string>(count).fill(name));
}

/** Whether two lists say the same. */
export function same(one: Tubes, other: Tubes): boolean {
  return one.length === other.length && one.every((name, at) => name === other[at]);
}

/** The types in a text that could be a whole list. */
export function words(text: string): string[] {
  return text.split(/[\s,;+|]+/).filter((word) => word !== '');
}

/** The tubes in what an inspection keeps. */
export function tubesIn(kept: unknown): string[] {
  return Array.isArray(kept) ? kept.filter((one) => typeof one === 'string') : [];
}
