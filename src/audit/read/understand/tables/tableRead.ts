import type { Field } from '../fields/field.ts';
import type { MeaningId } from '../meaning.ts';
import type { Evidence, Standing } from '../standing/evidence.ts';
import type { Claim, OpenField } from './claim.ts';
import type { Lane } from './lane.ts';
import type { LaneSeries } from './series.ts';

/** What a table is to the audit; `checks`: with a known vibration, which its headers alone say. */
type Part = 'channels' | 'history' | 'checks' | 'none';

/** The machine of all records of a table. */
export interface TableMachine {
  readonly name: string;
  readonly evidence: Evidence;
  readonly standing: Standing;
}

/** A text alone in its row, among the lines of a table. */
export type Heading = Extract<Evidence, { is: 'heading' }>;

/** A lane with everything settled: what its fields mean, which names its records, and what part it plays. */
export interface TableRead {
  readonly lane: Lane;
  readonly part: Part;
  readonly claims: ReadonlyMap<MeaningId, Claim>;
  readonly open: readonly OpenField[];
  readonly tag: Claim | null;
  /** Further columns that could be the tag. */
  readonly kindField: Field | null;
  readonly series: LaneSeries | null;
  readonly machine: TableMachine | null;
  /** Headings among its lines that can name the machines of the lines below them. */
  readonly headings: readonly Heading[];
  /** A person said that they do. */
  readonly machineFromHeadings: boolean;
  /** It stands on a hidden sheet, and visible tables hold what it does. */
  readonly setAside: boolean;
  /** Whether a person said that it is to be read; `null` where nobody did. */
  readonly use: boolean | null;
  /** A person said that it is not to be read. */
  readonly leftOut: boolean;
}

/** Whether a table says something of channels that the audit needs. */
export function isOfAudit(claims: ReadonlyMap<MeaningId, Claim>): boolean {
  return (['measured', 'configured', 'alert', 'danger', 'asLeftSensitivity'] as const).some((id) =>
    claims.has(id),
  );
}
