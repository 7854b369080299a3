import type { Workbook, Worksheet } from '@univerjs/core';
import { storedFormula } from '../../hosts/formats/storedFormula.ts';
import { type Grid, shownContent, storedBook, styleOf } from '../../hosts/grid/grid.ts';
import { rulesOf } from '../../hosts/grid/tables.ts';
import { ruleShades } from '../../hosts/grid/write/sheetData.ts';
import { columnLetters } from '../../cells/address.ts';
import type { CellPlace } from '../../hosts/port/port.ts';
import { linkOf } from '../../hosts/grid/links.ts';
import type { CellStyle, ModelCell, LinkTarget, ModelRow, RowLink, SheetModel } from '../../sheets/model.ts';
import { drawnCells } from '../../sheets/charts/cells.ts';
import type { ChartModel } from '../../sheets/charts/model.ts';
import type { EditedCell } from '../../hosts/file/patch/types.ts';
import type { Bench } from '../bench.ts';
import { sheetId } from '../open/gridWorkbook.ts';
import { sheetContent } from './sheetContent.ts';
import { fileStyle } from './fileStyle.ts';

/** A sheet to be added to the copy, and its errors and formulas that fill several cells, which are put into it afterwards. */
export interface NewSheet {
  readonly model: SheetModel;
  readonly beyondModel: readonly EditedCell[];
}

/**
 * Sheets of the grid that the file has not: result sheets as they were made if nobody changed them since, others as they
 * stand in the grid. Sheets that only the page added are left out for as long as they are as they came.
 */
export function newSheets({ grid, file, port, touched }: Bench): NewSheet[] {
  const book = storedBook(grid);
  const sheets = book.getSheets();
  const names = new Set(sheets.map((sheet) => sheet.getName()));
  const ofFile = new Set(
    file.view.sheets
      .map((_, index) => index)
      .filter((index) => !file.added.has(index))
      .map(sheetId),
  );
  const shownOnly = new Set(file.original ? [...file.added].map(sheetId) : []);
  const inFile = new Set(
    sheets.filter((sheet) => ofFile.has(sheet.getSheetId())).map((sheet) => sheet.getName()),
  );
  const leadTo = ({ sheet, row, column }: CellPlace): LinkTarget => ({
    sheet,
    ...(!inFile.has(sheet) && { ours: true }),
    row,
    column: columnLetters(column),
  });
  return sheets.flatMap((sheet): NewSheet[] => {
    const id = sheet.getSheetId();
    if (ofFile.has(id) || (shownOnly.has(id) && !touched.has(id))) return [];
    const made = touched.has(id) ? undefined : port.written.get(id);
    if (made?.name === sheet.getName() && sheetsNamed(made).every((name) => names.has(name))) {
      return [{ model: made, beyondModel: [] }];
    }
    const charts = port.written.get(id)?.charts ?? [];
    const drawable = charts.filter((chart) => drawnSheets(chart).every((name) => names.has(name)));
    const asItStands = sheetModel(grid, book, sheet, leadTo);
    return [{ ...asItStands, model: { ...asItStands.model, charts: drawable } }];
  });
}

/** Other sheets that the formulas of a model lead to and its charts draw from. */
function sheetsNamed({ formulas, charts = [] }: SheetModel): string[] {
  const led = formulas.flatMap((formula) =>
    Array.from(formula.matchAll(/\{([^{}]+)\}!/g), ([, name = '']) => name),
  );
  return [...led, ...charts.flatMap(drawnSheets)];
}

function drawnSheets(chart: ChartModel): string[] {
  return drawnCells(chart)
    .flat()
    .flatMap(({ sheet }) => sheet ?? []);
}

function sheetModel(
  grid: Grid,
  book: Workbook,
  sheet: Worksheet,
  leadTo: (place: CellPlace) => LinkTarget,
): NewSheet {
  const storedAt = shownContent(grid, sheet);
  const contentAt = sheetContent(grid, sheet, false);
  const beyondModel: EditedCell[] = [];
  const styles: Record<string, CellStyle> = {};
  const formulas: string[] = [];
  const spilled = grid.spilled(sheet.getUnitId(), sheet.getSheetId());
  const rowNumbers = [...Object.keys(sheet.getCellMatrix().getMatrix()), ...Object.keys(spilled)].map(Number);
  const rowCount = Math.max(0, ...rowNumbers.map((row) => row + 1));

  const cellOf = (row: number, column: number): ModelCell | undefined => {
    const stored = storedAt(row, column);
    if (!stored) return undefined;
    const content = contentAt(row, column);
    const ofModel = content.error !== true && content.array === undefined;
    if (!ofModel) beyondModel.push({ row: row + 1, column: column + 1, ...content });
    const value = content.error === true ? null : content.value;
    const formula = ofModel ? content.formula : undefined;
    const look = fileStyle(styleOf(book, stored));
    const style = look && JSON.stringify(look);
    if (look && style !== undefined) styles[style] = look;
    if (value === null && formula === undefined && !look) return undefined;
    return {
      value,
      ...(style !== undefined && { style }),
      ...(formula !== undefined && { formula: formulas.push(storedFormula(formula)) - 1 }),
    };
  };
  const rows: readonly ModelRow[] = Array.from({ length: rowCount }, (_, row): ModelRow => {
    const columns = Object.keys({ ...sheet.getCellMatrix().getRow(row), ...spilled[row] }).map(Number);
    const length = Math.max(0, ...columns.map((column) => column + 1));
    const links = columns.flatMap((column): RowLink[] => {
      const to = linkOf(storedAt(row, column));
      return to ? [{ column: column + 1, to: leadTo(to) }] : [];
    });
    return { cells: Array.from({ length }, (__, column) => cellOf(row, column)), links };
  });
  const model: SheetModel = {
    name: sheet.getName(),
    widths: Array.from({ length: Math.max(0, ...rows.map(({ cells }) => cells.length)) }, (_, column) =>
      Math.max(0, (sheet.getColumnWidth(column) - 5) / 7),
    ),
    styles,
    formulas,
    rowCount,
    rows: () => rows,
    shades: ruleShades(rulesOf(sheet)),
    print: { landscape: true },
  };
  return { model, beyondModel };
}
