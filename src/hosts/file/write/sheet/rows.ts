import { columnLetters } from '../../../../cells/address.ts';
import type { ModelCell, ModelRow, SheetModel } from '../../../../sheets/model.ts';
import { fittedText, longestText, writable } from '../../../../sheets/cells.ts';
import type { RowFormula } from '../../../formats/rowFormula.ts';
import { calculated, inlineText, needsQuote, plainNumber, truth } from './values.ts';
import { escapeXml } from '../xml/text.ts';

/** How cells of a style are written. */
export interface CellLook {
  /** Style attribute of the cell, ` s="5"`. */
  readonly plain: string;
  /** The same for text that must be marked as text. */
  readonly quoted: string;
  /** Days to take off numbers: dates of the 1900 system in a workbook that counts from 1904. */
  readonly daysLess: number;
}

export interface RowContext {
  readonly sheet: SheetModel;
  /** The look of a style name; `''` is the workbook's default. */
  readonly looks: ReadonlyMap<string, CellLook>;
  readonly formulas: readonly RowFormula[];
  /** Told of each text that had to be cut, with the cell's address. */
  readonly onCut: (address: string) => void;
}

/** Rows and columns of a sheet in today's spreadsheet programs (common practice, no source). */
const greatestRow = 1_048_576;
const greatestColumn = 16_384;

/**
 * The markup of one row after the other. Throws an Error where the model contradicts itself: a style or formula that
 * is not defined, more or fewer rows than announced, or a cell beyond the last row or column of a sheet.
 */
export function* rowMarkup(context: RowContext): Generator<string> {
  const { sheet } = context;
  if (sheet.rowCount > greatestRow) {
    throw new Error(
      `sheet "${sheet.name}" has ${sheet.rowCount} rows, more than the ${greatestRow} a sheet holds`,
    );
  }
  const writeCell = cellWriter(context);
  let number = 0;
  for (const row of sheet.rows()) {
    number++;
    if (number > sheet.rowCount) break;
    yield oneRow(row, number, writeCell);
  }
  if (number !== sheet.rowCount) {
    throw new Error(
      `sheet "${sheet.name}" announced ${sheet.rowCount} rows and has ${number > sheet.rowCount ? 'more' : number}`,
    );
  }
}

type CellWriter = (cell: ModelCell, row: number, columnName: string) => string;

function oneRow(row: ModelRow, number: number, writeCell: CellWriter): string {
  const { cells, height } = row;
  if (cells.length > greatestColumn)
    throw new Error(`row ${number} has ${cells.length} cells, a sheet ${greatestColumn} columns`);
  let markup =
    height === undefined ? `<row r="${number}">` : `<row r="${number}" ht="${height}" customHeight="1">`;
  let column = 0;
  for (const cell of cells) {
    column++;
    if (cell) markup += writeCell(cell, number, lettersOf(column));
  }
  return `${markup}</row>`;
}

const letters: string[] = [''];

function lettersOf(column: number): string {
  return (letters[column] ??= columnLetters(column));
}

function cellWriter({ sheet, looks, formulas, onCut }: RowContext): CellWriter {
  const formulaMarkup = formulaWriter(sheet, formulas);
  return (cell, row, columnName) => {
    const address = `${columnName}${row}`;
    const look = looks.get(cell.style ?? '');
    if (!look) throw new Error(`sheet "${sheet.name}" has no style "${cell.style ?? ''}" (cell ${address})`);
    let { value } = cell;
    if (typeof value === 'number') value = writable(value - look.daysLess);
    if (typeof value === 'string' && value.length > longestText) {
      value = fittedText(value);
      onCut(address);
    }
    const start = `<c r="${address}"`;
    if (cell.formula !== undefined) {
      return start + look.plain + calculated(formulaMarkup(cell.formula, row, columnName), value ?? '');
    }
    if (value === null || value === '') return `${start}${look.plain}/>`;
    if (typeof value === 'number') return start + look.plain + plainNumber(value);
    if (typeof value === 'boolean') return start + look.plain + truth(value);
    return start + (needsQuote(value) ? look.quoted : look.plain) + inlineText(value);
  };
}

/**
 * Formulas down a column are stored once (ECMA-376 part 1, 18.3.1.40): the first cell carries the text and the range
 * down to the sheet's last row, the cells below only its number. Rows must come in order. Throws an Error for a
 * formula that is not defined.
 */
function formulaWriter(
  sheet: SheetModel,
  formulas: readonly RowFormula[],
): (index: number, row: number, columnName: string) => string {
  const followers = formulas.map(() => new Map<string, string>());
  let groups = 0;
  return (index, row, columnName) => {
    const formula = formulas[index];
    const columns = followers[index];
    if (!formula || !columns)
      throw new Error(`sheet "${sheet.name}" has no formula ${index} (cell ${columnName}${row})`);
    if (!formula.shareable) return `<f>${escapeXml(formula.at(row))}</f>`;
    const follower = columns.get(columnName);
    if (follower !== undefined) return follower;
    const number = groups++;
    columns.set(columnName, `<f t="shared" si="${number}"/>`);
    const range =
      row === sheet.rowCount ? `${columnName}${row}` : `${columnName}${row}:${columnName}${sheet.rowCount}`;
    return `<f t="shared" ref="${range}" si="${number}">${escapeXml(formula.at(row))}</f>`;
  };
}
