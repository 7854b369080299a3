/** What a block of the sheet shows of one channel's calibration record. Sensitivities in mV per gap unit. */
export interface ShownRecord {
  readonly tag: string;
  /** Machine, location, series and where the record stands, as far as they are known. */
  readonly about: readonly string[];
  readonly unit: string;
  readonly gaps: readonly number[];
  /** V. */
  readonly volts: readonly number[];
  readonly rated: number | null;
  /** Of a step, a fraction of the rated sensitivity. */
  readonly tolerance: number;
  /** Of the deviation, in the gap unit. */
  readonly deviation: number;
  /** Points from which the line was fitted, from 0, both counted. */
  readonly fitted: PointSpan;
  readonly linear: { readonly from: number; readonly to: number } | null;
  readonly gapVoltage: number | null;
  readonly operatingGap: number | null;
  readonly thresholds: readonly ShownThreshold[];
  /** Unit and detection of the thresholds. */
  readonly levelUnit: string;
  /** Other records, dynamic checks, and findings, each one text. */
  readonly others: readonly string[];
  readonly findings: readonly string[];
}

export interface PointSpan {
  readonly first: number;
  readonly last: number;
}

/** A threshold by the simple formula beside its curve. Levels in the channel's unit and detection. */
export interface ShownThreshold {
  readonly name: string;
  readonly multiplier: number;
  readonly setpoint: number;
  readonly configured: number;
  /** Whether the monitor's gain is counted in it. */
  readonly isOfGain: boolean;
  readonly measured: number;
  /** Shift by the zero of a position channel; 0 for vibration. */
  readonly zeroShift: number;
  readonly simple: number | null;
  readonly onCurve: number | null;
  readonly largestIndicated: number | null;
}
