import { CellValueType, type ICellData, type Nullable } from '@univerjs/core';
import { type Cell, ErrorCell } from '../../../cells/cell.ts';
import { kindOfCode, type NumberKind, shownNumber } from '../../formats/numberFormat.ts';
import { isErrorCode } from '../storedText.ts';

/** How a number of a file of plain text is written there: the grid calculates with the number, the audit reads the text. */
interface Written {
  readonly text: string;
  readonly number: number;
}

/**
 * Reads stored cells: dates (1900 date system) and percentages by their number formats, an empty text as an empty cell,
 * a number of a file of plain text as that file writes it.
 * `patternOf` gives the number format of a cell.
 */
export function cellReader(
  patternOf: (cell: ICellData) => string | undefined,
): (cell: Nullable<ICellData>) => Cell {
  const kinds = new Map<string, NumberKind>();
  const kindOf = (pattern: string): NumberKind => {
    const known = kinds.get(pattern);
    if (known !== undefined) return known;
    const kind = kindOfCode(pattern);
    kinds.set(pattern, kind);
    return kind;
  };
  return (cell) => {
    const value = cell ? cell.v : undefined;
    if (!cell || value === null || value === undefined || value === '') return richText(cell);
    const text = writtenText(cell);
    if (text !== undefined) return text;
    if (cell.t === CellValueType.BOOLEAN) return value === true || value === 1 || value === 'TRUE';
    if (cell.t === CellValueType.FORCE_STRING) return String(value);
    if (typeof value === 'boolean') return value;
    const number = typeof value === 'number' ? value : cell.t === CellValueType.NUMBER ? Number(value) : NaN;
    if (!Number.isNaN(number)) {
      const pattern = patternOf(cell);
      return shownNumber(number, pattern === undefined ? 'number' : kindOf(pattern), false);
    }
    const shown = String(value);
    return isErrorCode(shown) ? new ErrorCell(shown) : shown;
  };
}

/** The text of a cell that holds formatted text; the grid ends it with a line of its own. */
function richText(cell: Nullable<ICellData>): Cell {
  const text = (cell ? cell.p : undefined)?.body?.dataStream.replace(/\r?\n?$/, '').replaceAll('\r', '\n');
  return text === undefined || text === '' ? null : text;
}

/** What a cell keeps beside its number. */
export function keptAs(written: Written): NonNullable<ICellData['custom']> {
  return { written };
}

/** The text from which a cell's number came; `undefined` where it came from none or is another number by now. */
export function writtenText({ v, custom }: ICellData): string | undefined {
  const written = custom?.['written'] as Written | undefined;
  return written && written.number === v ? written.text : undefined;
}
