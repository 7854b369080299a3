import type { MemberOutPolicy } from '../../method/voting/liveVote.ts';
import type { Finding } from './findings.ts';
import type { MemberReason, ThresholdName } from './threshold.ts';

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
  readonly out: readonly MemberOutOfService[];
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
  /** What all this was worked out from, so that it can be asked what follows once some are corrected. */
  readonly working: readonly GroupWorking[];
}

/** A danger group as its machine's chances are worked out: a vote, a limit, and members that can be corrected. */
export interface GroupWorking {
  /** How many members must act. */
  readonly m: number;
  /** In the unit of the thresholds, away from zero. */
  readonly limit: number;
  readonly members: readonly MemberWorking[];
}

/** A member's best value and standard uncertainties: relative ones of its sensitivity, and that of its numerator. */
interface MemberWorking {
  readonly tag: string;
  /** Where it acts, away from zero; `null`: it cannot act. */
  readonly threshold: number | null;
  /** Where it would act once corrected; its uncertainties stay. */
  readonly corrected: number | null;
  readonly shared: number;
  readonly own: number;
  readonly offset: number;
  readonly both: number;
  /** `null`: a batch of its own. */
  readonly batch: string | null;
}

/** Which correction takes most off the chance that anything is late. */
export interface CorrectionsFirst {
  /** The most helpful first; those that help nothing by themselves are left out. */
  readonly singly: readonly { readonly tag: string; readonly left: number; readonly gain: number }[];
  /** The channel that acts latest for its setpoint, and what is left once it alone is corrected; `null` where none is late. */
  readonly latest: { readonly tag: string; readonly left: number } | null;
  /** What each takes off the expected number of late groups, most first: by this, machines compare. */
  readonly expected: readonly { readonly tag: string; readonly fall: number }[];
  /** The best set for a budget of corrections, from two on. */
  readonly best: readonly {
    readonly budget: number;
    readonly tags: readonly string[];
    readonly left: number;
    readonly how: 'every set' | 'one after the other';
  }[];
}

/** A member out of service. */
export interface MemberOutOfService {
  readonly tag: string;
  readonly because: 'bypassed' | 'faulty';
  readonly policy: MemberOutPolicy;
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
