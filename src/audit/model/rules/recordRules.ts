import type { Kind } from '../channel.ts';
import type { RecordSpread } from '../records.ts';
import type { OfSetpoint } from './thresholdRules.ts';
import type { NotANumber } from '../../../cells/number.ts';

/** What can be said of calibration records and checks with a known vibration as they are read. */
export interface RawRecordRules {
  'record-without-tag':
    | { readonly kind: 'block'; readonly gapHeader: string; readonly voltsHeader: string }
    | { readonly kind: 'row'; readonly row: number };
  'record-without-channel': { readonly tag: string };
  'record-unit-missing':
    | { readonly kind: 'gap'; readonly header: string }
    | {
        readonly kind: 'too large for volts';
        readonly header: string;
        /** Whether other records of the column were used. */
        readonly othersUsed: boolean;
      }
    | { readonly kind: 'detection'; readonly header: string };
  'record-point-left-out':
    | {
        readonly kind: 'cell';
        readonly header: string;
        readonly cell: string;
        readonly why: NotANumber | 'blank' | 'percentage';
      }
    | { readonly kind: 'below a blank row'; readonly row: number; readonly tag: string }
    | {
        readonly kind: 'second column';
        readonly header: string;
        readonly firstHeader: string;
        readonly firstColumn: string;
      }
    | {
        readonly kind: 'level';
        readonly displacement: number;
        readonly unit: string;
        readonly output: number;
        readonly outputUnit: string;
      };
  'records-of-one-point': { readonly headerRow: number };
}

type Nothing = Readonly<Record<string, never>>;

/** What a record or check of a channel is told from others by. */
export interface SeriesName {
  readonly series: string;
  readonly temperature: string;
}

/** Why a record can't be used. */
export type UnusableRecord = { readonly tag: string; readonly series: string } & (
  | { readonly fault: 'gap repeated'; readonly gap: number; readonly gapUnit: string }
  | { readonly fault: 'too few points'; readonly points: number; readonly least: number }
  | { readonly fault: 'too many points'; readonly points: number; readonly most: number }
  | { readonly fault: 'not a number' | 'lengths differ' | 'does not fall both ways' }
);

/** The average of a record against the sensitivity of the channel list, both in `unit`. */
type RecordAgainstList = {
  readonly ofRecord: number;
  readonly ofList: number;
  /** Of the record from the list. */
  readonly fraction: number;
  readonly unit: string;
} & (
  | { readonly kind: 'as found' }
  /** By its first point. */
  | { readonly kind: 'as left'; readonly sheet: string; readonly row: number }
);

/** What can be said of a channel's calibration record and its check with a known vibration. Voltages in V. */
export interface RecordRules {
  'record-unusable': UnusableRecord;
  'record-of-another-kind': { readonly kind: Kind };
  'record-sorted': Nothing;
  'record-read-up-and-down': {
    readonly cycles: number;
    readonly hysteresis: RecordSpread;
    readonly repeatability: RecordSpread | null;
    readonly gapUnit: string;
    /** Gaps that were read one way only and stay out. */
    readonly oneWay: readonly number[];
  };
  'several-records': {
    readonly of: 'records' | 'checks';
    readonly used: SeriesName;
    readonly others: readonly SeriesName[];
  };
  'record-not-falling': { readonly from: number; readonly to: number; readonly gapUnit: string };
  'record-disagrees-with-list': RecordAgainstList;
  'static-and-dynamic-disagree': {
    readonly dynamic: number;
    readonly static: number;
    readonly from: 'channel list' | 'calibration record';
    /** As a fraction of the static one. */
    readonly off: number;
    readonly unit: string;
  };
  'record-without-gap-voltage': Nothing;
  'gap-outside-record': { readonly gapVoltage: number; readonly from: number; readonly to: number };
  'gap-outside-straight-part': {
    readonly operatingGap: number;
    readonly from: number;
    readonly to: number;
    readonly gapUnit: string;
    readonly gapVoltage: number;
  };
  'curve-falls-short': OfSetpoint & {
    readonly from: number;
    readonly to: number;
    readonly gapUnit: string;
    /** `null` where the record does not reach the measured zero, from which positions are counted. */
    readonly largestIndicated: number | null;
    readonly zeroMeasured: number | null;
  };
  'curve-differs': OfSetpoint & {
    readonly onCurve: number;
    readonly effective: number;
    /** Of the curve from the one sensitivity, as a fraction. */
    readonly off: number;
  };
}
