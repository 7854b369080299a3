import { CellValueType, type ICellData } from '@univerjs/core';
import { readNumber } from '../../cells/number.ts';
import type { Sheet } from '../../cells/sheet.ts';
import { gridStyle } from '../open/gridStyle.ts';
import { percentStyle } from '../open/plainView.ts';
import { keptAs } from '../../hosts/grid/read/cell.ts';

/** Digits that a number keeps (IEEE 754, binary64). */
const mostDigits = 15;

/**
 * A cell for a text of a file of plain text that is nothing but a number: worksheet functions take the number (of `3 %`
 * 0.03, as everywhere in a spreadsheet), the audit still reads the text. `undefined` for all other texts, and for those
 * that a number would change: `0012`, `1E5` and numbers of more than 15 digits are as likely tags.
 */
export function plainNumber(text: string, plainText: NonNullable<Sheet['plainText']>): ICellData | undefined {
  const read = readNumber(text, plainText);
  const tagLike = /^\s*[+-]?0\d/.test(text) || /^[^.,]*e/i.test(text);
  if ('why' in read || tagLike || text.replace(/\D/g, '').length > mostDigits) return undefined;
  const number = read.percent ? read.value / 100 : read.value;
  return {
    v: number,
    t: CellValueType.NUMBER,
    custom: keptAs({ text, number }),
    // So that a saved copy says 3 % too and not 0.03.
    ...(read.percent && { s: gridStyle(percentStyle) }),
  };
}
