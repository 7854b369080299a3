import { fraction, positive } from './range.ts';

/** What a pair of readings is consistent with: a hint at the next thing to check, never a verdict. */
export type PointsTo =
  | 'nothing'
  | 'too much cable'
  | 'too little cable'
  | 'probe position'
  | 'hidden by the gap voltage'
  | 'no single cause';

/**
 * What a sensitivity and gap voltage point to against a reference reading of the same channel at the same mechanical
 * gap. Sensitivities in one unit, above 0; gap voltages in V, compared without their signs; `tolerance` a fraction of
 * the reference sensitivity in [0, 1), `voltTolerance` in V, 0 or above; both limits belong to "right". Both low: too
 * much cable; both high: too little; only the gap voltage off: probe position; only the sensitivity off: the gap
 * voltage hides the fault. `undefined` out of range. Source: common practice, no source.
 * Example: 160 against 200 mV/mil at −8 against −10 V, 5 % and 0.5 V → too much cable.
 */
export function pointsTo(
  measured: number,
  reference: number,
  gapVoltage: number,
  referenceGapVoltage: number,
  tolerance: number,
  voltTolerance: number,
): PointsTo | undefined {
  if (!positive(measured) || !positive(reference) || !fraction(tolerance) || !(voltTolerance >= 0))
    return undefined;
  const sensitivity = side(measured - reference, tolerance * reference);
  const gap = side(Math.abs(gapVoltage) - Math.abs(referenceGapVoltage), voltTolerance);
  if (Number.isNaN(gap)) return undefined;
  if (sensitivity === 0) return gap === 0 ? 'nothing' : 'probe position';
  if (gap === 0) return 'hidden by the gap voltage';
  if (sensitivity !== gap) return 'no single cause';
  return sensitivity < 0 ? 'too much cable' : 'too little cable';
}

/** −1, 0 or +1: below, inside or above a tolerance, with slack for floating-point noise at its edge. */
function side(difference: number, tolerance: number): number {
  return Math.abs(difference) <= tolerance * (1 + 1e-12) ? 0 : Math.sign(difference);
}
