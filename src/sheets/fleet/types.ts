import type { Policy } from '../../audit/model/policy.ts';
import type { Summary, VerdictCounts } from '../../audit/model/report.ts';
import type { Action } from '../summary/action.ts';

/** Many workbooks audited by the same policy at the same time. */
export interface Fleet {
  /** Name of their folder. */
  readonly folder: string;
  /** ISO 8601 time of the audit. */
  readonly generated: string;
  /** Version of the rules. */
  readonly version: string;
  readonly policy: Policy;
  readonly caution: string;
  readonly files: readonly FleetFile[];
  /** What in the folder was not looked at, and what to do about it; one sentence or two each. */
  readonly leftOut: readonly string[];
}

/** One workbook of a fleet: what was found in it, or why it could not be audited. */
export type FleetFile = { readonly file: string } & (
  { readonly found: Found; readonly refused: null } | { readonly found: null; readonly refused: string }
);

/** What a fleet keeps of one report. */
export interface Found {
  readonly summary: Summary;
  /** A danger is late, unreachable or undetermined, or a group cannot trip. */
  readonly strict: boolean;
  /** Worst first. */
  readonly machines: readonly MachineCounts[];
  /** The worst groups and thresholds, at most `mostActions`, worst first. */
  readonly actions: readonly RankedAction[];
  /** Groups and thresholds that need action in all. */
  readonly actionsInAll: number;
}

/** The channels of one machine by their verdict; a group counts for each machine of its members. */
export interface MachineCounts extends VerdictCounts {
  /** Empty where the channel list names none. */
  readonly machine: string;
}

export interface RankedAction extends Action {
  /** Its place among others of any workbook: worst is 0. */
  readonly rank: number;
  /** Size of its shift as a fraction of the setpoint; 0 where there is none. */
  readonly shift: number;
}
