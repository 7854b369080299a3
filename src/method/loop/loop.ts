import { positive } from '../range.ts';

/**
 * Reading of a current loop with measured end points, (I − I0)/(I100 − I0)·span, in the unit of `span` (above 0).
 * Currents in mA, the end points finite and different, in either order; `NaN` otherwise. A current outside the end
 * points reads outside the span. Source: straight line through the end points.
 * Example: 12 mA, span 20 mm/s, 4 and 20 mA → 10 mm/s.
 */
export function loopReading(current: number, span: number, at0: number, at100: number): number {
  if (!Number.isFinite(current) || !Number.isFinite(at0) || !Number.isFinite(at100)) return NaN;
  return positive(span) && at0 !== at100 ? ((current - at0) / (at100 - at0)) * span : NaN;
}
