/** Gaps and the volts measured at them, in the order of the gaps; gaps strictly increasing, at least two points. */
export interface CalibrationRecord {
  /** In one displacement unit. */
  readonly gaps: readonly number[];
  /** V, with their sign. */
  readonly volts: readonly number[];
  /** Whether the points came in another order and were sorted. */
  readonly sorted: boolean;
}

/** Why points are no calibration record; `at` counts points from 0 as they came. */
export interface RecordFault {
  readonly fault: 'lengths differ' | 'not a number' | 'too few points' | 'gap repeated';
  readonly at: number;
}

/**
 * Points as a calibration record, sorted by gap. `gaps` in any one displacement unit, `volts` in V, one for each gap.
 * At least `least` points (2, a single step, or more); a gap that stands twice is a fault, as which of its voltages
 * counts is nobody's to guess. Source: the order of a record is that of its gaps; common practice, no source.
 * Example: gaps 20, 10, 30 mil at −4, −2, −6 V → 10, 20, 30 at −2, −4, −6, `sorted`.
 */
export function calibrationRecord(
  gaps: readonly number[],
  volts: readonly number[],
  least = 2,
): CalibrationRecord | RecordFault {
  if (gaps.length !== volts.length)
    return { fault: 'lengths differ', at: Math.min(gaps.length, volts.length) };
  const bad = gaps.findIndex((gap, at) => !Number.isFinite(gap) || !Number.isFinite(volts[at]));
  if (bad >= 0) return { fault: 'not a number', at: bad };
  if (gaps.length < Math.max(2, least)) return { fault: 'too few points', at: gaps.length };
  const order = gaps.map((_, at) => at).sort((one, other) => (gaps[one] ?? 0) - (gaps[other] ?? 0));
  const inOrder = order.map((at) => gaps[at] ?? NaN);
  const repeated = inOrder.findIndex((gap, at) => at > 0 && gap === inOrder[at - 1]);
  if (repeated >= 0) return { fault: 'gap repeated', at: order[repeated] ?? 0 };
  return {
    gaps: inOrder,
    volts: order.map((at) => volts[at] ?? NaN),
    sorted: order.some((at, place) => at !== place),
  };
}

/** Whether points are no record. */
export function isFault(record: CalibrationRecord | RecordFault): record is RecordFault {
  return 'fault' in record;
}

/**
 * The step, from 0, over which the voltage does not fall although the gap grows; `undefined` where it falls all the
 * way. Such a record has no curve to be read backwards. Source: gap voltages grow more negative with the gap; common
 * practice, no source.
 */
export function stepNotFalling({ volts }: CalibrationRecord): number | undefined {
  const at = volts.findIndex((volt, index) => index > 0 && !(volt < (volts[index - 1] ?? NaN)));
  return at < 0 ? undefined : at - 1;
}

/**
 * Incremental sensitivity of each step, (V_i − V_(i+1))/(g_(i+1) − g_i), in V per gap unit; positive where the voltage
 * falls as the gap grows. One fewer than the record has points. Source: the definition of the incremental scale factor
 * in API 670 (from memory). Example: −2 V at 10 mil and −4 V at 20 mil → 0.2 V/mil.
 */
export function incrementalSensitivity({ gaps, volts }: CalibrationRecord): number[] {
  return gaps
    .slice(1)
    .map((gap, at) => ((volts[at] ?? NaN) - (volts[at + 1] ?? NaN)) / (gap - (gaps[at] ?? NaN)));
}
