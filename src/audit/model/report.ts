import type { OutPolicy } from '../../method/voting/liveVote.ts';
import type { AsFoundResult, Exposure } from './asFound.ts';
import type { Attention, NotRead } from './attention.ts';
import type { AuditBasis, Fingerprint } from './basis.ts';
import type { FaultLimits } from './channel.ts';
import type { DriftResult } from './drift.ts';
import type { Finding, Problem, RowPlace } from './findings.ts';
import type { Kind } from './kind.ts';
import type { ColumnMap } from './columnMap.ts';
import type { Policy } from './policy.ts';
import type { AskedQuestion } from './question.ts';
import type { DynamicResult, RecordResult } from './records.ts';
import type { SinceResult } from './since.ts';
import type { SensitivityResult, ThresholdName, ThresholdResult, ThresholdVerdict } from './threshold.ts';

export type * from './asFound.ts';
export * from './attention.ts';
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

/** Where the vote of a group acts: in the group's unit, `null` where it cannot act. */
export interface GroupVote {
  readonly effective: number | null;
  readonly canTrip: boolean;
  readonly decidedBy: readonly string[];
}

/** One threshold of a voting group as it acts now. */
export interface GroupResult extends GroupVote {
  readonly machine: string;
  readonly name: string;
  readonly voting: string;
  readonly threshold: ThresholdName;
  /** Above 1: while the start-up multiplier of its members is on. */
  readonly multiplier: number;
  readonly unit: string | null;
  /** Where it was meant to act, multiplier included. */
  readonly intended: number | null;
  readonly limit: number | null;
  /** Whether it acts later than the tolerance allows, or beyond its limit. */
  readonly late: boolean;
  readonly beyondLimit: boolean;
  readonly members: readonly GroupMember[];
  /** The vote that members out of service leave, such as 2oo2; `tripped` or `cannot trip` where none is left. */
  readonly liveVoting: string;
  /** How surely it acts by a limit, of the measurement alone; `null` for an alert, or where no member has an uncertainty. */
  readonly chance: GroupChance | null;
  /** Members out of service, and what the system does with their votes. */
  readonly out: readonly MemberOut[];
  /** With the members as they were found, where one was measured again since; else `null`. */
  readonly asFound: GroupVote | null;
  readonly findings: readonly Finding[];
}

/** What the uncertainties of a group's members say together; probabilities from 0 to 1. */
export interface GroupChance {
  /** In the group's unit, away from zero: its limit, or where its verdict turns late. */
  readonly limit: number;
  readonly of: 'its limit' | 'where late begins';
  /** That it acts later than the limit, batches as they are labelled. */
  readonly later: number;
  /** Where it acts between, at the policy's coverage factor; `null` where it cannot trip or no upper end exists. */
  readonly low: number | null;
  readonly high: number | null;
  /** That it acts later with nothing shared, and with all shared, where a label is missing; neither is a bound. */
  readonly ends: { readonly independent: number; readonly allShared: number } | null;
  /** Members that act and have no uncertainty: taken as exact. */
  readonly exact: readonly string[];
}

/** What can be late on a machine: its danger groups, running; of the measurement alone. */
export interface MachineChance {
  readonly machine: string;
  readonly groups: number;
  /** That at least one acts later than its limit, and that all do; `null` where too much hangs together. */
  readonly any: number | null;
  readonly all: number | null;
  /** Expected number that do. */
  readonly expected: number;
  readonly corrections: CorrectionsFirst;
}

/** Which correction takes most off the chance that anything is late. */
export interface CorrectionsFirst {
  /** The most helpful first; those that help nothing by themselves are left out. */
  readonly singly: readonly { readonly tag: string; readonly left: number; readonly gain: number }[];
  /** The best set for a budget of corrections, from two on. */
  readonly best: readonly {
    readonly budget: number;
    readonly tags: readonly string[];
    readonly left: number;
    readonly how: 'every set' | 'one after the other';
  }[];
}

/** A member out of service. */
export interface MemberOut {
  readonly tag: string;
  readonly because: 'bypassed' | 'faulty';
  readonly policy: OutPolicy;
  /** Where that is said; `null`: nowhere, and taken as no vote. */
  readonly saidBy: 'group' | 'site' | null;
}

export interface GroupMember {
  readonly tag: string;
  readonly setpoint: number | null;
  /** `null`: this member cannot act. */
  readonly effective: number | null;
  readonly why: MemberReason | null;
}

/** Why a member of a group can't be counted on. */
export type MemberReason =
  | 'in bypass'
  | 'marked faulty: its gap voltage is outside the fault limits'
  | 'its bypass mark is not understood'
  | 'its row can’t be used'
  | 'its tag is not unique'
  | 'it is not in the channel list'
  | 'no such setpoint'
  | 'above full scale'
  | 'out of the linear reach'
  | 'on the other side of zero'
  | 'outside the fault limits'
  | 'not known'
  | 'its unit does not fit the group';

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
  /** What changed since an earlier audit; `null` where none was named. */
  readonly since: SinceResult | null;
  readonly caution: string;
}
