import { asPart, type Steps } from '../audit/model/steps.ts';
import type { Sheet } from '../cells/sheet.ts';
import { sheetFingerprint } from '../sheets/evidence/resultsFingerprint.ts';
import type { SheetModel } from '../sheets/model.ts';
import { titleIn } from '../sheets/titles.ts';
import { compareSheet } from './compareSheet.ts';
import { Differences } from './differences.ts';
import { calculatedAnew, compareFormulas, type FileFormulas } from './formulas.ts';
import { titleOfSheet } from './runs.ts';
import type { PartCheck } from './verification.ts';

/** Sheets of an audit, and the same sheets made anew. */
export interface SheetsMadeAnew {
  readonly models: readonly SheetModel[];
  readonly sheets: readonly Sheet[];
  /** The formulas of the file, where it is at hand. */
  readonly formulas?: FileFormulas | undefined;
  /** Sheets to hand over: each stands on its own, so that one that is not there is no edit. */
  readonly handOver: { readonly models: readonly SheetModel[]; readonly sheets: readonly Sheet[] };
}

/** What came of comparing sheets. */
export interface SheetsCompared {
  readonly part: PartCheck;
  /** Cells that differ by their formula. */
  readonly otherFormulas: number;
}

/** Compares the sheets of an audit, cell by cell, with the same sheets made anew. Tells the part done. */
export function* compareSheets({
  models,
  sheets,
  formulas,
  handOver,
}: SheetsMadeAnew): Steps<number, SheetsCompared> {
  const differences = new Differences();
  const said: string[] = [];
  const compared = new Set<Sheet>();
  const last = models.filter(({ writtenLast }) => writtenLast === true);
  const all = [...models.filter((model) => !last.includes(model)), ...handOver.models, ...last];
  const total = all.reduce((sum, { rowCount }) => sum + rowCount, 0);
  const names = new Map(models.map((model) => [model.name, sheetOf(model, sheets)?.name ?? model.name]));
  let done = 0;
  let otherFormulas = 0;
  for (const model of all) {
    const title = titleIn(model);
    const sheet =
      sheets.find((one) => titleOfSheet(one) === title && !compared.has(one)) ??
      handOver.sheets.find((one) => subjectOf(one) === subjectIn(model) && !compared.has(one));
    if (!sheet) {
      if (!handOver.models.includes(model)) said.push(missing(title, model.name));
      continue;
    }
    compared.add(sheet);
    const withFormulas = formulas && { sheet, model, formulas, names };
    const shown = withFormulas && formulas.calculatedOnOpening ? calculatedAnew(withFormulas) : sheet;
    const rows = yield* asPart(compareSheet(model, shown, differences), (row) => (done + row) / total);
    said.push(...rows.said);
    // Where rows came or went each formula stands elsewhere, and the rows are said.
    if (withFormulas && rows.said.length === 0) otherFormulas += compareFormulas(withFormulas, differences);
    done += model.rowCount;
  }
  said.push(...surplus([...sheets, ...handOver.sheets].filter((sheet) => !compared.has(sheet))));
  return { part: partOf(said, differences), otherFormulas };
}

function sheetOf(model: SheetModel, sheets: readonly Sheet[]): Sheet | undefined {
  const title = titleIn(model);
  return sheets.find((one) => titleOfSheet(one) === title);
}

/** What a sheet to hand over is about: its machine, or that it is the list. All have the same title. */
function subjectOf({ rows }: Sheet): unknown {
  return rows[1]?.[0];
}

function subjectIn(model: SheetModel): unknown {
  const [, second] = model.rows();
  return second?.cells[0]?.value;
}

/**
 * Compares the sheets of an audit with the fingerprints that it left, where they can't be made anew: which sheets were
 * edited is known then, not which cells.
 */
export function* compareFingerprints(
  fingerprints: Readonly<Record<string, string>>,
  sheets: readonly Sheet[],
): Steps<number, PartCheck> {
  const said: string[] = [];
  const compared = new Set<Sheet>();
  const total = sheets.reduce((sum, { rows }) => sum + rows.length, 0);
  let done = 0;
  for (const [title, fingerprint] of Object.entries(fingerprints)) {
    const sheet = sheets.find((one) => titleOfSheet(one) === title && !compared.has(one));
    if (!sheet) {
      said.push(missing(title));
      continue;
    }
    compared.add(sheet);
    const now = yield* asPart(sheetFingerprint(sheet.rows), (row) => (done + row) / total);
    if (now !== fingerprint) said.push(`Sheet '${sheet.name}' was edited: its fingerprint is another.`);
    done += sheet.rows.length;
  }
  said.push(...surplus(sheets.filter((sheet) => !compared.has(sheet))));
  return partOf(said, new Differences());
}

function partOf(said: readonly string[], { count, cells, more }: Differences): PartCheck {
  const state = count > 0 || said.length > 0 ? 'edited' : 'as audited';
  return { state, said, cells, more };
}

function missing(title: string, name?: string): string {
  const called = name === undefined ? '' : ` ('${name}')`;
  return `The sheet titled “${title}”${called} is missing, or its title was edited.`;
}

function surplus(sheets: readonly Sheet[]): string[] {
  return sheets.map(
    ({ name }) =>
      `Sheet '${name}' carries a title of this audit but is none of its sheets, or a copy of one.`,
  );
}
