import { normalCdf } from '../decision/normal.ts';
import { type Band, NO_BAND, positive } from '../range.ts';

/**
 * A quantity T = A/B of two normally distributed ones, B above 0: standard uncertainties of both and their covariance,
 * all in the units of A and B.
 */
export interface Ratio {
  readonly a: number;
  readonly b: number;
  readonly ua: number;
  readonly ub: number;
  readonly uab: number;
}

/**
 * Interval of a ratio at a coverage factor k (above 0): every T with (A − T·B)² ≤ k²(u_A² − 2T·u_AB + T²u_B²). In the
 * unit of A/B; both ends `NaN` where B is not above k·u_B or an input is out of range. With u_A = 0 it is T/(1 ± U).
 * Source: Fieller's theorem (statement read). Example: 3700/190 with u 50 and 2.85, k 2 → 18.70 to 20.28.
 */
export function ratioBand({ a, b, ua, ub, uab }: Ratio, coverage: number): Band {
  const square = coverage * coverage;
  const most = b * b - square * ub * ub;
  if (!Number.isFinite(a) || !positive(b) || !positive(coverage) || !(most > 0)) return NO_BAND;
  if (!(ua >= 0) || !(ub >= 0) || !Number.isFinite(uab)) return NO_BAND;
  // most·T² − 2·half·T + least ≤ 0
  const half = a * b - square * uab;
  const least = a * a - square * ua * ua;
  const root = Math.sqrt(
    Math.max(0, square * (ua * ua * most + ub * ub * a * a - 2 * uab * a * b + square * uab * uab)),
  );
  const farther = half + Math.sign(half) * root;
  if (farther === 0) return { low: -root / most, high: root / most };
  const [one, other] = [farther / most, least / farther];
  return { low: Math.min(one, other), high: Math.max(one, other) };
}

/**
 * Probability, 0 to 1, that a ratio is greater than a limit (any sign, the unit of A/B): Φ((A − L·B)/u) with u² = u_A² −
 * 2L·u_AB + L²u_B². With no uncertainty 1 or 0. `NaN` for an input out of range. Source: A − L·B is normal; B below 0 is
 * as unlikely as it is taken for. Example: 3700/190 over 21 with u 50 and 2.85 → 0.0001.
 */
export function ratioBeyond({ a, b, ua, ub, uab }: Ratio, limit: number): number {
  if (![a, limit, uab].every(Number.isFinite) || !positive(b) || !(ua >= 0) || !(ub >= 0)) return NaN;
  const margin = a - limit * b;
  const u = Math.sqrt(Math.max(0, ua * ua - 2 * limit * uab + limit * limit * ub * ub));
  if (u === 0) return margin > 0 ? 1 : 0;
  return normalCdf(margin / u);
}

/** Standard uncertainty of a ratio, first order and with the second-order term, and its mean to second order. */
export interface RatioSpread {
  readonly first: number;
  readonly second: number;
  readonly mean: number;
}

/**
 * u² = (u_A/B)² + (T·w)², w = u_B/B, to first order; with 3(u_A/B)²w² + 8T²w⁴ and mean T(1 + w²) to second; a check on
 * the interval, for A and B without covariance. Same range as `ratioBand`, else `NaN`. Source: JCGM 100:2008 5.1.2 note
 * (read; simulated too). Example: 3700/190 with 50 and 2.85 → 0.3932, 0.3934, mean 19.478.
 */
export function ratioSpread({ a, b, ua, ub }: Omit<Ratio, 'uab'>): RatioSpread {
  if (!Number.isFinite(a) || !positive(b) || !(ua >= 0) || !(ub >= 0))
    return { first: NaN, second: NaN, mean: NaN };
  const [t, w, v] = [a / b, ub / b, ua / b];
  const first = v * v + t * t * w * w;
  return {
    first: Math.sqrt(first),
    second: Math.sqrt(first + 3 * v * v * w * w + 8 * t * t * w ** 4),
    mean: t * (1 + w * w),
  };
}

/**
 * Standard uncertainty of a product x·y of two independent quantities, first order and with the second-order term u_x²u_y²,
 * which is all there is where a best value is 0. Source: JCGM 100:2008 5.1.2 note (read). Example: 0 ± 0.5 times 10 ± 0.2
 * → 5, 5.001.
 */
export function productSpread(
  x: number,
  ux: number,
  y: number,
  uy: number,
): { readonly first: number; readonly second: number } {
  return { first: Math.hypot(y * ux, x * uy), second: Math.hypot(y * ux, x * uy, ux * uy) };
}
