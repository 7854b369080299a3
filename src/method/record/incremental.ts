import type { CalibrationRecord } from './calibrationRecord.ts';

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
