/** How far along a logarithmic scale between two ends a value lies, 0 to 1. */
export function along(value: number, least: number, most: number): number {
  const share = Math.log10(Math.max(value, least) / least) / Math.log10(most / least);
  return Math.min(Math.max(share, 0), 1);
}
