import { fraction, positive, type Band, NO_BAND } from '../range.ts';

export type Verdict = 'late' | 'early' | 'within' | 'undetermined';

/** Simple: the value alone decides. Guarded: its whole interval must lie on one side, a guard band of U. */
export type DecisionRule = 'simple' | 'guarded';

/** Values this close to a limit, relative to it, are on it: it is floating-point noise, far below any reading. */
const SLACK = 1e-12;

/**
 * Whether thresholds of a channel act where they should: Km/Kc within [1 − t, 1 + t], limits included, is `within`;
 * below it the monitor under-reads and acts `late`, above it `early`. Sensitivities in one unit, above 0; `tolerance`
 * and `uncertainty` (expanded, of Km) fractions in [0, 1). Guarded without an uncertainty decides as simple. Inputs out
 * of range are `undetermined`. Source: ILAC-G8:09/2019 4.2.1 and 4.2.2, JCGM 106:2012.
 * Example: 200 configured, 160 measured, 5 %, U 0.03, guarded → late.
 */
export function decide(
  configured: number,
  measured: number,
  tolerance: number,
  uncertainty: number | null,
  rule: DecisionRule,
): Verdict {
  if (!positive(configured) || !positive(measured) || !fraction(tolerance)) return 'undetermined';
  if (uncertainty !== null && !fraction(uncertainty)) return 'undetermined';
  const ratio = measured / configured;
  const guard = rule === 'guarded' && uncertainty !== null ? ratio * uncertainty : 0;
  const side = sideOf(ratio - guard, ratio + guard, 1 - tolerance, 1 + tolerance);
  if (side === 'below') return 'late';
  if (side === 'above') return 'early';
  return side;
}

/**
 * The same decision on an effective threshold, for position channels whose zero moves too: |T| within
 * [|S|/(1 + t), |S|/(1 − t)]. `intended` is m·S, not 0; it, `effective` and the ends of its band (`null`: unknown,
 * decided as simple) are signed and in one unit. A threshold on the other side of zero acts at rest and is `early`.
 * An infinite one is `late`. Range, error and source as `decide`.
 * Example: 20 mil intended, 25 effective, band 24.27 to 25.77, 5 %, guarded → late.
 */
export function decideOnThreshold(
  intended: number,
  effective: number,
  low: number | null,
  high: number | null,
  tolerance: number,
  rule: DecisionRule,
): Verdict {
  const size = Math.abs(intended);
  if (!positive(size) || Number.isNaN(effective) || !fraction(tolerance)) return 'undetermined';
  const sign = Math.sign(intended);
  const guarded = rule === 'guarded' && low !== null && high !== null;
  const one = sign * (guarded ? low : effective);
  const other = sign * (guarded ? high : effective);
  const side = sideOf(
    Math.min(one, other),
    Math.max(one, other),
    size / (1 + tolerance),
    size / (1 - tolerance),
  );
  if (side === 'below') return 'early';
  if (side === 'above') return 'late';
  return side;
}

function sideOf(
  low: number,
  high: number,
  from: number,
  to: number,
): 'below' | 'within' | 'above' | 'undetermined' {
  const lowest = from * (1 - SLACK);
  const highest = to * (1 + SLACK);
  if (low >= lowest && high <= highest) return 'within';
  if (high < lowest) return 'below';
  if (low > highest) return 'above';
  return 'undetermined';
}

/**
 * Effective thresholds that a tolerance t on sensitivity accepts, [m·S/(1 + t), m·S/(1 − t)], in the unit of the
 * setpoint: the same decision as Km/Kc within [1 − t, 1 + t]. Setpoint (a magnitude) and multiplier above 0, t a
 * fraction in [0, 1); both ends `NaN` otherwise. Source: the tolerance is that of API 670 on the incremental scale
 * factor, 5 % (from memory). Example: 5 mil at 5 % → 4.762 to 5.263 mil.
 */
export function acceptanceBand(setpoint: number, tolerance: number, multiplier: number): Band {
  if (!positive(setpoint) || !positive(multiplier) || !fraction(tolerance)) return NO_BAND;
  const intended = multiplier * setpoint;
  return { low: intended / (1 + tolerance), high: intended / (1 - tolerance) };
}
