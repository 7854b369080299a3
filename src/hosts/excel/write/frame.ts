import type { Area } from '../../../cells/sheet.ts';
import type { SheetModel, ShadeRule, TableModel } from '../../../sheets/model.ts';
import { footerText, pageNumbers } from '../../formats/footer.ts';
import { reference } from '../../formats/reference.ts';
import { areasAt, columnsAt, rectanglesByKey } from './rectangles.ts';

/** Sets how a sheet is printed: one page wide, header rows on each page, margins in points as in files. */
export function setPrint(sheet: Excel.Worksheet, { print }: SheetModel): void {
  const { pageLayout } = sheet;
  pageLayout.orientation = print.landscape ? 'Landscape' : 'Portrait';
  if (print.paper !== undefined) pageLayout.paperSize = print.paper === 'A4' ? 'A4' : 'Letter';
  const fitted = { horizontalFitToPages: 1, ...(print.onePage ? { verticalFitToPages: 1 } : {}) };
  pageLayout.zoom = print.scale === undefined ? fitted : { scale: print.scale };
  pageLayout.leftMargin = 28.8;
  pageLayout.rightMargin = 28.8;
  pageLayout.topMargin = 43.2;
  pageLayout.bottomMargin = 43.2;
  pageLayout.footerMargin = 21.6;
  if (print.area !== undefined) pageLayout.setPrintArea(reference(print.area));
  if (print.repeatRows !== undefined) {
    pageLayout.setPrintTitleRows(`$${print.repeatRows.from}:$${print.repeatRows.to}`);
  }
  const footer = pageLayout.headersFooters.defaultForAllPages;
  footer.leftFooter = footerText(print.footer ?? '');
  footer.rightFooter = pageNumbers;
}

/** Sets what belongs to a sheet as a whole and shows on the screen: widths, merges, shades, filter or table, frozen panes. `tableName`: the free name. */
export function setFrame(sheet: Excel.Worksheet, model: SheetModel, tableName: string): void {
  setWidths(sheet, model.widths);
  for (const merge of model.merges ?? []) rangeAt(sheet, merge).merge(false);
  // Each new rule comes before those that are there.
  for (const shade of (model.shades ?? []).toReversed()) addShade(rangeAt(sheet, shade.area), shade);
  if (model.filter !== undefined) sheet.autoFilter.apply(rangeAt(sheet, model.filter));
  if (model.table !== undefined) addTable(sheet, model.table, tableName);
  setFreeze(sheet, model.freeze ?? { rows: 0, columns: 0 });
}

function addTable(sheet: Excel.Worksheet, { area }: TableModel, name: string): void {
  const table = sheet.tables.add(rangeAt(sheet, area), true);
  table.name = name;
  // The plainest style that Excel brings along.
  table.style = 'TableStyleLight1';
}

/** About how many bytes of a request `setFrame` takes. */
export function frameBytes({ widths, merges = [], shades = [] }: SheetModel): number {
  return 2_000 + widths.length * 500 + merges.length * 500 + shades.length * 2_000;
}

function setWidths(sheet: Excel.Worksheet, widths: readonly number[]): void {
  for (const [width, areas] of rectanglesByKey([widths.map(String)], 1)) {
    const addresses = areas.map(({ left, right }) => columnsAt(left, right));
    for (const range of areasAt(sheet, addresses)) range.format.columnWidth = points(Number(width));
  }
}

/**
 * Excel's interface takes widths in points. A character is seven pixels wide and a column has five pixels of padding in the
 * default font at 11 points (ECMA-376 part 1, section 18.3.1.13); a pixel is three quarters of a point.
 */
function points(characters: number): number {
  return (characters * 7 + 5) * 0.75;
}

/** Texts are compared without case. A literal in a formula holds 255 characters. */
function addShade(range: Excel.Range, { equals, style }: ShadeRule): void {
  if (equals.length > 255) {
    throw new RangeError(`shade text "${equals.slice(0, 40)}…" is longer than 255 characters`);
  }
  const rule = range.conditionalFormats.add('CellValue');
  const { format } = rule.cellValue;
  if (style.fill !== undefined) format.fill.color = `#${style.fill}`;
  if (style.color !== undefined) format.font.color = `#${style.color}`;
  if (style.bold !== undefined) format.font.bold = style.bold;
  rule.cellValue.rule = { formula1: `="${equals.replaceAll('"', '""')}"`, operator: 'EqualTo' };
  rule.stopIfTrue = true;
}

function setFreeze(
  sheet: Excel.Worksheet,
  { rows, columns }: { readonly rows: number; readonly columns: number },
): void {
  if (rows > 0 && columns > 0) sheet.freezePanes.freezeAt(sheet.getRangeByIndexes(0, 0, rows, columns));
  else if (rows > 0) sheet.freezePanes.freezeRows(rows);
  else if (columns > 0) sheet.freezePanes.freezeColumns(columns);
}

function rangeAt(sheet: Excel.Worksheet, area: Area): Excel.Range {
  return sheet.getRange(reference(area));
}
