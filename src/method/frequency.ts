import { positive } from './range.ts';

/** Sensitivities measured at frequencies or speeds, strictly increasing. */
export interface FrequencyRecord {
  readonly frequencies: readonly number[];
  readonly sensitivities: readonly number[];
}

/**
 * Sensitivity at a frequency: straight between the points of a record, in its unit; never beyond its ends, `NaN` there.
 * Source: linear interpolation. Example: 181 at 20 Hz and 194 at 40 Hz → 184.25 at 25 Hz.
 */
export function sensitivityAt({ frequencies, sensitivities }: FrequencyRecord, frequency: number): number {
  const above = frequencies.findIndex((one) => one >= frequency);
  const [f1 = NaN, k1 = NaN] = [frequencies[above], sensitivities[above]];
  if (f1 === frequency) return k1;
  const [f0 = NaN, k0 = NaN] = [frequencies[above - 1], sensitivities[above - 1]];
  return k0 + ((frequency - f0) / (f1 - f0)) * (k1 - k0);
}

/**
 * Sensitivity at a running frequency from one measured at another and the response of the sensor at both: K =
 * Km·h(f)/h(f_meas), in the unit of Km. Responses above 0. It holds for the component at that frequency, not for an
 * overall value. Source: a response multiplies. Example: 500 at 80 Hz, 0.8499 of it at 10 Hz → 424.9.
 */
export function sensitivityByResponse(measured: number, at: number, whereMeasured: number): number {
  return whereMeasured > 0 ? (measured * at) / whereMeasured : NaN;
}

/**
 * Response of a second-order high-pass (a seismic sensor) against that far above its corner: r²/√((1 − r²)² + (2ζr)²), r =
 * frequency/corner. Both in one unit, above 0, damping ratio ζ above 0; `NaN` otherwise. Source: vibration textbooks (two
 * worked examples read). Example: 10 corners up, ζ 0.2 → 1.0093.
 */
export function highPass(frequency: number, corner: number, damping: number): number {
  if (!positive(frequency) || !positive(corner) || !positive(damping)) return NaN;
  const q = corner / frequency;
  return 1 / Math.hypot((q - 1) * (q + 1), 2 * damping * q);
}

/**
 * Response of a first-order low-pass (a long cable, a filter) against that far below its corner: 1/√(1 + r²), r =
 * frequency/corner, both in one unit, above 0; `NaN` otherwise. Source: vibration textbooks. Example: at a third of the
 * corner → 0.9487.
 */
export function lowPass(frequency: number, corner: number): number {
  if (!positive(frequency) || !positive(corner)) return NaN;
  return 1 / Math.hypot(1, frequency / corner);
}
