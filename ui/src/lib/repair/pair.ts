/** One position looked at before and after repairs: which cell or place of each it is. */

import type { CircuitPlace } from '../backend/backend';
import type { CellLevel } from '../types/CellLevel';
import type { CellView } from '../types/CellView';
import type { CircuitView } from '../types/CircuitView';
import type { Fault } from '../types/Fault';
import type { GridView } from '../types/GridView';
import type { State } from '../types/State';

/** What is looked at, before repairs or after them. */
export type Side = 'before' | 'after';

/** A position with a fault, or none. */
export interface Position {
  fault: Fault | null;
  state: State;
}

/** What a position says in short. */
export interface Short {
  level: CellLevel;
  word: string;
  figure: string | null;
}

const isSame = (one: State, other: State): boolean =>
  one.plug === other.plug && one.switch === other.switch && one.selector === other.selector;

/** The cell of a position; the row is -1 where the grid has no such fault. */
export function cellOf(grid: GridView, { fault, state }: Position): { row: number; column: number } {
  return {
    row: grid.rows.findIndex((row) => row.fault === fault),
    column: nearest(grid, state),
  };
}

/** The column of a state, else of the one that is most like it: a plug that goes in one way only stays so. */
function nearest({ columns }: GridView, wanted: State): number {
  const exact = columns.findIndex(({ state }) => isSame(state, wanted));
  if (exact >= 0) return exact;
  const alike = (selector: boolean) =>
    columns.findIndex(({ state }) => state.switch === wanted.switch && (!selector || state.selector === wanted.selector));
  return alike(true) >= 0 ? alike(true) : alike(false);
}

/** Whether a grid has the plug in another way than is wanted, because it goes in one way only. */
export function isPlugFixed(grid: GridView, position: Position): boolean {
  const column = grid.columns[nearest(grid, position.state)];
  return column !== undefined && column.state.plug !== position.state.plug;
}

/** The position of a cell; null where there is none. */
export function positionOf(grid: GridView, place: { row: number; column: number }): Position | null {
  const row = grid.rows[place.row];
  const column = grid.columns[place.column];
  return row && column ? { fault: row.fault, state: column.state } : null;
}

export function shortOf(grid: GridView, position: Position): Short | null {
  const { row, column } = cellOf(grid, position);
  return grid.rows[row]?.cells[column] ?? null;
}

/** Where a grid is looked at first: what is quoted of it, else the most current. */
export function quotedIn(grid: GridView): Position | null {
  const weight = (cell: CellView): number => (cell.quoted ? Infinity : cell.milliamperes);
  const cells = grid.rows.flatMap(({ cells }, row) => cells.map((cell, column) => ({ cell, row, column })));
  const [first, ...rest] = cells;
  if (!first) return null;
  return positionOf(grid, rest.reduce((most, next) => (weight(next.cell) > weight(most.cell) ? next : most), first));
}

/** A place as near to the one that is wanted as a circuit has it: a plug that goes in one way only stays so, and what
    is not there does not fail. */
export function fitted(wanted: CircuitPlace, { flips, state, choices }: CircuitView): CircuitPlace {
  return {
    plug: flips.plug ? wanted.plug : state.plug,
    switch: wanted.switch,
    selector: state.selector === null ? null : (wanted.selector ?? state.selector),
    faults: wanted.faults.filter((fault) => choices.some((choice) => choice.fault === fault)),
  };
}
