/** A dated reading of a channel's sensitivity, in the unit of its sensitivities. */
interface DriftReading {
  /** `YYYY-MM-DD`. */
  readonly date: string;
  readonly sensitivity: number;
  readonly asLeft: boolean;
  /** Expanded, as a fraction of the reading; it does not weigh in the line, which takes all readings as equal. */
  readonly uncertainty: number | null;
  readonly from: 'history' | 'channel list' | 'earlier audit' | 'calibration record';
  readonly sheet: string;
  readonly row: number;
  /** Whether the line goes by it: readings from before a correction do not count. */
  readonly counts: boolean;
}

/** A chain corrected between what was found and what was left on one day. */
interface Correction {
  /** `YYYY-MM-DD`. */
  readonly date: string;
  readonly found: number;
  readonly left: number;
}

/** When the line through the readings leaves the tolerance. Dates `YYYY-MM-DD`. */
export interface DriftForecast {
  /** Whether the line lies within the tolerance on the day of the audit. */
  readonly state: 'inside' | 'outside';
  /** Edge of the tolerance towards which the sensitivity drifts; `null` where it does not. */
  readonly limit: number | null;
  /** Days from the first reading that counts until the line reaches the limit; `null` where it never does. */
  readonly days: number | null;
  /** The day on which the line reaches the limit; `null` where it never does, or not before the year 10000. */
  readonly on: string | null;
  /** From when it may have been reached, by the confidence band of the line; `null`: it may be outside already. */
  readonly earliest: string | null;
  /** By when it has been reached, at that level; `null`: it may never be. */
  readonly latest: string | null;
}

/** How the sensitivity of a channel drifts, from at least three readings on three days. */
export interface DriftResult {
  /** Of the sensitivities. */
  readonly unit: string;
  /** In the order of their dates. */
  readonly readings: readonly DriftReading[];
  /** The correction after which the readings count; `null` where none is known. */
  readonly startsAnew: Correction | null;
  /** Days between the first and the last reading that count. */
  readonly days: number;
  /** Slope of the least-squares line, in `unit` per year of 365.25 days. */
  readonly perYear: number;
  /** The same as a fraction of the configured sensitivity. */
  readonly perYearFraction: number;
  /** Of `perYear`, in `unit` per year. */
  readonly standardUncertainty: number;
  readonly expandedUncertainty: number;
  /** Student's t for `level` and `degreesOfFreedom`. */
  readonly coverage: number;
  readonly level: number;
  readonly degreesOfFreedom: number;
  /** Of the readings with their dates; `null` where all readings are the same. */
  readonly correlation: number | null;
  /** Scatter of the readings about the line, in `unit`. */
  readonly residualDeviation: number;
  /** The line on the day of the first reading that counts, in `unit`. */
  readonly atFirst: number;
  readonly leaves: DriftForecast;
}
