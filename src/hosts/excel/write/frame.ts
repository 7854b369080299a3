import type { Area } from '../../../cells/sheet.ts';
import type { SheetModel, ShadeRule } from '../../../sheets/model.ts';
import { reference } from '../../formats/reference.ts';
import { areasAt, columnsAt } from './areas.ts';
import { rectanglesByKey } from './rectangles.ts';

/** Sets what belongs to a sheet as a whole and shows on the screen: widths, merges, shades, filter, frozen panes. */
export function setFrame(sheet: Excel.Worksheet, model: SheetModel): void {
  setWidths(sheet, model.widths);
  for (const merge of model.merges ?? []) rangeAt(sheet, merge).merge(false);
  // Each new rule comes before those that are there.
  for (const shade of (model.shades ?? []).toReversed()) addShade(rangeAt(sheet, shade.area), shade);
  if (model.filter !== undefined) sheet.autoFilter.apply(rangeAt(sheet, model.filter));
  setFreeze(sheet, model.freeze ?? { rows: 0, columns: 0 });
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
