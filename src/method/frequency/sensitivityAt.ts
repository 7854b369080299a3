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
