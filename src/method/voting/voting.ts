/** M-out-of-N voting: the group acts when `m` of its `n` channels do. */
export interface Voting {
  readonly m: number;
  readonly n: number;
}

/** Longer texts name no voting, and the pattern below must not be run on them. */
const LONGEST = 30;

const FORM = /^\s*(\d{1,2})\s*(?:-\s*)?(?:oo|out\s+of|of)\s*(?:-\s*)?(\d{1,2})\s*$/i;

/**
 * The voting that a text names: `2oo3`, `2-oo-3`, `2 out of 3`, in any case; 1 ≤ m ≤ n ≤ 99, `undefined` for any other
 * text. Source: the terms 1oo1, 1oo2, 2oo2, 2oo3 of IEC 61508-6 and IEC 61511.
 */
export function parseVoting(text: string): Voting | undefined {
  const [, first, second] = (text.length <= LONGEST ? FORM.exec(text) : null) ?? [];
  const m = Number(first);
  const n = Number(second);
  return m >= 1 && m <= n ? { m, n } : undefined;
}

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
