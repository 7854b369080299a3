/** A cell that is not as the audit left it. */
export interface CellDifference {
  readonly sheet: string;
  readonly row: number;
  /** Letters. */
  readonly column: string;
  /** What the cell holds now, as a person would quote it; empty where it is empty. */
  readonly stands: string;
  readonly should: string;
}

/** What became of one part of an audit: its inputs, its policy, or its results. */
export interface PartCheck {
  readonly state: 'as audited' | 'edited' | 'not known';
  /** Sentences for people. */
  readonly said: readonly string[];
  /** The first cells that differ. */
  readonly cells: readonly CellDifference[];
  /** How many more cells differ. */
  readonly more: number;
}

/** An audit whose result sheets stand in the workbook, as they say themselves. */
export interface AuditRun {
  /** Short id in the titles of its sheets. */
  readonly id: string;
  /** ISO time; empty where its evidence is missing. */
  readonly generated: string;
  /** Rules version. */
  readonly version: string;
  /** Name of the workbook that was audited. */
  readonly input: string;
  readonly sheets: readonly string[];
}

export interface Verification {
  /** The newest audit, which was checked; `null` where no result sheet can be checked. */
  readonly checked: AuditRun | null;
  readonly inputs: PartCheck;
  readonly policy: PartCheck;
  readonly results: PartCheck;
  /** The other audits, newest first. They were not checked: their inputs may have changed since for good reason. */
  readonly older: readonly AuditRun[];
  /** Result sheets that carry no id, and so can't be checked. */
  readonly without: readonly string[];
}

/** Whether anything was edited, or can't be told. */
export function isClean({ checked, inputs, policy, results }: Verification): boolean {
  return checked !== null && [inputs, policy, results].every(({ state }) => state === 'as audited');
}

/** What a check covers and what it does not, for people. */
export const coverage =
  'Compared are values, the formulas of result sheets and which sheets are hidden, not looks: number formats, colours, hidden rows and columns, notes, charts, and sheets that look like results without the title of one are not covered. A formula of result sheets is not covered where results can’t be made anew alike; formulas of your own tables count by the results that the file stores. It finds edits, not forgers who change a value and its fingerprint together.';
/** The same where no file is at hand, as in the task pane. */
export const coverageWithoutFile =
  'Compared are values and which sheets are hidden, not looks: number formats, colours, hidden rows and columns, notes, charts, a formula that was changed to another with the same value, and sheets that look like results without the title of one are not covered. It finds edits, not forgers who change a value and its fingerprint together.';
