import type { CalibrationRecord } from './calibrationRecord.ts';
import type { Curve, CurveMethod } from './curve.ts';
import { linearCurve } from './linearCurve.ts';
import { monotoneCurve } from './monotoneCurve.ts';

/** The curve of a record by the method of that name; `undefined` where the voltage does not fall all the way. */
export function curveOf(record: CalibrationRecord, method: CurveMethod): Curve | undefined {
  return method === 'linear' ? linearCurve(record) : monotoneCurve(record);
}
