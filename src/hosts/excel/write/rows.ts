import { cellAddress } from '../../../cells/address.ts';
import type { LinkTarget, ModelCell, ModelRow, SheetModel } from '../../../sheets/model.ts';
import { quotedName } from '../../formats/reference.ts';
import type { RowFormula } from '../../formats/rowFormula.ts';
import { daysTo1904 } from '../../formats/dates.ts';
import { type Entry, entryOf } from './entries.ts';
import type { PreparedStyle } from './styles.ts';

/** A row ready to be entered, from column A on. */
export interface EntryRow {
  readonly number: number;
  readonly entries: readonly Entry[];
  readonly styles: readonly PreparedStyle[];
  /** The number format of each cell, where one must be set: also after a formula, since Excel gives those a format of its own choice. */
  readonly numberFormats: readonly (string | undefined)[];
  readonly height: number | undefined;
  /** Cells that lead elsewhere, by their columns from 1, and the references of the cells to which they lead. */
  readonly links: readonly { readonly column: number; readonly reference: string }[];
  /** About how many bytes of a request it takes. */
  readonly bytes: number;
}

export interface RowContext {
  readonly sheet: SheetModel;
  readonly styles: ReadonlyMap<string, PreparedStyle>;
  readonly formulas: readonly RowFormula[];
  /** Name of the sheet to which a link leads; `undefined` where there is none. */
  readonly nameOf: (target: LinkTarget) => string | undefined;
  /** The workbook counts days from 1904; models count from 1900. */
  readonly date1904: boolean;
}

/** Rows and columns of a sheet in today's Excel (common practice, no source). */
const greatestRow = 1_048_576;
const greatestColumn = 16_384;

/**
 * The rows of a model, one after the other. Throws an Error where the model contradicts itself: a style or formula that is
 * not defined, more or fewer rows than announced, or a cell beyond the last row or column of a sheet.
 */
export function* entryRows(context: RowContext): Generator<EntryRow> {
  const { sheet } = context;
  let number = 0;
  let linked = 0;
  for (const row of sheet.rows()) {
    number++;
    if (number > sheet.rowCount || number > greatestRow || row.cells.length > greatestColumn) break;
    const links = linked < mostLinks ? linksOf(row, context) : [];
    linked += links.length;
    yield entryRow(row, number, links, context);
  }
  if (number !== sheet.rowCount || number > greatestRow) {
    throw new Error(
      `sheet "${sheet.name}" announced ${sheet.rowCount} rows and ends, or no longer fits a sheet, at row ${number}`,
    );
  }
}

/** Each link is a call of its own, so a long sheet has them in its first rows alone. */
const mostLinks = 3_000;

/** About how many bytes of a request a link takes. */
const bytesOfLink = 400;

function linksOf({ links = [] }: ModelRow, { nameOf }: RowContext): EntryRow['links'] {
  return links.flatMap(({ column, to }) => {
    const name = nameOf(to);
    return name === undefined ? [] : [{ column, reference: `${quotedName(name)}!${to.column}${to.row}` }];
  });
}

function entryRow(
  { cells, height }: ModelRow,
  number: number,
  links: EntryRow['links'],
  context: RowContext,
): EntryRow {
  const entries: Entry[] = [];
  const styles: PreparedStyle[] = [];
  const numberFormats: (string | undefined)[] = [];
  let bytes = links.length * bytesOfLink;
  cells.forEach((cell, index) => {
    const style = context.styles.get(cell?.style ?? '');
    if (!style) throw contradiction(context, number, index, `style "${cell?.style ?? ''}"`);
    const entry = cell === undefined ? null : cellEntry(cell, style, number, index, context);
    const format = style.numberFormat ?? (cell?.formula === undefined ? undefined : 'General');
    entries.push(entry);
    styles.push(style);
    numberFormats.push(format);
    bytes += bytesOf(entry) + bytesOf(format ?? null);
  });
  return { number, entries, styles, numberFormats, height, links, bytes };
}

function cellEntry(
  cell: ModelCell,
  style: PreparedStyle,
  row: number,
  index: number,
  context: RowContext,
): Entry {
  if (cell.formula !== undefined) {
    const formula = context.formulas[cell.formula];
    if (!formula) throw contradiction(context, row, index, `formula ${cell.formula}`);
    return `=${formula.at(row)}`;
  }
  const { value } = cell;
  const isDate = typeof value === 'number' && style.isDate && context.date1904;
  return entryOf(isDate ? value - daysTo1904 : value);
}

function contradiction({ sheet }: RowContext, row: number, index: number, what: string): Error {
  return new Error(`sheet "${sheet.name}" has no ${what} (cell ${cellAddress(row, index + 1)})`);
}

/** Bytes of a value in a request, its quotes and comma included, rather too many than too few. */
function bytesOf(entry: Entry): number {
  if (typeof entry !== 'string') return String(entry).length + 1;
  // eslint-disable-next-line no-control-regex -- all of ASCII is meant
  return /^[\x00-\x7F]*$/.test(entry) ? entry.length + 5 : entry.length * 3 + 5;
}
