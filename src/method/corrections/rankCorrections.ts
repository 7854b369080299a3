/** How bad a machine or a fleet is once these channels are corrected: the less the better. */
export type Objective = (corrected: ReadonlySet<string>) => number;

/** What one correction by itself takes off the objective. */
export interface Correction {
  readonly tag: string;
  /** The objective once it is made. */
  readonly left: number;
  /** What it takes off; 0 or below where it does not help by itself. */
  readonly gain: number;
}

/** Falls closer than this are the same: it is the noise of the integrals. */
export const SAME = 1e-12;

/**
 * All corrections by themselves, the most helpful first, equal ones in the order of their tags. The objective finite.
 * Source: exhaustive. Example: objectives 0.8 now, 0.5 with A, 0.7 with B → A (0.3), B (0.1).
 */
export function rankCorrections(tags: readonly string[], objective: Objective): Correction[] {
  const now = objective(new Set());
  return inOrder(tags)
    .map((tag) => {
      const left = objective(new Set([tag]));
      return { tag, left, gain: now - left };
    })
    .sort((one, other) => Math.round(other.gain / SAME) - Math.round(one.gain / SAME));
}

/** Tags in one order everywhere, whatever the language of the computer. */
export function inOrder(tags: readonly string[]): string[] {
  return [...new Set(tags)].sort((one, other) => (one < other ? -1 : Number(one > other)));
}
