import { resultSheetMark } from '../audit/tables/resultSheet.ts';

/** Names asked for the result sheets; a host that must choose others says so. */
export const sheetNames = {
  summary: 'Audit summary',
  results: 'Audit results',
  groups: 'Audit groups',
  problems: 'Audit problems',
  records: 'Calibration records',
  'hand-over': 'Hand-over list',
} as const;

/** Cell A1 of a result sheet: begins with the mark by which later audits know it as no input. */
export function titleOf(sheet: keyof typeof sheetNames): string {
  return `${resultSheetMark} – ${sheet}`;
}
