import { audit } from '../../../src/audit/audit.ts';
import type { Report } from '../../../src/audit/model/report.ts';
import { handoverSheets } from '../../../src/sheets/handover/handoverSheets.ts';
import type { ModelCell, ModelValue, SheetModel } from '../../../src/sheets/model.ts';
import { workbookOf, type Listed } from '../tables.ts';

export function reportOf(listed: readonly Listed[]): Report {
  return audit(workbookOf(listed), { now: new Date('2025-03-14T08:05:00Z') });
}

export function sheetsOf(...listed: readonly Listed[]): readonly SheetModel[] {
  return handoverSheets(reportOf(listed));
}

/** The control-room page of the only machine. */
export function pageOf(...listed: readonly Listed[]): SheetModel {
  return onlyMachine(listed)[0];
}

/** The annex of the only machine. */
export function annexOf(...listed: readonly Listed[]): SheetModel {
  return onlyMachine(listed)[1];
}

function onlyMachine(listed: readonly Listed[]): readonly [SheetModel, SheetModel] {
  const [, page, annex, ...more] = sheetsOf(...listed);
  if (!page || !annex || more.length > 0) throw new Error('not one machine');
  return [page, annex];
}

/** Whether a sheet is a control-room page. */
export function isPage({ print }: SheetModel): boolean {
  return print.onePage === true;
}

export function rowsOf(model: SheetModel): readonly (readonly (ModelCell | undefined)[])[] {
  return [...model.rows()].map(({ cells }) => cells);
}

/** Cells that are printed. */
export function printedRows(model: SheetModel): readonly (readonly (ModelCell | undefined)[])[] {
  const right = model.print.area?.right ?? model.widths.length;
  return rowsOf(model).map((cells) => cells.slice(0, right));
}

/** What is printed, one line a row, its cells without the empty ones under merged ones. */
export function textOf(model: SheetModel): string {
  return printedRows(model)
    .map((cells) => cells.flatMap((cell) => cell?.value ?? []).join(' | '))
    .join('\n');
}

/** Values of the printed row that begins with these, without empty cells. */
export function line(model: SheetModel, ...start: readonly ModelValue[]): readonly ModelValue[] {
  const found = printedRows(model)
    .map((cells) => cells.flatMap((cell) => cell?.value ?? []))
    .find((values) => start.every((value, index) => values[index] === value));
  if (!found) throw new Error(`no line ${start.join(', ')}`);
  return found;
}
