import { columnLetters, columnNumber } from '../../cells/address.ts';
import { formulaTokens, type FormulaToken } from './formulaTokens.ts';

const greatestRow = 1_048_576;
const greatestColumn = 16_384;
const address = /^(\$?)([A-Za-z]{1,3})(\$?)([1-9]\d*)$/;
const columnOnly = /^(\$?)([A-Za-z]{1,3})$/;
const rowOnly = /^(\$?)([1-9]\d*)$/;

/**
 * A formula as its copies read `down` rows below and `right` columns beside it (ECMA-376 part 1, section 18.3.1.40,
 * shared formulas): references without `$` move along, one that leaves the sheet becomes `#REF!`. Names, texts,
 * sheet names and columns of tables stay. The formula is taken apart once for all its copies.
 */
export function shiftedCopies(formula: string): (down: number, right: number) => string {
  const tokens = formulaTokens(formula);
  const moves = tokens.map((token, index) => moveOf(tokens, token, index));
  return (down, right) =>
    tokens.map(({ text }, index) => (moves[index] ? moves[index](down, right) : text)).join('');
}

type Move = (down: number, right: number) => string;

function moveOf(tokens: readonly FormulaToken[], token: FormulaToken, index: number): Move | undefined {
  if (token.kind !== 'word' && token.kind !== 'number') return undefined;
  const after = tokens[index + 1]?.text;
  if (after === '(' || after === '!' || tokens[index + 1]?.kind === 'bracket') return undefined;
  const whole = token.kind === 'word' ? address.exec(token.text) : null;
  if (whole !== null) {
    const [, fixColumn = '', letters = '', fixRow = '', digits = ''] = whole;
    if (Number.isNaN(columnNumber(letters)) || Number(digits) > greatestRow) return undefined;
    return (down, right) => {
      const column = movedColumn(fixColumn, letters, right);
      const row = movedRow(fixRow, digits, down);
      return column === undefined || row === undefined ? '#REF!' : column + row;
    };
  }
  const inRange = after === ':' || tokens[index - 1]?.text === ':';
  if (!inRange) return undefined;
  const [, fixColumn = '', letters] = columnOnly.exec(token.text) ?? [];
  if (letters !== undefined && !Number.isNaN(columnNumber(letters))) {
    return (_, right) => movedColumn(fixColumn, letters, right) ?? '#REF!';
  }
  const [, fixRow = '', digits] = rowOnly.exec(token.text) ?? [];
  return digits === undefined ? undefined : (down) => movedRow(fixRow, digits, down) ?? '#REF!';
}

function movedColumn(fixed: string, letters: string, right: number): string | undefined {
  if (fixed !== '') return fixed + letters;
  const column = columnNumber(letters) + right;
  return column >= 1 && column <= greatestColumn ? columnLetters(column) : undefined;
}

function movedRow(fixed: string, digits: string, down: number): string | undefined {
  if (fixed !== '') return fixed + digits;
  const row = Number(digits) + down;
  return row >= 1 && row <= greatestRow ? String(row) : undefined;
}
