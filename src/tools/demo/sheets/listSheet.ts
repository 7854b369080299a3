import type { ModelRow, SheetModel } from '../../../sheets/model.ts';
import { entryCells, headerCells, type SheetColumn } from './sheetColumn.ts';
import { handKeptStyles } from './writtenCell.ts';

/** A list as somebody kept it by hand: its name, a line about it, and a row an entry. */
export function listSheet<Entry>(
  name: string,
  subtitle: string,
  columns: readonly SheetColumn<Entry>[],
  entries: readonly Entry[],
): SheetModel {
  const rows: readonly ModelRow[] = [
    { cells: [{ value: name, style: 'title' }] },
    { cells: [{ value: subtitle, style: 'subtitle' }] },
    { cells: [] },
    { height: 30, cells: headerCells(columns) },
    ...entries.map((entry) => ({ cells: entryCells(columns, entry) })),
  ];
  return {
    name,
    widths: columns.map(({ width }) => width),
    styles: handKeptStyles,
    formulas: [],
    rowCount: rows.length,
    rows: () => rows,
    freeze: { rows: 4, columns: 0 },
    print: { landscape: false, repeatRows: { from: 4, to: 4 } },
  };
}
