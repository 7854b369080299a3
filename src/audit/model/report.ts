import type { AsFoundResult, Exposure } from './asFound.ts';
import type { Attention, NotRead } from './attention.ts';
import type { AuditBasis, Fingerprint } from './basis.ts';
import type { FaultLimits, MeasuredLoop, Kind } from './channel.ts';
import type { DriftResult } from './drift.ts';
import type { Finding, Problem, RowPlace } from './findings.ts';
import type { GroupResult, MachineChance } from './group.ts';
import type { ColumnMap } from './columnMap.ts';
import type { Policy } from './policy.ts';
import type { AskedQuestion } from './question.ts';
import type { DynamicResult, RecordResult } from './records.ts';
import type { ReplayResult } from './replay.ts';
import type { RunoutResult } from './runout.ts';
import type { RunUpResult } from './runUp.ts';
import type { SinceResult } from './since.ts';
import type { SensitivityResult, ThresholdResult, ThresholdVerdict } from './threshold.ts';

export type * from './asFound.ts';
export * from './attention.ts';
export type * from './drift.ts';
export type * from './group.ts';
export type * from './records.ts';
export type * from './replay.ts';
export type * from './runout.ts';
export type * from './runUp.ts';

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
  /** Expanded at the policy's coverage, V. */
  readonly zeroUncertainty: number | null;
  /** Of the monitor, indicated over injected; 1 where none was measured. */
  readonly gain: number;
  /** Expanded, a fraction of the gain. */
  readonly gainUncertainty: number | null;
  /** What it was calibrated with or made from. */
  readonly batch: string | null;
  /** The part of its uncertainty that the batch shares, expanded, a fraction. */
  readonly sharedUncertainty: number | null;
  /** Nominal, m. */
  readonly chainLength: number | null;
  /** Measured ends of a current loop; `null` where none were, or none that can be used. */
  readonly loop: MeasuredLoop | null;
  readonly direction: string | null;
  /** Setpoint units per volt at one unit of sensitivity: turns a zero shift in volts into displacement. */
  readonly unitsPerVolt: number | null;
  readonly faultLimits: FaultLimits | null;
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

/** Whether a channel is judged as it was found, or as it was left where it was measured again after a correction. */
export type ChannelState = 'as found' | 'as left';

/** A channel as it stands now. */
export interface ChannelResult {
  readonly tag: string;
  readonly machine: string;
  readonly location: string;
  readonly kind: Kind | null;
  readonly unit: string | null;
  readonly detection: string | null;
  readonly state: ChannelState;
  /** `null`: what stands there is not understood. */
  readonly inBypass: boolean | null;
  readonly sensitivity: SensitivityResult;
  readonly inputs: ChannelInputs;
  readonly thresholds: readonly ThresholdResult[];
  readonly verdict: ThresholdVerdict;
  /** The calibration record that is a line of evidence now; `null` where there is none, or none that can be used. */
  readonly record: RecordResult | null;
  /** The check with a known vibration that is a line of evidence now. */
  readonly dynamic: DynamicResult | null;
  /** `null` without a slow-roll vector. */
  readonly runout: RunoutResult | null;
  /** What was found, where it was measured again since; else `null`. */
  readonly asFound: AsFoundResult | null;
  /** One for each threshold that was found late or unreachable. */
  readonly exposure: readonly Exposure[];
  /** How its sensitivity drifts; `null` where fewer than three readings on three days count. */
  readonly drift: DriftResult | null;
  readonly findings: readonly Finding[];
  /** Its row in the channel list and in the monitor settings. */
  readonly source: { readonly channels: RowPlace; readonly settings: RowPlace | null };
}

/** Channels by their verdict now, those in bypass counted apart; voting groups that cannot trip; what was not read. */
export interface Summary {
  readonly channels: number;
  readonly late: number;
  readonly early: number;
  readonly within: number;
  readonly undetermined: number;
  readonly unreachable: number;
  readonly incomplete: number;
  readonly inBypass: number;
  readonly groupsThatCannotTrip: number;
  readonly notRead: number;
  /** Entries of `attention` by severity. */
  readonly critical: number;
  readonly warnings: number;
  /** Channels that were measured again, and those of them that are within now and were not when found. */
  readonly asLeft: number;
  readonly corrected: number;
}

/** The counts of channels and groups alone. */
export type VerdictCounts = Pick<
  Summary,
  | 'channels'
  | 'late'
  | 'early'
  | 'within'
  | 'undetermined'
  | 'unreachable'
  | 'incomplete'
  | 'inBypass'
  | 'groupsThatCannotTrip'
>;

/** How a column was understood. */
export interface ColumnReading {
  readonly table: 'channel list' | 'monitor settings';
  readonly sheet: string;
  readonly headerRow: number;
  readonly column: string;
  readonly header: string;
  readonly meaning: string;
  readonly unit: string | null;
  /** By what it was told, in sentences; empty where a standard header alone says it. */
  readonly evidence: readonly string[];
}

/** `Question` is how the questions are typed where they come straight from the audit. */
export interface Report<Question extends AskedQuestion = AskedQuestion> {
  readonly schema: 'tripdrift-report/2';
  readonly version: string;
  readonly input: string;
  readonly generated: string;
  readonly policy: Policy;
  readonly fingerprint: Fingerprint;
  /** With the policy and the time all it takes to repeat the audit. */
  readonly basis: AuditBasis;
  readonly summary: Summary;
  /** What needs action, gravest first; nothing else decides what is said first, what is critical or how a run ends. */
  readonly attention: readonly Attention[];
  /** Worst first. */
  readonly channels: readonly ChannelResult[];
  readonly groups: readonly GroupResult[];
  /** Machines with danger groups of which an uncertainty is known. */
  readonly machines: readonly MachineChance[];
  readonly notRead: readonly NotRead[];
  readonly problems: readonly Problem[];
  /** What a person has to be asked, what most hangs on first; empty where all is certain. */
  readonly questions: readonly Question[];
  /**
   * All that was understood, with the first answer to every question, as a column map to be checked and given back; `null`
   * where both tables were read by their standard headers.
   */
  readonly proposal: ColumnMap | null;
  readonly columns: readonly ColumnReading[];
  /** Run-ups; `null` where there were none. */
  readonly runUps: RunUpResult | null;
  /** Recorded readings replayed; `null` where there were none. */
  readonly replay: ReplayResult | null;
  /** What changed since an earlier audit; `null` where none was named. */
  readonly since: SinceResult | null;
  readonly caution: string;
}
