import { columnLetters, columnNumber } from '../../../../cells/address.ts';
import { type FormulaToken, formulaTokens } from '../../../formats/formulaTokens.ts';
import { lastColumn, lastRow } from '../../read/area.ts';
import { movedSpan, type Moves, type SheetMove } from './axis.ts';

const corner = /^(\$?)([A-Za-z]{1,3})?(\$?)([1-9]\d*)?$/;
const gone = '#REF!';

/**
 * A stored formula whose references lead to where their cells are afterwards, `#REF!` where those are gone. Those without a
 * sheet mean `own`. References across several sheets (`A:C!B2`) and into other workbooks stay.
 */
export function movedFormula(formula: string, own: string, moves: Moves): string {
  const tokens = formulaTokens(formula);
  let result = '';
  for (let index = 0; index < tokens.length;) {
    const length = referenceLength(tokens, index);
    const words = tokens.slice(index, index + Math.max(1, length));
    const text = words.map((token) => token.text).join('');
    const sheet = length === 0 ? undefined : sheetOf(tokens, index, own);
    const move = sheet === undefined ? undefined : moves.get(sheet.toLowerCase());
    result += move ? movedReference(text, move) : text;
    index += words.length;
  }
  return result;
}

/** Number of tokens of the reference that begins at `index`: `A1`, `A1:B2`, `A:B` or `1:2`; 0 where none does. */
function referenceLength(tokens: readonly FormulaToken[], index: number): number {
  const [first, colon, second] = tokens.slice(index, index + 3);
  if (!first || !isCorner(first)) return 0;
  const [, , column, , row] = corner.exec(first.text) ?? [];
  if (colon?.text === ':' && second && isCorner(second) && isPlain(tokens[index + 3])) {
    const [, , otherColumn, , otherRow] = corner.exec(second.text) ?? [];
    const alike = (column === undefined) === (otherColumn === undefined);
    if (alike && (row === undefined) === (otherRow === undefined)) return 3;
  }
  return column !== undefined && row !== undefined && isPlain(colon) ? 1 : 0;
}

/** What stands behind a word makes it a function, a sheet or a table. */
function isPlain(next: FormulaToken | undefined): boolean {
  return next === undefined || (next.text !== '(' && next.text !== '!' && next.kind !== 'bracket');
}

function isCorner({ kind, text }: FormulaToken): boolean {
  if (kind !== 'word' && kind !== 'number') return false;
  const [, , column, , row] = corner.exec(text) ?? [];
  if (column === undefined && row === undefined) return false;
  return (column === undefined || columnNumber(column) <= lastColumn) && Number(row ?? 1) <= lastRow;
}

/** The sheet that a reference at `index` leads to; `undefined` where it is none of this workbook alone. */
function sheetOf(tokens: readonly FormulaToken[], index: number, own: string): string | undefined {
  if (tokens[index - 1]?.text !== '!') return own;
  const [before, sheet] = [tokens[index - 3], tokens[index - 2]];
  if (before?.text === ':' || before?.kind === 'bracket') return undefined;
  return sheet?.kind === 'sheet' ? sheet.text.slice(1, -1).replaceAll("''", "'") : sheet?.text;
}

function movedReference(reference: string, { rows, columns }: SheetMove): string {
  const [first = '', second = first] = reference.split(':');
  const [, columnFixed = '', column, rowFixed = '', row] = corner.exec(first) ?? [];
  const [, otherColumnFixed = '', otherColumn, otherRowFixed = '', otherRow] = corner.exec(second) ?? [];
  // `$1` has its sign where a column's would stand.
  const fixed = column === undefined ? columnFixed || rowFixed : rowFixed;
  const otherFixed = otherColumn === undefined ? otherColumnFixed || otherRowFixed : otherRowFixed;
  const down = spanOf(row, otherRow, Number, rows, lastRow);
  const across = spanOf(column, otherColumn, columnNumber, columns, lastColumn);
  if (!down || !across) return gone;
  const named = (sign: string, place: number | undefined): string =>
    place === undefined ? '' : sign + columnLetters(place);
  const numbered = (sign: string, place: number | undefined): string =>
    place === undefined ? '' : sign + String(place);
  const from = named(columnFixed, across[0]) + numbered(fixed, down[0]);
  if (!reference.includes(':')) return from;
  return `${from}:${named(otherColumnFixed, across[1])}${numbered(otherFixed, down[1])}`;
}

type Span = readonly [number | undefined, number | undefined];

/** Both ends of a run afterwards, in the order in which they were written; `undefined` where it is gone. */
function spanOf(
  first: string | undefined,
  second: string | undefined,
  numberOf: (text: string) => number,
  axis: SheetMove['rows'],
  edge: number,
): Span | undefined {
  if (first === undefined || second === undefined) return [undefined, undefined];
  const [one, other] = [numberOf(first), numberOf(second)];
  const span = movedSpan(axis, Math.min(one, other), Math.max(one, other), edge);
  if (!span) return undefined;
  return one <= other ? span : [span[1], span[0]];
}
