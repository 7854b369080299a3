import type { ColumnMap } from '../audit/model/columnMap.ts';
import { asPart, type Steps } from '../audit/model/steps.ts';
import type { TableKind } from '../audit/read/tables/vocabulary.ts';
import type { TidyList, TidyChannel, TidyValue, TidyColumn } from '../audit/read/tidy/tidyList.ts';
import { tidyListOf } from '../audit/read/tidy/tidyListOf.ts';
import { understand } from '../audit/read/understand/understand.ts';
import type { Place } from '../audit/read/understand/blocks/block.ts';
import { cellAt, type Workbook } from '../cells/sheet.ts';
import { formulaList, type FormulaList } from './formulaList.ts';
import { footerOf, roomFor, leftOut } from './style/print.ts';
import { frameStyles } from './style/styles.ts';
import { tones } from './style/palette.ts';
import type { ModelRow, SheetModel, ModelCell, ModelValue } from './model.ts';
import { sheetNames, titleOf } from './titles.ts';
import { cellAddress } from '../cells/address.ts';
import { type Cell, cellText, DateCell, PercentCell } from '../cells/cell.ts';
import type { MeaningId } from '../audit/read/understand/meaning.ts';
import { capital } from '../audit/model/wording.ts';

/** One column of a tidy sheet: a meaning, the unit of each row of the one before it, or where a value comes from. */
interface SheetColumn {
  readonly is: 'value' | 'unit' | 'source';
  readonly id: MeaningId;
  readonly header: string;
  readonly width: number;
}

/** Days from 1899-12-30, which spreadsheets count from, to 1970-01-01. */
const epoch = 25_569;

/** The text of a cell of the user's own; empty where there is none. */
type TextAt = (place: Place) => string;

const titles = { channels: 'your list, channels', settings: 'your list, settings' } as const;

/** Rows above the first channel: title, two lines of advice, a blank one, headers. */
const above = 5;

/**
 * What is understood of a workbook, with what a person answered, as the two tables of the standard shape: one row a channel,
 * each cell a link to the cell of the user's own that holds it. Both begin with the mark of result sheets, so that an audit
 * of the workbook goes on reading the user's own lists. Goes step by step, so that a screen stays alive.
 */
export function* tidySheetsInSteps(workbook: Workbook, map: ColumnMap): Steps<number, readonly SheetModel[]> {
  const understanding = yield* asPart(understand(workbook, map), () => 0);
  const list = yield* asPart(tidyListOf(understanding, workbook.sheets), () => 1);
  return tidySheets(list, workbook);
}

/** The two tables of a list that was understood in a workbook. */
function tidySheets(list: TidyList, { sheets }: Workbook): readonly SheetModel[] {
  const byName = new Map(sheets.map((sheet) => [sheet.name, sheet]));
  const textAt = ({ sheet: name, row, column }: Place): string => {
    const sheet = byName.get(name);
    const cell = sheet ? cellAt(sheet, row, column) : null;
    return typeof cell === 'string' ? cell : '';
  };
  return (['channels', 'settings'] as const).map((kind) => tidySheet(kind, list, textAt));
}

function tidySheet(kind: TableKind, list: TidyList, textAt: TextAt): SheetModel {
  const columns = columnsFor(kind, list);
  const channels = list.channels.slice(0, roomFor(list.channels.length, above));
  const formulas = formulaList();
  const rows: ModelRow[] = channels.map((channel) => ({
    cells: cellsOf(channel, kind, columns, { formulas, textAt }),
  }));
  const note = leftOut(list.channels.length, channels.length);
  const head: readonly ModelRow[] = [
    { cells: [{ value: titleOf(titles[kind]), style: 'title' }] },
    { cells: [{ value: `${linked}${note}`, style: 'subtitle' }] },
    { cells: [{ value: toKeep, style: 'subtitle' }] },
    { cells: [] },
    { height: 48, cells: columns.map(({ header }) => ({ value: header, style: 'header' })) },
  ];
  return {
    name: sheetNames[titles[kind]],
    widths: columns.map(({ width }) => width),
    styles: {
      ...frameStyles,
      date: { numberFormat: 'yyyy-mm-dd', valign: 'top' },
      typed: { fill: tones.caution, valign: 'top' },
      typedDate: { fill: tones.caution, numberFormat: 'yyyy-mm-dd', valign: 'top' },
    },
    formulas: formulas.all,
    rowCount: head.length + rows.length,
    *rows() {
      yield* head;
      yield* rows;
    },
    freeze: { rows: above, columns: 1 },
    filter: { top: above, left: 1, bottom: above + rows.length, right: columns.length },
    print: { landscape: true, repeatRows: { from: above, to: above }, footer: footerOf() },
  };
}

