import type { ThresholdName } from './threshold.ts';

/** One point of a calibration record. */
export interface RecordPoint {
  /** In the record's gap unit. */
  readonly gap: number;
  /** V, with its sign. */
  readonly volts: number;
  /** Of the step to the next point, mV per gap unit; `null` at the last point. */
  readonly incremental: number | null;
  /** Of that step, against the rated sensitivity, as a fraction. */
  readonly incrementalError: number | null;
  /** Off the line of rated slope that fits `span` best, in gap units; `null` where no sensitivity is rated. */
  readonly deviation: number | null;
  /** Off the fitted line, in gap units. */
  readonly deviationFitted: number | null;
}

/** A threshold on the record's curve, beside the one of the report's `thresholds` with this name and multiplier. */
export interface RecordThreshold {
  readonly name: ThresholdName;
  readonly multiplier: number;
  /** Real displacement at which it acts, in the channel's unit and detection; `null` where that can't be shown. */
  readonly onCurve: number | null;
  /** The largest indication that the record supports, in the channel's unit and detection, where it can't be shown. */
  readonly largestIndicated: number | null;
}

/** Another record of the same channel. */
interface OtherRecord {
  readonly series: string;
  readonly temperature: string;
  /** mV per gap unit of that record; `null` where it has no line. */
  readonly average: number | null;
  readonly gapUnit: string;
}

/** An amount in V, as a fraction of the output span, and in the record's gap unit. */
export interface RecordSpread {
  readonly volts: number;
  readonly ofSpan: number;
  readonly displacement: number;
}

/** What a record that was read up and down says beside its mean curve, which the audit goes by. */
export interface UpDownResult {
  /** Runs up and down together. */
  readonly cycles: number;
  /** V between the ends of the mean curve. */
  readonly span: number;
  readonly hysteresis: RecordSpread;
  /** `null` with one cycle. */
  readonly repeatability: RecordSpread | null;
  /** Largest deviation of the mean curve from the line through its ends, and from the line that makes it least. */
  readonly terminal: RecordSpread;
  readonly independent: RecordSpread;
  /** Gaps that were read one way only; they stay out. */
  readonly oneWay: readonly number[];
}

/** What the calibration record of a channel says. Sensitivities are positive, in mV per gap unit. */
export interface RecordResult {
  readonly sheet: string;
  /** Row of its first point. */
  readonly row: number;
  readonly series: string;
  readonly temperature: string;
  /** `YYYY-MM-DD`. */
  readonly takenOn: string | null;
  readonly gapUnit: string;
  /** As read, or the mean curve of a record read up and down. */
  readonly points: readonly RecordPoint[];
  /** `null` where it was read one way. */
  readonly upDown: UpDownResult | null;
  /** Least-squares line over `span`. */
  readonly average: number;
  readonly averageUncertainty: number | null;
  /** V at no gap. */
  readonly intercept: number;
  readonly interceptUncertainty: number | null;
  readonly correlation: number | null;
  /** V. */
  readonly residualDeviation: number | null;
  /** Gaps between which the line was fitted: the straight part of the record, or all of it. */
  readonly span: { readonly from: number; readonly to: number };
  /** Rated sensitivity it is compared with. */
  readonly rated: number | null;
  /** Gaps of the linear range about the rated sensitivity: that with the operating gap, else the longest. */
  readonly linearRange: { readonly from: number; readonly to: number } | null;
  /** Gaps of the straight part about the record's own sensitivity, from which the linear reach follows. */
  readonly straightPart: { readonly from: number; readonly to: number } | null;
  /** Gap at the channel's gap voltage. */
  readonly operatingGap: number | null;
  readonly thresholds: readonly RecordThreshold[];
  readonly others: readonly OtherRecord[];
}

/** A check with a known vibration at one or several levels. */
export interface DynamicResult {
  readonly sheet: string;
  readonly row: number;
  readonly levels: number;
  /** Mean of the levels, in the unit of the channel's sensitivities. */
  readonly sensitivity: number;
  /** Expanded (95.45 %), in that unit; `null` with one level. */
  readonly uncertainty: number | null;
}
