import type { ThresholdName, ThresholdVerdict } from '../threshold.ts';
import type { OfSetpoint } from './thresholdRules.ts';

/** A calibration record marked as left, by its first point. */
interface RecordAt {
  readonly sheet: string;
  readonly row: number;
}

/** What can be said of the readings of a channel as it was left. Days as `YYYY-MM-DD`. */
export interface AsLeftReadingRules {
  'as-left-not-judged': { readonly why: 'found unusable' | 'value unusable' | 'no sensitivity' };
  'record-as-left-of-another-day': RecordAt & {
    readonly takenOn: string;
    readonly lies:
      | { readonly kind: 'after the audit'; readonly today: string }
      | { readonly kind: 'before what was found'; readonly found: string };
  };
  'as-left-sensitivity-from-record': RecordAt & {
    readonly value: number;
    readonly unit: string;
    readonly takenOn: string | null;
  };
}

/** A threshold as left beside what was found of it, in one unit. */
interface Left extends OfSetpoint {
  readonly asFound: {
    readonly verdict: ThresholdVerdict;
    readonly effective: number;
  };
}

interface Moved {
  readonly found: number;
  readonly left: number;
}

/** Whether late thresholds are so still, as far as was judged as left; `null` where nothing was. */
export type StillWrong = {
  readonly sure: readonly ThresholdName[];
  readonly unsure: readonly ThresholdName[];
} | null;

/** What can be said of thresholds as left, and of how long they were late. Dates `YYYY-MM-DD`, voltages in V. */
export interface AsLeftRules {
  'as-left-uncertainty-missing': { /** As found, as a fraction. */ readonly uncertainty: number };
  'as-left-gap-voltage-missing': { /** As found. */ readonly gapVoltage: number };
  'as-left-sensitivity-missing': { /** As found. */ readonly measured: number; readonly unit: string };
  'as-left-zero-not-measured': Readonly<Record<string, never>>;
  'as-left-cured': Left & { readonly effective: number };
  'as-left-worse': Left & {
    readonly verdict: ThresholdVerdict;
    readonly effective: number;
    readonly sensitivity: Moved & { readonly unit: string };
    /** `null` where it was not read both times. */
    readonly gapVoltage: Moved | null;
  };
  'dates-out-of-order': {
    readonly lastGoodOn: string;
    readonly lastGoodCell: string;
    readonly calibratedOn: string;
    readonly calibratedCell: string;
  };
  'exposure-start-unknown': {
    readonly thresholds: readonly ThresholdName[];
    /** The very day on which it was found; `null` where none is given. */
    readonly lastGoodOn: string | null;
    readonly to: string;
    readonly goesOn: StillWrong;
  };
  'period-of-exposure': {
    readonly thresholds: readonly ThresholdName[];
    readonly from: string;
    readonly to: string;
    readonly days: number;
    readonly goesOn: StillWrong;
  };
}
