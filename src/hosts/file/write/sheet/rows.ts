import { cellAddress, columnLetters } from '../../../../cells/address.ts';
import type { ModelCell, ModelRow, SheetModel } from '../../../../sheets/model.ts';
import { fittedText, longestText, writable } from '../../../../sheets/cells.ts';
import type { RowFormula } from '../../../formats/rowFormula.ts';
import { type ByteStream, utf8 } from './stream.ts';
import { type CellText, cellTexts, textEnd } from './values.ts';
import { escapeXml } from '../xml/text.ts';

/** How cells of a style are written. */
export interface CellStyling {
  /** End of the cell's address and its style, `" s="5"`. */
  readonly plain: Uint8Array;
  /** The same for text that must be marked as text. */
  readonly quoted: Uint8Array;
  /** Days to take off numbers: dates of the 1900 system in a workbook that counts from 1904. */
  readonly daysLess: number;
}

export interface RowContext {
  readonly sheet: SheetModel;
  /** The look of a style name; `''` is the workbook's default. */
  readonly styles: ReadonlyMap<string, CellStyling>;
  readonly formulas: readonly RowFormula[];
  /** Told of each text that had to be cut, with the cell's address. */
  readonly onCut: (address: string) => void;
}

/** Rows and columns of a sheet in today's spreadsheet programs (common practice, no source). */
const greatestRow = 1_048_576;
const greatestColumn = 16_384;

/**
 * Writes the markup of one row after the other; `onRow` is told of each. Throws an Error where the model contradicts itself:
 * a style or formula that is not defined, more or fewer rows than announced, or a cell beyond the last row or column of a
 * sheet.
 */
export function writeRows(out: ByteStream, context: RowContext, onRow: () => void): void {
  const { sheet } = context;
  if (sheet.rowCount > greatestRow) {
    throw new Error(
      `sheet "${sheet.name}" has ${sheet.rowCount} rows, more than the ${greatestRow} a sheet holds`,
    );
  }
  const writeCell = cellWriter(out, context);
  let number = 0;
  for (const row of sheet.rows()) {
    number++;
    if (number > sheet.rowCount) break;
    writeRow(out, row, number, writeCell);
    onRow();
  }
  if (number !== sheet.rowCount) {
    throw new Error(
      `sheet "${sheet.name}" announced ${sheet.rowCount} rows and has ${number > sheet.rowCount ? 'more' : number}`,
    );
  }
}

/** Writes a cell; `digits` are its row, made once for all cells of the row. */
type CellWriter = (cell: ModelCell, row: number, digits: Uint8Array, column: number) => void;

function writeRow(out: ByteStream, row: ModelRow, number: number, writeCell: CellWriter): void {
  const { cells, height } = row;
  if (cells.length > greatestColumn)
    throw new Error(`row ${number} has ${cells.length} cells, a sheet ${greatestColumn} columns`);
  const digits = utf8(String(number));
  out.text(
    height === undefined ? `<row r="${number}">` : `<row r="${number}" ht="${height}" customHeight="1">`,
  );
  let column = 0;
  for (const cell of cells) {
    column++;
    if (cell) writeCell(cell, number, digits, column);
  }
  out.write(markup.rowEnd);
}

const starts: Uint8Array[] = [];

/** What a cell begins with, up to its row. */
function startOf(column: number): Uint8Array {
  return (starts[column] ??= utf8(`<c r="${columnLetters(column)}`));
}

const markup = {
  rowEnd: utf8('</row>'),
  empty: utf8('/>'),
  number: utf8('><v>'),
  valueEnd: utf8('</v></c>'),
  true: utf8(' t="b"><v>1</v></c>'),
  false: utf8(' t="b"><v>0</v></c>'),
  calculated: { number: utf8('>'), boolean: utf8(' t="b">'), string: utf8(' t="str">') },
  result: utf8('<v>'),
} as const;

function cellWriter(out: ByteStream, { sheet, styles: looks, formulas, onCut }: RowContext): CellWriter {
  const formulaMarkup = formulaWriter(sheet, formulas);
  const textOf = cellTexts();
  return (cell, row, digits, column) => {
    const look = looks.get(cell.style ?? '');
    if (!look) {
      const address = cellAddress(row, column);
      throw new Error(`sheet "${sheet.name}" has no style "${cell.style ?? ''}" (cell ${address})`);
    }
    let { value } = cell;
    if (typeof value === 'number') value = writable(value - look.daysLess);
    if (typeof value === 'string' && value.length > longestText) {
      value = fittedText(value);
      onCut(cellAddress(row, column));
    }
    out.write(startOf(column));
    out.write(digits);
    if (cell.formula !== undefined) {
      value ??= '';
      out.write(look.plain);
      out.write(markup.calculated[typeof value as 'number']);
      out.write(formulaMarkup(cell.formula, row, column));
      out.write(markup.result);
      if (typeof value === 'string') writeContent(out, textOf(value));
      else out.number(Number(value));
      out.write(markup.valueEnd);
    } else if (typeof value === 'number') {
      out.write(look.plain);
      out.write(markup.number);
      out.number(value);
      out.write(markup.valueEnd);
    } else if (value === null || value === '') {
      out.write(look.plain);
      out.write(markup.empty);
    } else if (typeof value === 'boolean') {
      out.write(look.plain);
      out.write(value ? markup.true : markup.false);
    } else {
      const text = textOf(value);
      out.write(text.needsQuote ? look.quoted : look.plain);
      out.write(text.start);
      writeContent(out, text);
      out.write(textEnd);
    }
  };
}

function writeContent(out: ByteStream, { content }: CellText): void {
  if (typeof content === 'string') out.text(content);
  else out.write(content);
}

/**
 * Formulas down a column are stored once (ECMA-376 part 1, 18.3.1.40): the first cell carries the text and the range
 * down to the sheet's last row, the cells below only its number. Rows must come in order. Throws an Error for a
 * formula that is not defined.
 */
function formulaWriter(
  sheet: SheetModel,
  formulas: readonly RowFormula[],
): (index: number, row: number, column: number) => Uint8Array {
  /** What a cell below the first one of its column carries, by column. */
  const followers = formulas.map((): (Uint8Array | undefined)[] => []);
  let groups = 0;
  return (index, row, column) => {
    const formula = formulas[index];
    const columns = followers[index];
    if (!formula || !columns)
      throw new Error(`sheet "${sheet.name}" has no formula ${index} (cell ${columnLetters(column)}${row})`);
    if (!formula.shareable) return utf8(`<f>${escapeXml(formula.at(row))}</f>`);
    const follower = columns[column];
    if (follower !== undefined) return follower;
    const number = groups++;
    columns[column] = utf8(`<f t="shared" si="${number}"/>`);
    const letters = columnLetters(column);
    const range =
      row === sheet.rowCount ? `${letters}${row}` : `${letters}${row}:${letters}${sheet.rowCount}`;
    return utf8(`<f t="shared" ref="${range}" si="${number}">${escapeXml(formula.at(row))}</f>`);
  };
}
