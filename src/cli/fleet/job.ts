import type { AuditOptions } from '../../audit/audit.ts';
import type { Attention } from '../../audit/model/report.ts';
import type { ReportDigest } from '../../sheets/fleet/types.ts';

/** What a process of its own is to do: audit one workbook. Paths are whole. */
export interface Job {
  /** Its name in the folder. */
  readonly file: string;
  readonly path: string;
  readonly options: AuditOptions;
  /** Where the copy with result sheets goes. */
  readonly copy: string | undefined;
  /** Names its unfinished files, so that they can be cleared away where its process can't. */
  readonly token: string;
  /** Where the proposal goes, for a workbook that needs a person. */
  readonly proposal: string | undefined;
  /** Where the report goes, as JSON. */
  readonly report: string | undefined;
}

/** What came of it: what the fleet keeps of the report, and the worst that needs action. */
export type Answer = Audited | Refused;

interface Refused {
  readonly found: null;
  readonly refused: string;
  readonly asks: Asks | null;
}

/** A workbook that needs a person. */
interface Asks {
  /** How many questions there are, each with a proposal. */
  readonly questions: number;
  /** The proposal is written. */
  readonly written: boolean;
}

interface Audited {
  readonly found: ReportDigest;
  /** The first of what needs action, at most `mostWorst`. */
  readonly worst: readonly Attention[];
  /** Something critical needs action. */
  readonly critical: boolean;
  readonly notes: readonly string[];
  readonly asks: Asks | null;
  readonly refused: null;
}

/** Entries of what needs action that are shown of one workbook, or of all. */
export const mostWorst = 10;
