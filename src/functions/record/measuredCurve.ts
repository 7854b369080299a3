import { stepNotFalling } from '../../method/record/calibrationRecord.ts';
import type { Curve, CurveMethod } from '../../method/record/curve.ts';
import { curveOf } from '../../method/record/curveOf.ts';
import { FunctionError, refused } from '../functionError.ts';
import { pointsOf } from './points.ts';
import { short } from './short.ts';

/** The curve through gaps and volts, for reading either from the other, or why there is none. */
export function measuredCurve(
  gaps: readonly (number | null)[],
  volts: readonly (number | null)[],
  method: CurveMethod,
): Curve | FunctionError {
  const points = pointsOf(gaps, volts);
  if (points instanceof FunctionError) return points;
  const { record } = points;
  const curve = curveOf(record, method);
  if (curve) return curve;
  const step = stepNotFalling(record) ?? 0;
  const [from, to] = [record.gaps[step] ?? null, record.gaps[step + 1] ?? null];
  return refused(
    `Volts does not fall from gap ${short(from)} to ${short(to)}: leave one of the two points out.`,
  );
}
