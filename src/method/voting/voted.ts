function ascending(a: number, b: number): number {
  return a < b ? -1 : Number(a > b);
}

/**
 * Threshold at which an M-out-of-N group acts when its channels see the same real motion: the M-th smallest of the
 * effective thresholds of its members, in their unit. `Infinity` is a member that cannot act; the result is `Infinity`
 * where fewer than `m` can: the group cannot trip. `NaN` where a member is unknown (`NaN`) or `m` is no whole number of
 * 1 or above. Source: derivation (order statistic). Example: 2 of [4, 4.3, 3.7] → 4.
 */
export function votedThreshold(thresholds: readonly number[], m: number): number {
  if (!Number.isInteger(m) || m < 1 || thresholds.some((threshold) => Number.isNaN(threshold))) return NaN;
  return thresholds.toSorted(ascending)[m - 1] ?? Infinity;
}
