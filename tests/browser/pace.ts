/** What times come to. */

/** Within how long a share of them are, ms in words. */
export function within(times: readonly number[]): (share: number) => string {
  const sorted = [...times].sort((one, other) => one - other);
  return (share) => (sorted[Math.ceil(share * sorted.length) - 1] ?? NaN).toFixed(1);
}
