import type { ThresholdName, ThresholdVerdict } from './threshold.ts';
import type { Place, RowPlace } from './findings.ts';

/** What of a channel is compared beside its thresholds' verdicts, and what a change of it is. */
export const quantities = {
  'configured sensitivity': 'changed setting',
  danger: 'changed setting',
  alert: 'changed setting',
  'counter danger': 'changed setting',
  'counter alert': 'changed setting',
  'set-point multiplier': 'changed setting',
  'full scale': 'changed setting',
  detection: 'changed setting',
  bypass: 'changed setting',
  voting: 'changed setting',
  'voting group': 'changed setting',
  'danger delay': 'changed setting',
  'alert delay': 'changed setting',
  'configured zero voltage': 'changed setting',
  'positive direction': 'changed setting',
  'monitor gain': 'changed setting',
  'vote when bypassed': 'changed setting',
  'vote when faulty': 'changed setting',
  batch: 'changed setting',
  'chain length': 'changed setting',
  resolution: 'changed setting',
  limit: 'changed setting',
  kind: 'changed setting',
  'measured sensitivity': 'changed sensitivity',
  'loop current at 0 %': 'changed sensitivity',
  'loop current at 100 %': 'changed sensitivity',
  'shared uncertainty': 'changed sensitivity',
  'measured zero voltage': 'changed zero',
  'zero voltage uncertainty': 'changed zero',
} as const;

export type Quantity = keyof typeof quantities;

/** All quantities, in the order in which their changes are listed. */
export const quantityNames = Object.keys(quantities) as readonly Quantity[];

/** How one audit saw every channel, kept to compare another one with it. */
export interface Snapshot {
  /** File or workbook of that audit. */
  readonly input: string;
  /** Audited anew from its own tables, or read from the result sheet or the report of an audit made then. */
  readonly from: SnapshotSource;
  /** The result sheet; `null` where there is none. */
  readonly sheet: string | null;
  /** When the audit was made, ISO 8601; `null` where the result sheet does not say. */
  readonly audited: string | null;
  /** Version of the rules by which it judged; `null` where the result sheet does not say. */
  readonly rules: string | null;
  readonly tolerance: number | null;
  readonly rule: string | null;
  readonly channels: readonly SnapshotChannel[];
  /** Quantities that the source does not show at all, so that they can't be compared. */
  readonly unknown: readonly Quantity[];
  /** What of the source could not be read. */
  readonly remarks: readonly EarlierRemark[];
}

export type SnapshotSource = 'tables' | 'result sheet' | 'report';

/** Something in the earlier source that could not be read or compared, and where it stands. */
export interface EarlierRemark extends Place {
  readonly message: string;
}

/** One channel as an audit saw it. */
export interface SnapshotChannel {
  readonly tag: string;
  readonly machine: string;
  readonly location: string;
  /** Unit and detection of its levels. */
  readonly unit: string | null;
  readonly detection: string | null;
  readonly verdict: ThresholdVerdict;
  readonly thresholds: readonly SnapshotThreshold[];
  /** Settings and readings by name; `null` or left out where nothing stands there. */
  readonly values: Readonly<Partial<Record<Quantity, Value | null>>>;
  /** Day of the measured sensitivity, `YYYY-MM-DD`. */
  readonly calibratedOn: string | null;
  /** Its row in the channel list, or on the result sheet where that was read. */
  readonly source: RowPlace;
}

/** One threshold as an audit saw it, in the unit and detection of its channel. */
export interface SnapshotThreshold {
  readonly name: ThresholdName;
  readonly multiplier: number;
  readonly setpoint: number | null;
  readonly effective: number | null;
  readonly verdict: ThresholdVerdict;
}

/** A number with its unit (empty for a pure number) and detection, or a word. */
export type Value =
  | { readonly amount: number; readonly unit: string; readonly detection: string | null }
  | { readonly word: string };
