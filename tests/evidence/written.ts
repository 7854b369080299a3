import { readFileSync } from 'node:fs';
import { audit, type AuditOptions } from '../../src/audit/audit.ts';
import type { Cell } from '../../src/cells/cell.ts';
import type { Sheet, Workbook } from '../../src/cells/sheet.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { addSheets } from '../../src/hosts/file/write/addSheets.ts';
import { resultSheets } from '../../src/sheets/resultSheets.ts';
import { demo } from '../cli/run.ts';

export const now = new Date('2026-09-01T08:05:00Z');

/** A workbook file with the result sheets of its audit behind its own. */
export function withResults(bytes: Uint8Array, options: AuditOptions = {}): Uint8Array {
  const report = audit(readWorkbook('station.xlsx', bytes), { now, ...options });
  return addSheets(bytes, resultSheets(report)).bytes;
}

export const demoBytes = readFileSync(demo);

/** A workbook with the rows of one sheet changed. */
export function edited(
  workbook: Workbook,
  sheet: string,
  change: (rows: readonly (readonly Cell[])[]) => readonly (readonly Cell[])[],
): Workbook {
  if (!workbook.sheets.some(({ name }) => name === sheet)) throw new Error(`no sheet ${sheet}`);
  return {
    ...workbook,
    sheets: workbook.sheets.map((one): Sheet =>
      one.name === sheet ? { ...one, rows: change(one.rows) } : one,
    ),
  };
}

/** The same with one cell changed, found by what stands in its row and what it holds. */
export function typed(
  workbook: Workbook,
  sheet: string,
  at: (cell: Cell, cells: readonly Cell[]) => boolean,
  value: Cell,
): { readonly book: Workbook; readonly row: number; readonly column: number } {
  let place: { row: number; column: number } | undefined;
  const book = edited(workbook, sheet, (rows) =>
    rows.map((cells, row) => {
      if (place) return cells;
      const column = cells.findIndex((cell) => at(cell, cells));
      if (column < 0) return cells;
      place = { row: row + 1, column: column + 1 };
      return cells.map((cell, index) => (index === column ? value : cell));
    }),
  );
  if (!place) throw new Error(`nothing like it on ${sheet}`);
  return { book, ...place };
}
