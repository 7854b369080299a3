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
