import type { Sheet, Workbook, Area, ShownText } from '../../../cells/sheet.ts';
import { baseName } from './fileName.ts';
import { openBook, type ReadOptions } from './openBook.ts';
import type { Attributes } from './branches.ts';
import type { Cell } from '../../../cells/cell.ts';
import { applyMerges } from '../../formats/merges.ts';
import type { ParsedCell, SheetKeeper } from './worksheet.ts';
import { lastColumn } from './area.ts';
import { booleanAttribute, type XmlHandler } from './xml.ts';
export type { ReadOptions } from './openBook.ts';

const emptyRow: readonly Cell[] = Object.freeze([]);

/**
 * The rows of a sheet as they come in, in any order, each as short as its last filled cell. Rows without a
 * filled cell are all one and the same empty row, so that a million of them cost next to nothing.
 */
class Grid {
  readonly #rows: (readonly Cell[])[] = [];
  #row = 0;
  #current: Cell[] = [];

  /** Turns to a row, from 1. A row may be turned to again: its cells are then added to. */
  startRow(row: number): void {
    this.#store();
    this.#row = row;
    for (const cell of this.#rows[row - 1] ?? emptyRow) this.#current.push(cell);
  }

  /** Adds one cell where none stands yet; false where one does. */
  put(column: number, cell: Cell): boolean {
    if (cell === null) return true;
    const row = this.#current;
    while (row.length < column) row.push(null);
    if (row[column - 1] !== null) return false;
    row[column - 1] = cell;
    return true;
  }

  /** The finished rows, to the last one with a filled cell. The grid is not to be used again. */
  finish(): (readonly Cell[])[] {
    this.#store();
    return this.#rows;
  }

  #store(): void {
    if (this.#current.length === 0) return;
    while (this.#rows.length < this.#row) this.#rows.push(emptyRow);
    // A copy is exactly as long as the row; the array that grew has room to spare.
    this.#rows[this.#row - 1] = this.#current.slice();
    this.#current.length = 0;
  }
}

/** Texts that number formats show, gathered cell by cell into runs down each column. */
class ShownRuns {
  readonly #done: ShownText[] = [];
  readonly #open = new Map<number, { text: string; top: number; bottom: number }>();

  /** A number in a row and column, from 1, with the text that its format shows. */
  add(row: number, column: number, text: string): void {
    const run = this.#open.get(column);
    if (run?.text === text && row === run.bottom + 1) {
      run.bottom = row;
      return;
    }
    if (run) this.#close(column, run);
    this.#open.set(column, { text, top: row, bottom: row });
  }

  /** All runs; nothing may be added afterwards. */
  finish(): readonly ShownText[] {
    for (const [column, run] of this.#open) this.#close(column, run);
    this.#open.clear();
    return this.#done;
  }

  #close(column: number, { text, top, bottom }: { text: string; top: number; bottom: number }): void {
    this.#done.push({ text, area: { top, left: column, bottom, right: column } });
  }
}

/** Keeps what an audit takes of a sheet: its cells as they look, what their formats show with them, what is merged and what is hidden. */
class SheetCells implements SheetKeeper {
  readonly #hiddenRows = new Set<number>();
  readonly #hiddenColumns = new Set<number>();
  readonly #shown = new ShownRuns();
  readonly #merges: Area[] = [];
  readonly #grid = new Grid();

  row(row: number, attributes: Attributes | undefined): void {
    this.#grid.startRow(row);
    if (attributes === undefined) return;
    if (booleanAttribute(attributes['hidden']) === true || Number(attributes['ht'] ?? 1) === 0) {
      this.#hiddenRows.add(row);
    }
  }

  cell({ row, column, value, shown }: ParsedCell): boolean {
    if (shown !== '' && typeof value === 'number') this.#shown.add(row, column, shown);
    return this.#grid.put(column, value);
  }

  merge(area: Area): void {
    this.#merges.push(area);
  }

  readonly around: XmlHandler = {
    open: (name, attributes, parents) => {
      if (name === 'col' && parents[1] === 'cols') this.#column(attributes);
    },
  };

  #column(attributes: Attributes): void {
    const hidden = booleanAttribute(attributes['hidden']) === true || Number(attributes['width'] ?? 1) === 0;
    if (!hidden) return;
    const last = Math.min(Number(attributes['max']), lastColumn);
    for (let column = Math.max(1, Number(attributes['min'])); column <= last; column++)
      this.#hiddenColumns.add(column);
  }

  /** What there is of the sheet, once the part has been read to its end. */
  finish(): Omit<Sheet, 'name' | 'hidden' | 'tables'> {
    const rows: (readonly Cell[])[] = this.#grid.finish();
    applyMerges(rows, this.#merges, () => undefined);
    const shownTexts = this.#shown.finish();
    return {
      rows,
      hiddenRows: this.#hiddenRows,
      ...(this.#merges.length > 0 ? { merged: this.#merges } : {}),
      ...(this.#hiddenColumns.size > 0 ? { hiddenColumns: this.#hiddenColumns } : {}),
      ...(shownTexts.length > 0 ? { shownTexts } : {}),
    };
  }
}

/**
 * Reads a workbook of the .xlsx family for an audit. Numbers keep full precision, dates and percentages are told by
 * their number formats, formulas read as their stored results. Throws FileRefused as `openBook` does, and where a sheet
 * cannot be read in full.
 */
export function readWorkbook(fileName: string, bytes: Uint8Array, options: ReadOptions = {}): Workbook {
  const { book, readSheet } = openBook(bytes, options);
  const sheets = book.sheets.map((entry): Sheet => {
    const cells = new SheetCells();
    const tables = readSheet(entry, cells);
    const { name, hidden } = entry;
    return { name, hidden, tables, ...cells.finish() };
  });
  return { name: baseName(fileName), sheets };
}
