import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IRowData,
  type IStyleData,
  type IWorksheetData,
  type ICommandInfo,
  BorderStyleTypes,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
} from '@univerjs/core';
import type { ModelCell, SheetModel, ShadeRule, CellStyle, LinkTarget } from '../../../sheets/model.ts';
import { fittedText, writable } from '../../../sheets/cells.ts';
import { rowFormula } from '../../formats/rowFormula.ts';
import { markOfText } from '../storedText.ts';
import { frozenAt, mergedRanges } from '../frame.ts';
import type { Grid } from '../grid.ts';
import { keptLink } from '../links.ts';
import { columnNumber } from '../../../cells/address.ts';
import type { ViewRule } from '../../file/view/types.ts';

const across = { left: HorizontalAlign.LEFT, center: HorizontalAlign.CENTER, right: HorizontalAlign.RIGHT };

const down = { top: VerticalAlign.TOP, center: VerticalAlign.MIDDLE };

const yes = BooleanNumber.TRUE;

const mark = { valuesOnly: true } as const;

/** What is kept beside a sheet that shows the results of formulas it does not have. */
const keptOfValuesOnly: Readonly<Record<string, boolean>> = mark;

export interface SheetRun {
  /** The name that each sheet of the run wanted, and the one it gets. */
  readonly given: ReadonlyMap<string, string>;
  /** Whether formulas stand in the sheet; otherwise only their stored results do. */
  readonly formulas: boolean;
  /** Name of its table, where it has one. */
  readonly tableName: string;
  /** Name of the sheet to which a link leads; none where there is no such sheet. */
  readonly nameOf: (target: LinkTarget) => string | undefined;
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
  { given, formulas, tableName, nameOf, onRow }: SheetRun,
): Promise<Partial<IWorksheetData>> {
  const looks = new Map<string, IStyleData>(
    Object.entries(model.styles).map(([name, style]) => [name, gridStyle(style)]),
  );
  const templates = model.formulas.map((template) => rowFormula(template, given));

  const storedStyleOf = ({ style = '' }: ModelCell): IStyleData | undefined => {
    const look = style === '' ? undefined : looks.get(style);
    if (style !== '' && !look) throw new Error(`sheet "${model.name}" has no style "${style}"`);
    return look;
  };
  const cellOf = (cell: ModelCell, row: number): ICellData => {
    const look = storedStyleOf(cell);
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
  for (const { cells, height, links = [] } of model.rows()) {
    const row: Record<number, ICellData> = {};
    cells.forEach((cell, column) => {
      if (cell) row[column] = cellOf(cell, count + 1);
    });
    for (const { column, to } of links) {
      const sheet = nameOf(to);
      const cell = row[column - 1];
      if (cell && sheet !== undefined)
        cell.custom = keptLink({ sheet, row: to.row, column: columnNumber(to.column) });
    }
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
      ...(model.table && {
        tables: [{ name: tableName, area: model.table.area, headerRow: true, totalsRow: false }],
      }),
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

/**
 * Width of a column in pixels from its characters: seven pixels a character and five of padding, in the default font at 11
 * points (ECMA-376 part 1, section 18.3.1.13).
 */
function columnPixels(characters: number): number {
  return Math.round(characters * 7 + 5);
}

/** Height of a row in pixels from points: 96 pixels and 72 points an inch (W3C, CSS Values and Units 4, section 6.2). */
export function rowPixels(points: number): number {
  return Math.round((points * 96) / 72);
}

/** Calls back with the name of each sheet that comes into the grid showing results of formulas it does not have. */
export function onValuesOnly(grid: Grid, listener: (sheet: string) => void): () => void {
  const heard = grid.api.addEvent(grid.api.Event.CommandExecuted, (event) => {
    const { id, params } = event as ICommandInfo<{ sheet?: Partial<IWorksheetData> }>;
    if (id !== 'sheet.mutation.insert-sheet') return;
    const { custom, name = '' } = params?.sheet ?? {};
    if (custom?.['valuesOnly'] === mark.valuesOnly) listener(name);
  });
  return () => {
    heard.dispose();
  };
}

/** The shades of a result sheet as rules that the grid keeps beside the sheet, so that they follow what cells say. */
function shadeRules({ shades = [] }: SheetModel): ViewRule[] {
  return shades.map(({ area, equals, style }): ViewRule => ({
    kind: 'cellIs',
    areas: [area],
    operator: 'equal',
    formulas: [`"${equals.replaceAll('"', '""')}"`],
    shade: {
      ...(style.fill !== undefined && { fill: style.fill }),
      ...(style.color !== undefined && { color: style.color }),
      ...(style.bold === true && { bold: true }),
    },
    stops: true,
  }));
}

/** Those of a sheet's rules that are shades of a result sheet. */
export function ruleShades(rules: readonly ViewRule[]): ShadeRule[] {
  return rules.flatMap(({ kind, areas, operator, formulas, shade }): ShadeRule[] => {
    const text = /^"((?:[^"]|"")*)"$/.exec(formulas[0] ?? '')?.[1];
    if (kind !== 'cellIs' || operator !== 'equal' || text === undefined) return [];
    const { fill, color, bold } = shade;
    const style = {
      ...(fill !== undefined && { fill }),
      ...(color !== undefined && { color }),
      ...(bold === true && { bold: true }),
    };
    return areas.map((area) => ({ area, equals: text.replaceAll('""', '"'), style }));
  });
}

/** A look as the grid stores it; sizes in points. */
function gridStyle(style: CellStyle): IStyleData {
  const { bold, italic, linked, size, color, fill, numberFormat, wrap, align, valign, underline } = style;
  return {
    ...(bold === true && { bl: yes }),
    ...(italic === true && { it: yes }),
    ...(linked === true && { ul: { s: yes } }),
    ...(size !== undefined && { fs: size }),
    ...(color !== undefined && { cl: { rgb: `#${color}` } }),
    ...(fill !== undefined && { bg: { rgb: `#${fill}` } }),
    ...(numberFormat !== undefined && numberFormat !== 'General' && { n: { pattern: numberFormat } }),
    ...(wrap === true && { tb: WrapStrategy.WRAP }),
    ...(align !== undefined && { ht: across[align] }),
    vt: valign === undefined ? VerticalAlign.BOTTOM : down[valign],
    ...(underline === true && { bd: { b: { s: BorderStyleTypes.THIN, cl: { rgb: '#5B6770' } } } }),
  };
}
