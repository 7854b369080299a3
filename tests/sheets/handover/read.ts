import { audit } from '../../../src/audit/audit.ts';
import type { Report } from '../../../src/audit/model/report.ts';
import { handoverSheets } from '../../../src/sheets/handover/handoverSheets.ts';
import type { ModelCell, ModelValue, SheetModel } from '../../../src/sheets/model.ts';
import { workbookOf, type Listed } from '../tables.ts';

/** Columns A to L are printed. */
export const printed = 12;

export function reportOf(listed: readonly Listed[]): Report {
  return audit(workbookOf(listed), { now: new Date('2025-03-14T08:05:00Z') });
}

export function sheetsOf(...listed: readonly Listed[]): readonly SheetModel[] {
  return handoverSheets(reportOf(listed));
}

/** The sheet of the only machine. */
export function sheetOf(...listed: readonly Listed[]): SheetModel {
  const [, sheet, ...more] = sheetsOf(...listed);
  if (!sheet || more.length > 0) throw new Error('not one machine');
  return sheet;
}

export function rowsOf(model: SheetModel): readonly (readonly (ModelCell | undefined)[])[] {
  return [...model.rows()].map(({ cells }) => cells);
}

/** What is printed, one line a row. */
export function textOf(model: SheetModel): string {
  return rowsOf(model)
    .map((cells) =>
      cells
        .slice(0, printed)
        .flatMap((cell) => cell?.value ?? [])
        .join(' | '),
    )
    .join('\n');
}

/** Values of the printed row that begins with these texts. */
export function line(model: SheetModel, ...start: readonly string[]): readonly ModelValue[] {
  const found = rowsOf(model)
    .map((cells) => cells.slice(0, printed).map((cell) => cell?.value ?? null))
    .find((values) => start.every((text, index) => values.filter((value) => value !== null)[index] === text));
  if (!found) throw new Error(`no line ${start.join(', ')}`);
  return found;
}
