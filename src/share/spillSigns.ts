import { reference } from '../hosts/formats/reference.ts';
import { type FormulaToken, formulaOf, formulaTokens } from '../hosts/formats/formulaTokens.ts';
import { parseArea } from '../hosts/file/read/area.ts';
import { columnLetters } from '../cells/address.ts';
import type { Area } from '../cells/sheet.ts';

/**
 * A formula, as people type it, with the area itself in place of `B2#` wherever `filledFrom` knows what is filled from
 * there; `sheet` is its own. Once the formula in B2 is gone, or is an array formula of the old kind, `B2#` means nothing.
 */
export function withoutSpillSigns(
  formula: string,
  sheet: string,
  filledFrom: (sheet: string, row: number, column: number) => Area | undefined,
): string {
  if (!formula.includes('#')) return formula;
  const tokens = formulaTokens(formula);
  const changed = tokens.map((token, index): FormulaToken => {
    if (token.text === '#' && areaAt(tokens, index - 1, sheet, filledFrom))
      return { kind: 'other', text: '' };
    const area = tokens[index + 1]?.text === '#' ? areaAt(tokens, index, sheet, filledFrom) : undefined;
    if (!area) return token;
    const absolute = token.text.includes('$');
    return { kind: 'word', text: absolute ? fixed(area) : reference(area) };
  });
  return formulaOf(changed);
}

function areaAt(
  tokens: readonly FormulaToken[],
  index: number,
  own: string,
  filledFrom: (sheet: string, row: number, column: number) => Area | undefined,
): Area | undefined {
  const token = tokens[index];
  const cell = token?.kind === 'word' ? parseArea(token.text.replaceAll('$', '')) : undefined;
  if (!cell) return undefined;
  const named = tokens[index - 1]?.text === '!' ? tokens[index - 2] : undefined;
  const sheet = named?.kind === 'sheet' ? named.text.slice(1, -1).replaceAll("''", "'") : named?.text;
  return filledFrom(sheet ?? own, cell.top, cell.left);
}

function fixed({ top, left, bottom, right }: Area): string {
  return `$${columnLetters(left)}$${top}:$${columnLetters(right)}$${bottom}`;
}
