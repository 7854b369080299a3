import { isResultSheet } from '../audit/read/tables/titleWords.ts';
import type { Sheet, Workbook } from '../cells/sheet.ts';
import { auditIdIn, isNoResult, isTitleOf } from '../sheets/titles.ts';
import { storedEvidence, type StoredEvidence, damagedEvidence } from './storedEvidence.ts';
import type { AuditRun } from './verification.ts';

/** The result sheets of one audit. */
export interface FoundRun {
  readonly id: string;
  readonly sheets: readonly Sheet[];
  /** Sheets to hand over that were made from it. */
  readonly handOver: readonly Sheet[];
  /** `undefined` where its summary sheet is missing. */
  readonly evidence: StoredEvidence | undefined;
}

export interface FoundRuns {
  /**
   * Newest first; before them those whose evidence is missing or contradicts itself, since nothing tells that they are
   * older.
   */
  readonly runs: readonly FoundRun[];
  /** Result sheets without an id, and sheets to hand over without the results they were made from. */
  readonly without: readonly Sheet[];
}

/** Finds the result sheets of each audit by their titles, whatever the sheets are called. */
export function findRuns(workbook: Workbook): FoundRuns {
  const byId = new Map<string, Sheet[]>();
  const without: Sheet[] = [];
  for (const sheet of workbook.sheets.filter(isResultSheet)) {
    const id = auditIdIn(titleOfSheet(sheet));
    if (isNoResult(titleOfSheet(sheet))) continue;
    if (id === undefined) without.push(sheet);
    else byId.set(id, [...(byId.get(id) ?? []), sheet]);
  }
  const runs: FoundRun[] = [];
  for (const [id, all] of byId) {
    const [handOver, sheets] = [all.filter(isHandOver), all.filter((sheet) => !isHandOver(sheet))];
    const summary = sheets.find((sheet) => isTitleOf('summary', titleOfSheet(sheet)));
    if (sheets.length === 0) without.push(...handOver);
    else runs.push({ id, sheets, handOver, evidence: summary && storedEvidence(summary) });
  }
  return { runs: runs.toSorted((a, b) => timeOf(b) - timeOf(a)), without };
}

function isHandOver(sheet: Sheet): boolean {
  return isTitleOf('hand-over', titleOfSheet(sheet));
}

/** An audit as it says of itself. */
export function asRun({ id, sheets, handOver, evidence }: FoundRun): AuditRun {
  const { time = '', version = '', input = '' } = evidence ?? {};
  return { id, generated: time, version, input, sheets: [...sheets, ...handOver].map(({ name }) => name) };
}

/** Cell A1 of a result sheet. */
export function titleOfSheet({ rows }: Pick<Sheet, 'rows'>): string {
  const title = rows[0]?.[0];
  return typeof title === 'string' ? title : '';
}

/** Milliseconds since 1970; after all others where none can be relied on. */
function timeOf({ id, evidence }: FoundRun): number {
  return evidence && damagedEvidence(id, evidence).length === 0
    ? Date.parse(evidence.time)
    : Number.MAX_VALUE;
}
