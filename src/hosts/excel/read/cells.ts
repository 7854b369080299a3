import { type Cell, ErrorCell } from '../../../cells/cell.ts';
import { kindOfCode, type NumberKind, shownNumber } from '../../formats/numberFormat.ts';

/** What Excel says of some cells, row by row. */
export interface RawCells {
  readonly values: readonly (readonly (string | number | boolean | null)[])[];
  readonly types: readonly (readonly string[])[];
  readonly formats: readonly (readonly unknown[])[];
}

/** Asks for the cells of a range; `null` where Excel left them out, as it does without an error beyond 5 million. */
export function askForCells(range: Excel.Range): () => RawCells | null {
  range.load('values,valueTypes,numberFormat');
  return () => {
    const values = range.values as RawCells['values'] | null;
    const types = range.valueTypes as RawCells['types'] | null;
    const formats = range.numberFormat as RawCells['formats'] | null;
    return values === null || types === null || formats === null ? null : { values, types, formats };
  };
}

/** Reads what Excel says of cells: dates and percentages by their number formats, an empty text as an empty cell. */
export function cellReader(date1904: boolean): (raw: RawCells) => Cell[][] {
  const kinds = new Map<unknown, NumberKind>();
  const kindOf = (format: unknown): NumberKind => {
    const known = kinds.get(format);
    if (known !== undefined) return known;
    const kind = typeof format === 'string' ? kindOfCode(format) : 'number';
    kinds.set(format, kind);
    return kind;
  };
  return ({ values, types, formats }) =>
    values.map((row, at) =>
      row.map((value, column): Cell => {
        const type = types[at]?.[column];
        if (type === 'Empty' || value === '' || value === null) return null;
        if (type === 'Error') return new ErrorCell(String(value));
        if (typeof value === 'number') return shownNumber(value, kindOf(formats[at]?.[column]), date1904);
        return value;
      }),
    );
}
