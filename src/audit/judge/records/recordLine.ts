import type { CalibrationRecord } from '../../../method/record/calibrationRecord.ts';
import { incrementalSensitivity } from '../../../method/record/incremental.ts';
import { type LinearLimits, type LinearRange, linearRange } from '../../../method/record/linearRange.ts';
import { type StraightLine, straightLine } from '../../../method/record/straightLine.ts';

/** The straight part of a record and the line through it. Sensitivities in V per gap unit. */
export interface RecordLine {
  /** `undefined` where no two steps agree. */
  readonly straight: LinearRange | undefined;
  readonly line: StraightLine;
  readonly span: { readonly from: number; readonly to: number };
}

/**
 * The line of a record: least squares through its straight part, or through all points where that has fewer than three.
 * Straight is what keeps within the tolerances about the record's own sensitivity, the median of its steps: a chain that
 * is 20 % low all along is straight, though nowhere near its rated sensitivity.
 */
export function recordLine(
  record: CalibrationRecord,
  tolerance: number,
  deviation: number,
  midGap: number | undefined,
): RecordLine | undefined {
  const own = median(incrementalSensitivity(record));
  const limits: LinearLimits = { rated: own, tolerance, deviation };
  const straight =
    (midGap === undefined ? undefined : linearRange(record, { ...limits, midGap })) ??
    linearRange(record, limits);
  const { gaps, volts } = record;
  const enough = straight && straight.last - straight.first >= 2;
  const [first, last] = enough ? [straight.first, straight.last] : [0, gaps.length - 1];
  const line = straightLine(gaps.slice(first, last + 1), volts.slice(first, last + 1));
  return line && { straight, line, span: { from: gaps[first] ?? NaN, to: gaps[last] ?? NaN } };
}

function median(values: readonly number[]): number {
  const inOrder = values.toSorted((one, other) => one - other);
  const middle = (inOrder.length - 1) / 2;
  return ((inOrder[Math.floor(middle)] ?? NaN) + (inOrder[Math.ceil(middle)] ?? NaN)) / 2;
}
