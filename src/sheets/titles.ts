import type { Cell } from '../cells/cell.ts';
import { shortId } from '../audit/evidence/fingerprint.ts';
import { resultSheetMark } from '../audit/read/tables/titleWords.ts';
import type { Report } from '../audit/model/report.ts';
import type { SheetModel } from './model.ts';

/** Names asked for the result sheets; a host that must choose others says so. */
export const sheetNames = {
  summary: 'Audit summary',
  results: 'Audit results',
  groups: 'Audit groups',
  problems: 'Audit problems',
  records: 'Calibration records',
  fleet: 'Fleet summary',
  'hand-over': 'Hand-over list',
  'as found and as left': 'As found and as left',
  changes: 'Audit changes',
  drift: 'Audit drift',
  replay: 'Replay',
  'run-up': 'Run-up',
  'try it': 'Try it',
  'your list, channels': 'Channel list, tidy',
  'your list, settings': 'Monitor settings, tidy',
} as const;

/** Names asked for the tables of result sheets. */
export const tableNames = {
  results: 'TripdriftResults',
  groups: 'TripdriftGroups',
  problems: 'TripdriftProblems',
  'as found and as left': 'TripdriftAsLeft',
  changes: 'TripdriftChanges',
  drift: 'TripdriftDrift',
} as const;

/** What tells the sheets of one audit from those of another. */
export type Audited = Pick<Report, 'fingerprint' | 'generated'>;

/**
 * Cell A1 of a result sheet: begins with the mark by which later audits know it as no input, and ends in the short id of
 * its audit where it is of one alone.
 */
export function titleOf(sheet: keyof typeof sheetNames, audited?: Audited): string {
  return `${start(sheet)}${audited ? ` · ${shortId(audited)}` : ''}`;
}

/** Whether a cell A1 is the title of such a result sheet, of whatever audit. */
export function isTitleOf(sheet: keyof typeof sheetNames, cell: Cell): boolean {
  return typeof cell === 'string' && cell.startsWith(`${start(sheet)} ·`);
}

const noResults = ['try it', 'your list, channels', 'your list, settings'] as const;

/** Whether a cell A1 is the title of a sheet that is neither an input of audits nor the result of one. */
export function isNoResult(cell: Cell): boolean {
  return noResults.some((sheet) => cell === titleOf(sheet));
}

/** Short id at the end of a title; `undefined` where the cell is no title, or one from before titles had an id. */
export function auditIdIn(cell: Cell): string | undefined {
  return typeof cell === 'string' && cell.startsWith(resultSheetMark)
    ? / · ([0-9a-f]{4}-[0-9a-f]{4})$/u.exec(cell)?.[1]
    : undefined;
}

function start(sheet: keyof typeof sheetNames): string {
  return `${resultSheetMark} – ${sheet}`;
}

/** Cell A1 of a result sheet that is still a model. */
export function titleIn(model: SheetModel): string {
  for (const { cells } of model.rows()) return String(cells[0]?.value ?? '');
  return '';
}
