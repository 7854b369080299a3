import { asPart, finish, type Steps } from '../audit/model/steps.ts';
import type { Report } from '../audit/model/report.ts';
import { asLeftLines } from './asLeft/lines.ts';
import { asLeftSheet } from './asLeft/asLeftSheet.ts';
import { changesSheet } from './changes/changesSheet.ts';
import { driftingChannels, driftSheet } from './drift/driftSheet.ts';
import { modelFingerprint } from './evidence/resultsFingerprint.ts';
import { groupsSheet } from './groups/groupsSheet.ts';
import type { SheetModel } from './model.ts';
import { problemsSheet } from './problems/problemsSheet.ts';
import { shownRecords } from './records/fromReport.ts';
import { recordsSheet } from './records/recordsSheet.ts';
import { resultsSheet } from './results/resultsSheet.ts';
import { summarySheet } from './summary/summarySheet.ts';
import { titleIn } from './titles.ts';

/**
 * The result sheets of an audit as data, in the order in which they are read: summary, results, groups, problems, as found
 * and as left where a channel was judged twice, changes where an earlier audit was named, drift where it was worked out,
 * and calibration records where a channel has one.
 * Numbers stand in full precision in the units that the report names and are rounded by their formats only; all text is
 * plain text. Cell A1 of each begins with `Tripdrift audit`, so that a later audit reads none of them as input.
 */
export function resultSheets(report: Report): readonly SheetModel[] {
  return finish(resultSheetsInSteps(report));
}

/** The same in steps, since the summary carries fingerprints of all of them: yields the part done, from 0 to 1. */
export function* resultSheetsInSteps(report: Report): Steps<number, readonly SheetModel[]> {
  const lines = asLeftLines(report);
  const [records, drifting] = [shownRecords(report), driftingChannels(report)];
  const others = [
    resultsSheet(report),
    groupsSheet(report),
    problemsSheet(report),
    ...(lines.length > 0 ? [asLeftSheet(report, lines)] : []),
    ...(report.since ? [changesSheet(report, report.since)] : []),
    ...(drifting.length > 0 ? [driftSheet(report, drifting)] : []),
    ...(records.length > 0 ? [recordsSheet(report, records)] : []),
  ];
  const sheets: Record<string, string> = {};
  const all = [summarySheet(report, {}), ...others];
  const total = all.reduce((sum, { rowCount }) => sum + rowCount, 0);
  let done = 0;
  for (const model of all) {
    sheets[titleIn(model)] = yield* asPart(modelFingerprint(model), (rows) => (done + rows) / total);
    done += model.rowCount;
  }
  return [summarySheet(report, sheets), ...others];
}
