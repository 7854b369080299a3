import type { Policy } from '../../audit/model/policy.ts';
import type { Attention, Summary } from '../../audit/model/report.ts';
import type { FleetCorrection } from '../../audit/advise/machineSentences.ts';
import type { Counts } from '../summary/counts.ts';

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
  | { readonly found: ReportDigest; readonly refused: null }
  | { readonly found: null; readonly refused: string }
);

/** What a fleet keeps of one report. */
export interface ReportDigest {
  readonly summary: Summary;
  /** Worst first. */
  readonly machines: readonly MachineCounts[];
  /** What to correct first, most helpful first; the first ones of the workbook. */
  readonly corrections: readonly FleetCorrection[];
  /** What needs action, gravest first, as in the report; see `keptOf`. */
  readonly attention: readonly Attention[];
}

/** How grave something is, and of what kind. */
export type Urgency = Pick<Attention, 'severity' | 'code'>;

/** The counts of one machine. */
export interface MachineCounts extends Counts {
  /** Empty where the channel list names none. */
  readonly machine: string;
  /** The gravest that needs action of it; `null` where nothing does. */
  readonly gravest: Urgency | null;
}
