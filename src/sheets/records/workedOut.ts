import { type CalibrationRecord, incrementalSensitivity } from '../../method/record/calibrationRecord.ts';
import { deviations, fittedLine, ratedLine, type VoltageLine } from '../../method/record/deviation.ts';
import { straightLine, type StraightLine } from '../../method/record/straightLine.ts';
import type { ShownRecord } from './shown.ts';

/** What the method gives for a record: the results stored beside the formulas. `null` where there is none. */
export interface WorkedOut {
  readonly line: StraightLine | null;
  /** Of gaps and volts of the fitted points. */
  readonly correlation: number | null;
  readonly rated: VoltageLine | null;
  readonly fitted: VoltageLine | null;
  /** mV per gap unit, one a step. */
  readonly steps: readonly number[];
  readonly ratedDeviations: readonly number[] | null;
  readonly fittedDeviations: readonly number[] | null;
}

/** Works a record out by the method, as the sheet's formulas do. */
export function workedOut({ gaps, volts, rated, fitted: span }: ShownRecord): WorkedOut {
  const record: CalibrationRecord = { gaps, volts, sorted: false };
  const x = gaps.slice(span.first, span.last + 1);
  const y = volts.slice(span.first, span.last + 1);
  const line = straightLine(x, y) ?? null;
  const straight: CalibrationRecord = { gaps: x, volts: y, sorted: false };
  const ofRated = rated === null ? null : (ratedLine(straight, rated / 1000) ?? null);
  const fitted = line && (fittedLine(line) ?? null);
  return {
    line,
    correlation: line && correlation(line, y),
    rated: ofRated,
    fitted,
    steps: incrementalSensitivity(record).map((step) => 1000 * step),
    ratedDeviations: ofRated && deviations(record, ofRated),
    fittedDeviations: fitted && deviations(record, fitted),
  };
}

/** Correlation coefficient of the points of a line: slope·s(x)/s(y). */
function correlation({ slope, spreadX, count }: StraightLine, y: readonly number[]): number {
  const mean = y.reduce((sum, value) => sum + value, 0) / count;
  const spreadY = y.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return slope * Math.sqrt(spreadX / spreadY);
}
