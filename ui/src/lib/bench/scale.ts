/** The ends of the volt scale, V: from next to nothing to more than any line. */
const [LEAST, MOST] = [0.001, 1000] as const;

/** How far along the logarithmic scale a voltage lies, 0 to 1. */
export function alongVolts(volts: number): number {
  const share = Math.log10(Math.max(volts, LEAST) / LEAST) / Math.log10(MOST / LEAST);
  return Math.min(Math.max(share, 0), 1);
}
