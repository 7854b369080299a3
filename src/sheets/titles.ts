import { shortId } from '../audit/evidence/fingerprint.ts';
import { resultSheetMark } from '../audit/tables/resultSheet.ts';
import type { Report } from '../audit/report/types.ts';

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
} as const;

/** What tells the sheets of one audit from those of another. */
export type Audited = Pick<Report, 'fingerprint' | 'generated'>;

/**
 * Cell A1 of a result sheet: begins with the mark by which later audits know it as no input, and ends in the short id of
 * its audit where it is of one alone.
 */
export function titleOf(sheet: keyof typeof sheetNames, audited?: Audited): string {
  return `${resultSheetMark} – ${sheet}${audited ? ` · ${shortId(audited)}` : ''}`;
}
