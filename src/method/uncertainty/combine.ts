/** One part of a budget of independent parts. */
export interface BudgetPart {
  /** Standard uncertainty, 0 or above, in the unit of the result. */
  readonly standard: number;
  /** Degrees of freedom, above 0; infinite where the spread is known. */
  readonly freedom: number;
}

export interface Combined {
  readonly standard: number;
  /** Effective degrees of freedom; infinite where no part limits them. */
  readonly freedom: number;
}

/**
 * Combined standard uncertainty of independent parts, the root of the sum of squares, and its effective degrees of
 * freedom by Welch–Satterthwaite, u⁴/Σ(u_i⁴/ν_i). At least one part above 0; `undefined` otherwise.
 * Source: JCGM 100:2008 5.1.2 and G.4.1, eq. (G.2b). Example: 0.25, 0.57, 0.82 % with 9, 4, 14 → 1.03 %, 19.0.
 */
export function combineUncertainties(parts: readonly BudgetPart[]): Combined | undefined {
  if (!parts.every(({ standard, freedom }) => standard >= 0 && standard < Infinity && freedom > 0)) {
    return undefined;
  }
  const standard = Math.hypot(...parts.map((part) => part.standard));
  if (!(standard > 0)) return undefined;
  const share = parts.reduce((sum, part) => sum + (part.standard / standard) ** 4 / part.freedom, 0);
  return { standard, freedom: share > 0 ? 1 / share : Infinity };
}
