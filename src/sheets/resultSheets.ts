import type { Report } from '../audit/model/report.ts';
import { asPart, type Steps } from '../audit/model/steps.ts';
import { asLeftLines } from './asLeft/lines.ts';
import { asLeftSheet } from './asLeft/asLeftSheet.ts';
import { changesSheet } from './changes/changesSheet.ts';
import { driftingChannels, driftSheet } from './drift/driftSheet.ts';
import { modelFingerprint, type SheetFingerprints } from './evidence/resultsFingerprint.ts';
import { watchedSheets } from './evidence/watchedSheets.ts';
import { groupsSheet } from './groups/groupsSheet.ts';
import type { SheetModel } from './model.ts';
import { problemsSheet } from './problemsSheet.ts';
import { shownRecords } from './records/fromReport.ts';
import { recordsSheet } from './records/recordsSheet.ts';
import { replaySheet } from './replay/replaySheet.ts';
import { resultsSheet } from './results/resultsSheet.ts';
import { runUpSheet } from './runup/runUpSheet.ts';
import { summarySheet } from './summary/summarySheet.ts';
import { titleIn } from './titles.ts';

/**
 * The result sheets of an audit as data, in the order in which they are read: summary, results, groups, problems, as found
 * and as left where a channel was measured again, changes where an earlier audit was named, drift where it was worked out,
 * replay where there were recorded readings, and calibration records where a channel has one.
 * Numbers stand in full precision in the units that the report names and are rounded by their formats only; all text is
 * plain text. Cell A1 of each begins with `Tripdrift audit`, so that a later audit reads none of them as input.
 * The summary carries the fingerprints of the others, which are taken while their rows are made: made last, it costs no row twice.
 */
export function resultSheets(report: Report): readonly SheetModel[] {
  const others = watchedSheets(otherSheets(report));
  const summary = summarySheet(report);
  const fingerprints = (): SheetFingerprints => ({
    ...watchedSheets([summary(() => ({}))]).fingerprints(),
    ...others.fingerprints(),
  });
  return [summary(fingerprints), ...others.models];
}

/**
 * The same for a host that makes the rows of the summary first, in steps, so that a screen stays alive while fingerprints
 * are taken: yields the part done, from 0 to 1.
 */
export function* resultSheetsInSteps(report: Report): Steps<number, readonly SheetModel[]> {
  const others = otherSheets(report);
  const sheets: Record<string, string> = {};
  const summary = summarySheet(report);
  const all = [summary(() => ({})), ...others];
  const total = all.reduce((sum, { rowCount }) => sum + rowCount, 0);
  let done = 0;
  for (const model of all) {
    sheets[titleIn(model)] = yield* asPart(modelFingerprint(model), (rows) => (done + rows) / total);
    done += model.rowCount;
  }
  return [summary(() => sheets), ...others];
}

function otherSheets(report: Report): readonly SheetModel[] {
  const lines = asLeftLines(report);
  const [records, drifting] = [shownRecords(report), driftingChannels(report)];
  return [
    resultsSheet(report),
    groupsSheet(report),
    problemsSheet(report),
    ...(lines.length > 0 ? [asLeftSheet(report, lines)] : []),
    ...(report.since ? [changesSheet(report, report.since)] : []),
    ...(drifting.length > 0 ? [driftSheet(report, drifting)] : []),
    ...(report.runUps && report.runUps.channels.length + report.runUps.responses.length > 0
      ? [runUpSheet(report, report.runUps)]
      : []),
    ...(report.replay ? [replaySheet(report, report.replay)] : []),
    ...(records.length > 0 ? [recordsSheet(report, records)] : []),
  ];
}
