/**
 * Largest peak-to-peak swing about a gap that stays inside the linear range [from, to], max(0, 2·min(g0 − from,
 * to − g0)). All gaps in one unit, `from` < `to`, finite; `NaN` otherwise; 0 where the gap lies outside the range.
 * Source: geometry. Example: gap 50 in 10 to 90 mil → 80 mil.
 */
export function linearReach(gap: number, from: number, to: number): number {
  if (!Number.isFinite(gap) || !Number.isFinite(from) || !Number.isFinite(to) || from >= to) return NaN;
  return Math.max(0, 2 * Math.min(gap - from, to - gap));
}
