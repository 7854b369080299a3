import type { Sheet } from '../cells/sheet.ts';
import type { SheetModel } from './model.ts';

/** A text table as a sheet of its own, every cell as the text it is, for the workbook that carries its results. */
export function textTableSheet(sheet: Sheet): SheetModel {
  const columns = sheet.rows.reduce((most, row) => Math.max(most, row.length), 0);
  return {
    name: sheet.name.replace(/\.[^.]*$/u, ''),
    shows: sheet.name,
    widths: Array.from({ length: columns }, () => 16),
    styles: {},
    formulas: [],
    rowCount: sheet.rows.length,
    *rows() {
      for (const row of sheet.rows) {
        yield { cells: row.map((cell) => (typeof cell === 'string' ? { value: cell } : undefined)) };
      }
    },
    print: { landscape: true },
  };
}