const linked = 'Each cell is a link to a cell of your own list, which audits go on reading.';
const toKeep =
  'Shaded: taken from a text, another unit or a share; such a cell does not follow its source, named in the last column.';

/** The cells of a channel's row: links where a cell of the user's own holds just the value, else the value and where it is from. */
function cellsOf(
  channel: TidyChannel,
  kind: TableKind,
  columns: readonly SheetColumn[],
  { formulas, textAt }: { readonly formulas: FormulaList; readonly textAt: TextAt },
): readonly (ModelCell | undefined)[] {
  const notLinked: string[] = [];
  const cells = columns.map(({ is, id, header }): ModelCell | undefined => {
    const own = channel.values.get(id);
    if (is === 'unit') return own?.unit ? { value: own.unit.text, style: 'text' } : undefined;
    if (is === 'source') return undefined;
    if (own) return valueCell(own, header, notLinked, formulas);
    if (id === 'tag') return tagCell(channel, channel.at[kind], textAt, formulas);
    return id === 'machine' && channel.machine !== '' ? { value: channel.machine, style: 'text' } : undefined;
  });
  const source = notLinked.length > 0 ? notLinked.join('; ') : null;
  const last = source === null ? undefined : { value: source, style: 'text' };
  return columns.map((column, at) => (column.is === 'source' ? last : cells[at]));
}

function tagCell({ tag }: TidyChannel, place: Place, textAt: TextAt, formulas: FormulaList): ModelCell {
  const link = textAt(place) === tag ? linkTo(place) : null;
  return { value: tag, style: 'text', ...(link === null ? {} : { formula: formulas.place(link) }) };
}

function valueCell(
  { cell, place, asItStands }: TidyValue,
  header: string,
  notLinked: string[],
  formulas: FormulaList,
): ModelCell {
  const value = modelValue(cell);
  const isDate = cell instanceof DateCell;
  const link = asItStands ? linkTo(place) : null;
  if (link !== null) return { value, style: isDate ? 'date' : 'text', formula: formulas.place(link) };
  notLinked.push(`${header}: ${place.sheet}!${cellAddress(place.row, place.column)}`);
  return { value, style: isDate ? 'typedDate' : 'typed' };
}

/** The formula of a cell that shows another; `null` for a sheet whose name a formula's template can't hold. */
function linkTo({ sheet, row, column }: Place): string | null {
  if (/[{}]/u.test(sheet)) return null;
  return `'${sheet.replaceAll("'", "''")}'!${cellAddress(row, column)}`;
}

function modelValue(cell: Exclude<Cell, null>): ModelValue {
  if (cell instanceof DateCell) return cell.day + epoch;
  if (cell instanceof PercentCell) return cell.percent / 100;
  return typeof cell === 'object' ? cellText(cell) : cell;
}

/** The columns of one table: tag and machine, its own meanings, each with its unit in the header or beside it, and the sources. */
function columnsFor(kind: TableKind, list: TidyList): readonly SheetColumn[] {
  const own = list.columns.filter(
    ({ id, table }) => table === kind && id !== 'tag' && id !== 'machine' && isFilled(id, list),
  );
  const hasMachines = kind === 'channels' && list.channels.some(({ machine }) => machine !== '');
  return [
    value('tag', 'Tag', 18),
    ...(hasMachines ? [value('machine', 'Machine', 20)] : []),
    ...own.flatMap((column) => valueColumns(column, list)),
    { is: 'source', id: 'tag', header: 'Not linked', width: 40 },
  ];
}

function valueColumns({ id, name, holds }: TidyColumn, list: TidyList): SheetColumn[] {
  const width = holds === 'text' ? 18 : 14;
  const units = new Set(list.channels.flatMap(({ values }) => values.get(id)?.unit?.text ?? []));
  const [only] = units;
  if (only === undefined) return [value(id, capital(name), width)];
  if (units.size === 1) return [value(id, `${capital(name)} [${only}]`, width)];
  return [value(id, capital(name), width), { is: 'unit', id, header: 'Unit', width: 10 }];
}

function isFilled(id: MeaningId, { channels }: TidyList): boolean {
  return channels.some(({ values }) => values.has(id));
}

function value(id: MeaningId, header: string, width: number): SheetColumn {
  return { is: 'value', id, header, width };
}
