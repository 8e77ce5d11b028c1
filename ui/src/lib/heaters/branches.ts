import type { TubeRow } from '../types/TubeRow';

/** Where a heater stands in the stack, counted from where the one before it ends. */
export interface Share {
  /** Which of the columns side by side it is in, and of how many. */
  part: number;
  parts: number;
  /** How far below the top of these columns it begins, V. */
  above: number;
  /** By how much the stack is lower after it, V. */
  falls: number;
}

/** Shares of the heaters of a string, and what the string comes to along one path, V. Branches stand side by
 * side: as many as together draw the current of the string. */
export function shared(rows: readonly TubeRow[]): { shares: Share[]; sum: number } {
  const straight = rows.filter(({ place }) => place !== 'branch');
  const branches = rows.filter(({ place }) => place === 'branch');
  const volts = (some: readonly TubeRow[]): number => some.reduce((all, row) => all + (row.volts ?? 0), 0);
  const draws = (some: readonly TubeRow[]): number => Math.max(0, ...some.map(({ amperes }) => amperes ?? 0));
  const ratio = Math.round(draws(straight) / draws(branches));
  const parts = branches.length === 0 ? 1 : ratio > 1 && ratio <= branches.length ? ratio : 2;
  const each = volts(branches) / parts;
  let left = branches.length;
  let part = 0;
  let filled = 0;
  const shares = rows.map(({ place, volts: heater }): Share => {
    const own = heater ?? 0;
    if (place !== 'branch' || parts === 1) return { part: 0, parts: 1, above: 0, falls: own };
    left -= 1;
    const share = { part, parts, above: filled, falls: left === 0 ? each : 0 };
    filled += own;
    if (filled >= each * 0.95) {
      part = Math.min(part + 1, parts - 1);
      filled = 0;
    }
    return share;
  });
  // Rated volts have one place or two; adding them up in another order must not show.
  return { shares, sum: Number((volts(straight) + each).toFixed(2)) };
}
