import type { Report } from '../audit/report/types.ts';
import { asLeftLines } from './asLeft/lines.ts';
import { asLeftSheet } from './asLeft/asLeftSheet.ts';
import { groupsSheet } from './groups/groupsSheet.ts';
import type { SheetModel } from './model.ts';
import { problemsSheet } from './problems/problemsSheet.ts';
import { shownRecords } from './records/fromReport.ts';
import { recordsSheet } from './records/recordsSheet.ts';
import { resultsSheet } from './results/resultsSheet.ts';
import { summarySheet } from './summary/summarySheet.ts';

/**
 * The result sheets of an audit as data, in the order in which they are read: summary, results, groups, problems, as found
 * and as left where a channel was judged twice, and calibration records where a channel has one.
 * Numbers stand in full precision in the units that the report names and are rounded by their formats only; all text is
 * plain text. Cell A1 of each begins with `Tripdrift audit`, so that a later audit reads none of them as input.
 */
export function resultSheets(report: Report): readonly SheetModel[] {
  const records = shownRecords(report);
  const lines = asLeftLines(report);
  return [
    summarySheet(report),
    resultsSheet(report),
    groupsSheet(report),
    problemsSheet(report),
    ...(lines.length > 0 ? [asLeftSheet(report, lines)] : []),
    ...(records.length > 0 ? [recordsSheet(report, records)] : []),
  ];
}
