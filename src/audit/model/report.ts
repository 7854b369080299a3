import type { Finding, Problem, RowPlace } from './findings.ts';
import type { SensitivityResult, ThresholdName, ThresholdResult, ThresholdVerdict } from './threshold.ts';
import type { Fingerprint, AuditBasis } from './basis.ts';
import type { Kind } from './kind.ts';
import type { Policy } from './policy.ts';
import type { AsLeftCounts, AsLeftResult, Exposure } from './asLeft.ts';
import type { SinceResult } from './since.ts';
import type { DriftResult } from './drift.ts';
import type { DynamicResult, RecordResult } from './records.ts';

export type * from './asLeft.ts';
export type * from './drift.ts';
export type * from './records.ts';

/** What the audit used beside the sensitivities, in the channel's unit or volts; `null` where not given. */
export interface ChannelInputs {
  readonly limit: number | null;
  readonly fullScale: number | null;
  readonly resolution: number | null;
  readonly linearReach: number | null;
  readonly reading: number | null;
  readonly realReading: number | null;
  readonly gapVoltage: number | null;
  readonly zeroConfigured: number | null;
  readonly zeroMeasured: number | null;
  readonly direction: string | null;
  /** Setpoint units per volt at one unit of sensitivity: turns a zero shift in volts into displacement. */
  readonly unitsPerVolt: number | null;
  readonly speed: number | null;
  readonly growthPerDay: number | null;
  readonly doublingDays: number | null;
  readonly alertDelay: number | null;
  readonly dangerDelay: number | null;
  readonly group: string | null;
  readonly voting: string | null;
  /** `null`: what stands there is not understood. */
  readonly bypass: boolean | null;
  /** Day of the measured sensitivity, `YYYY-MM-DD`. */
  readonly calibratedOn: string | null;
}

export interface ChannelResult {
  readonly tag: string;
  readonly machine: string;
  readonly location: string;
  readonly kind: Kind | null;
  readonly unit: string | null;
  readonly detection: string | null;
  readonly sensitivity: SensitivityResult;
  readonly inputs: ChannelInputs;
  readonly thresholds: readonly ThresholdResult[];
  readonly verdict: ThresholdVerdict;
  /** Its calibration record; `null` where there is none, or none that can be used. */
  readonly record: RecordResult | null;
  /** Its check with a known vibration. */
  readonly dynamic: DynamicResult | null;
  /** As it was left; `null` where it has no as-left readings, or none that can be judged. */
  readonly asLeft: AsLeftResult | null;
  /** One for each threshold that was found late or unreachable. */
  readonly exposure: readonly Exposure[];
  /** How its sensitivity drifts; `null` where fewer than three readings on three days count. */
  readonly drift: DriftResult | null;
  readonly findings: readonly Finding[];
  /** Its row in the channel list and in the monitor settings. */
  readonly source: { readonly channels: RowPlace; readonly settings: RowPlace | null };
}

/** Where the vote of a group acts: in the group's unit, `null` where it cannot act. */
export interface GroupVote {
  readonly effective: number | null;
  readonly canTrip: boolean;
  readonly decidedBy: readonly string[];
}

export interface GroupResult extends GroupVote {
  readonly name: string;
  readonly voting: string;
  readonly threshold: ThresholdName;
  readonly unit: string | null;
  readonly intended: number | null;
  readonly limit: number | null;
  readonly members: readonly GroupMember[];
  /** With the members as left that were judged so, the others as found; `null` where none was. */
  readonly asLeft: GroupVote | null;
  readonly findings: readonly Finding[];
}

export interface GroupMember {
  readonly tag: string;
  readonly setpoint: number | null;
  /** `null`: this member cannot act. */
  readonly effective: number | null;
  readonly why: string | null;
}

/** Channels by their own verdict, and voting groups that cannot trip. */
export interface VerdictCounts {
  readonly channels: number;
  readonly late: number;
  readonly early: number;
  readonly within: number;
  readonly undetermined: number;
  readonly unreachable: number;
  readonly incomplete: number;
  readonly groupsThatCannotTrip: number;
}

export interface Summary extends VerdictCounts {
  readonly asLeft: AsLeftCounts;
}

/** How a column was understood. */
export interface ColumnReading {
  readonly table: 'channel list' | 'monitor settings';
  readonly sheet: string;
  readonly headerRow: number;
  readonly column: string;
  readonly header: string;
  readonly meaning: string;
  readonly unit: string | null;
}

export interface Report {
  readonly schema: 'tripdrift-report/1';
  readonly version: string;
  readonly input: string;
  readonly generated: string;
  readonly policy: Policy;
  readonly fingerprint: Fingerprint;
  /** With the policy and the time all it takes to repeat the audit. */
  readonly basis: AuditBasis;
  readonly summary: Summary;
  readonly channels: readonly ChannelResult[];
  readonly groups: readonly GroupResult[];
  readonly problems: readonly Problem[];
  readonly columns: readonly ColumnReading[];
  /** What changed since an earlier audit; `null` where none was named. */
  readonly since: SinceResult | null;
  readonly caution: string;
}
