import type { Cell } from '../../../cells/cell.ts';
import type { Area, Sheet, Workbook } from '../../../cells/sheet.ts';
import { applyMerges } from '../../formats/merges.ts';
import { type Cancel, HostRefused, type OnProgress } from '../../port/port.ts';
import type { Session } from '../session.ts';
import { askForCells, cellReader, type RawCells } from './cells.ts';
import { readHiddenColumns } from './hiddenColumns.ts';
import { readMergedAreas } from './mergedAreas.ts';
import { readOutline, type SheetOutline } from './outline.ts';
import { type Piece, readPieces, tripsOf } from './pieces.ts';

const failed = 'The workbook could not be read';

/** Cells of all used areas together; the reader of files has the same limit. */
const mostCells = 20_000_000;

const emptyRow: readonly Cell[] = Object.freeze([]);

/**
 * Reads every sheet that holds something: values, dates and percentages by their number formats, tables, hidden rows, columns and
 * sheets, merged cells (from ExcelApi 1.13 on) as they look. About one round trip for 120,000 cells, and three or four besides.
 */
export function readWorkbook(session: Session, onProgress?: OnProgress, cancel?: Cancel): Promise<Workbook> {
  return session.run(failed, async (context) => {
    const { name, date1904, sheets: outlines } = await readOutline(context);
    refuseTooLarge(outlines);
    const merges = session.hasApi('1.13')
      ? await readMergedAreas(context, outlines)
      : new Map<string, readonly Area[]>();
    const hiddenColumns = await readHiddenColumns(context, outlines);
    const cellsOf = cellReader(date1904);
    const sheets = new Map(outlines.map((outline) => [outline.name, emptySheet(outline)]));
    const trips = tripsOf(outlines);
    for (const [index, trip] of trips.entries()) {
      if (cancel?.cancelled === true)
        throw new HostRefused('Reading was cancelled. The workbook is as it was.');
      await readPieces(context, trip, askForRows, (piece, { raw, hidden }) => {
        sheets.get(piece.sheet.name)?.take(piece, cellsOf(raw), hidden);
      });
      onProgress?.((index + 1) / trips.length);
    }
    return {
      name,
      sheets: Array.from(sheets.values(), ({ sheet }) => {
        const merged = merges.get(sheet.name) ?? [];
        const columns = hiddenColumns.get(sheet.name);
        applyMerges(sheet.rows, merged, () => undefined);
        return {
          ...sheet,
          ...(merged.length > 0 ? { merged } : {}),
          ...(columns && columns.size > 0 ? { hiddenColumns: columns } : {}),
        };
      }),
    };
  });
}

function askForRows(
  range: Excel.Range,
  piece: Piece<SheetOutline>,
): () => { readonly raw: RawCells; readonly hidden: readonly number[] } | null {
  const cells = askForCells(range);
  const hidden = askForHiddenRows(range, piece);
  return () => {
    const raw = cells();
    return raw === null ? null : { raw, hidden: hidden() };
  };
}

interface SheetInWork {
  readonly sheet: Sheet & { readonly rows: (readonly Cell[])[] };
  take(piece: Piece, cells: readonly Cell[][], hidden: readonly number[]): void;
}

function emptySheet({ name, hidden, used, tables }: SheetOutline): SheetInWork {
  const rows: (readonly Cell[])[] = [];
  const hiddenRows = new Set<number>();
  const margin: readonly Cell[] = Array.from({ length: used.left - 1 }, () => null);
  return {
    sheet: { name, hidden, rows, hiddenRows, tables },
    take(piece, cells, hiddenOfPiece) {
      for (const row of hiddenOfPiece) hiddenRows.add(row);
      while (rows.length < piece.top - 1) rows.push(emptyRow);
      for (const row of cells) rows.push(withMargin(margin, row));
    },
  };
}

/** The row from column A to its last filled cell. */
function withMargin(margin: readonly Cell[], row: readonly Cell[]): readonly Cell[] {
  const last = row.findLastIndex((cell) => cell !== null);
  return last < 0 ? emptyRow : [...margin, ...row.slice(0, last + 1)];
}

function refuseTooLarge(sheets: readonly SheetOutline[]): void {
  const sizes = sheets.map(({ name, used }) => ({
    name,
    cells: (used.bottom - used.top + 1) * (used.right - used.left + 1),
  }));
  const total = sizes.reduce((sum, { cells }) => sum + cells, 0);
  const [largest] = sizes.toSorted((one, other) => other.cells - one.cells);
  if (total <= mostCells || largest === undefined) return;
  throw new HostRefused(
    `${failed}. Its sheets take up ${total.toLocaleString('en')} cells, most of them on sheet “${largest.name}”; up to ${mostCells.toLocaleString('en')} are read. Delete stray cells far to the right or below, or split the workbook.`,
  );
}

/** Rows of a piece that are hidden or filtered away, counted from 1; asked for row by row only where some are and some are not. */
function askForHiddenRows(range: Excel.Range, { sheet, top, bottom }: Piece<SheetOutline>): () => number[] {
  if (sheet.rowsHidden !== null) {
    return () => (sheet.rowsHidden === true ? span(top, bottom) : []);
  }
  const rows = range.getRowProperties({ rowHidden: true });
  return () => rows.value.flatMap(({ rowHidden }, index) => (rowHidden === true ? [top + index] : []));
}

function span(first: number, last: number): number[] {
  return Array.from({ length: last - first + 1 }, (_, index) => first + index);
}
