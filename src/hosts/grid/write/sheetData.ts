import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IRowData,
  type IStyleData,
  type IWorksheetData,
} from '@univerjs/core';
import type { ModelCell, SheetModel } from '../../../sheets/model.ts';
import { fittedText, writable } from '../../../sheets/cellContent.ts';
import { rowFormula } from '../../formats/rowFormula.ts';
import { markOfText } from '../storedText.ts';
import { columnPixels, rowPixels } from './lengths.ts';
import { gridLook } from './looks.ts';
import { frozenAt, mergedRanges } from '../frame.ts';
import { keptOfValuesOnly } from './valuesOnly.ts';
import { shadeRules } from './shadeRules.ts';

export interface SheetRun {
  /** The name that each sheet of the run wanted, and the one it gets. */
  readonly given: ReadonlyMap<string, string>;
  /** Whether formulas stand in the sheet; otherwise only their stored results do. */
  readonly formulas: boolean;
  /** Called after each row; work goes on once it is done. */
  readonly onRow: () => Promise<void>;
}

/** The font of new workbooks, by whose letters the widths and heights of result sheets are planned; size in points. */
const usualFont: IStyleData = { ff: 'Calibri', fs: 11 };

/** Rows and columns that a sheet of the grid has at least, so that there is room to work. */
const leastRows = 60;
const leastColumns = 20;

/**
 * A result sheet as the grid stores it. Text is always text. Throws an Error where the model contradicts itself: a style or
 * formula that is not defined, or more or fewer rows than announced.
 */
export async function sheetData(
  model: SheetModel,
  id: string,
  { given, formulas, onRow }: SheetRun,
): Promise<Partial<IWorksheetData>> {
  const looks = new Map<string, IStyleData>(
    Object.entries(model.styles).map(([name, style]) => [name, gridLook(style)]),
  );
  const templates = model.formulas.map((template) => rowFormula(template, given));

  const lookOf = ({ style = '' }: ModelCell): IStyleData | undefined => {
    const look = style === '' ? undefined : looks.get(style);
    if (style !== '' && !look) throw new Error(`sheet "${model.name}" has no style "${style}"`);
    return look;
  };
  const cellOf = (cell: ModelCell, row: number): ICellData => {
    const look = lookOf(cell);
    const data: ICellData = { ...content(cell), ...(look && { s: look }) };
    if (cell.formula === undefined) return data;
    const template = templates[cell.formula];
    if (!template) throw new Error(`sheet "${model.name}" has no formula ${cell.formula}`);
    return formulas ? { ...data, f: `=${template.at(row)}` } : data;
  };

  const cellData: Record<number, Record<number, ICellData>> = {};
  const rowData: Record<number, Partial<IRowData>> = {};
  let count = 0;
  let widest = model.widths.length;
  for (const { cells, height } of model.rows()) {
    const row: Record<number, ICellData> = {};
    cells.forEach((cell, column) => {
      if (cell) row[column] = cellOf(cell, count + 1);
    });
    widest = Math.max(widest, cells.length);
    cellData[count] = row;
    if (height !== undefined) rowData[count] = { h: rowPixels(height), ia: BooleanNumber.FALSE };
    count++;
    await onRow();
  }
  if (count !== model.rowCount) {
    throw new Error(`sheet "${model.name}" announced ${model.rowCount} rows and has ${count}`);
  }
  const { rows = 0, columns = 0 } = model.freeze ?? {};
  return {
    id,
    name: given.get(model.name) ?? model.name,
    rowCount: Math.max(leastRows, count + 20),
    columnCount: Math.max(leastColumns, widest + 5),
    defaultStyle: usualFont,
    cellData,
    rowData,
    columnData: Object.fromEntries(model.widths.map((width, index) => [index, { w: columnPixels(width) }])),
    mergeData: mergedRanges(model.merges ?? []),
    freeze: frozenAt(rows, columns),
    showGridlines: BooleanNumber.TRUE,
    custom: {
      rules: shadeRules(model),
      ...(!formulas && model.formulas.length > 0 && keptOfValuesOnly),
    },
  };
}

function content({ value }: ModelCell): ICellData {
  if (value === null || value === '') return {};
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  const written = typeof value === 'number' ? writable(value) : fittedText(value);
  return typeof written === 'number'
    ? { v: written, t: CellValueType.NUMBER }
    : { v: written, t: markOfText(written) };
}
