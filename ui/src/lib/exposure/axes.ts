import { along } from '../scale';

/** A logarithmic axis: its two ends, and where they are on the sheet, px. */
export interface Axis {
  values: readonly [number, number];
  places: readonly [number, number];
}

/** Where a value is on the sheet, px; what is beyond an end is at the end. */
export function placeOn({ values: [least, most], places: [from, to] }: Axis, value: number): number {
  return from + along(value, least, most) * (to - from);
}

/** The whole powers of ten on an axis, both ends included. */
export function decades([least, most]: Axis['values']): number[] {
  // A thousandth of a decade: the logarithm of a power of ten is not always whole.
  const first = Math.ceil(Math.log10(least) - 1e-3);
  const last = Math.floor(Math.log10(most) + 1e-3);
  // A negative power is written as a division: 10 ** -2 would be 0.010000000000000002 on some engines.
  return Array.from({ length: last - first + 1 }, (_, at) => {
    const power = first + at;
    return power < 0 ? 1 / 10 ** -power : 10 ** power;
  });
}

/** What is between the powers of ten: 2 to 9 times each. */
export function betweenDecades([least, most]: Axis['values']): number[] {
  const lowest = 10 ** Math.floor(Math.log10(least) + 1e-3);
  const steps = [2, 3, 4, 5, 6, 7, 8, 9];
  const all = decades([lowest, most]).flatMap((power) => steps.map((step) => step * power));
  return all.filter((value) => value > least && value < most);
}

/** A time as it stands on the axis; the space never breaks. */
export function writeTime(seconds: number): string {
  return seconds < 1 ? `${Math.round(seconds * 1e3)}\u00a0ms` : `${seconds}\u00a0s`;
}
