import { finish, type Steps } from '../audit/model/steps.ts';
import type { Sheet, Workbook } from '../cells/sheet.ts';
import { sheetFingerprint } from '../sheets/evidence/resultsFingerprint.ts';
import { findRuns, titleOfSheet } from './runs.ts';
import { storedFingerprints, damagedEvidence } from './storedEvidence.ts';

/** The result sheets of a workbook by whether they may be taken away without asking. Names, in the order of the sheets. */
export interface OwnSheets {
  /** What an audit wrote, to the last cell, as the evidence of that audit says. */
  readonly proven: readonly string[];
  /** Sheets that say they are result sheets, but were edited or have no evidence. */
  readonly unproven: readonly string[];
}

/** Tells the result sheets of a workbook; everything else is the user's. */
export function ownSheets(workbook: Workbook): OwnSheets {
  return finish(ownSheetsInSteps(workbook));
}

/** The same in steps, so that a screen stays alive; how many rows of a sheet are done says nothing of the whole. */
export function* ownSheetsInSteps(workbook: Workbook): Steps<number, OwnSheets> {
  const { runs, without } = findRuns(workbook);
  const proven = new Set<Sheet>();
  const all = new Set<Sheet>(without);
  for (const { id, sheets, handOver, evidence } of runs) {
    for (const sheet of [...sheets, ...handOver]) all.add(sheet);
    const stored =
      evidence && damagedEvidence(id, evidence).length === 0 ? storedFingerprints(evidence) : undefined;
    if (!stored) continue;
    const titles = sheets.map(titleOfSheet);
    for (const [index, sheet] of sheets.entries()) {
      // Of two sheets with one title neither is known to be the audit's own.
      const title = titles[index] ?? '';
      const isOnly = titles.indexOf(title) === titles.lastIndexOf(title);
      if (isOnly && stored[title] === (yield* sheetFingerprint(sheet.rows))) proven.add(sheet);
    }
  }
  const names = (isWanted: (sheet: Sheet) => boolean): string[] =>
    workbook.sheets.filter((sheet) => all.has(sheet) && isWanted(sheet)).map(({ name }) => name);
  return { proven: names((sheet) => proven.has(sheet)), unproven: names((sheet) => !proven.has(sheet)) };
}
