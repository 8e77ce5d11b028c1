/** A figure as it is written in a drawing: no more places than anybody reads off a bar. */
export function figure(value: number): number {
  return Number(value.toPrecision(4));
}
