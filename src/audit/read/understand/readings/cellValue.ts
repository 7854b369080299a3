import { cellText, type Cell } from '../../../../cells/cell.ts';
import { readNumber } from '../../../../cells/number.ts';
import type { Sheet } from '../../../../cells/sheet.ts';
import { tokensOf } from '../vocabulary/lexicon.ts';
import { statedUnit, type StatedUnit } from '../vocabulary/statedUnit.ts';
import { doubtWords, blankMarks, signatureWords, spareWords, totalWords } from '../vocabulary/valueWords.ts';
import { oneOf, startsWithOneOf } from '../vocabulary/wordList.ts';

const isBlankWord = oneOf(blankMarks);

/** Whether the first words of a text are those of a row that sums a list up: `Total`, `Mean`. */
export const isTotal = startsWithOneOf(totalWords);

const saysWhoDid = oneOf(signatureWords);

/** Whether a text is a mark of a row kept for later: `Spare`. */
export const isSpare = startsWithOneOf(spareWords);

/** Why a number in a cell is none that can be used without a person. */
export type Doubt = 'about' | 'remark' | 'bound' | 'several' | 'comma';

/** What a cell says where a number is expected. */
export type CellValue =
  | { readonly is: 'nothing' }
  /** A word or sign that says that there is nothing. */
  | { readonly is: 'said blank'; readonly text: string }
  | {
      readonly is: 'number';
      readonly value: number;
      readonly unit: StatedUnit | null;
      readonly asText: boolean;
      readonly percent: boolean;
    }
  /** A number that only a person can take for one; `value` is `null` where it can be none. */
  | {
      readonly is: 'doubtful';
      readonly doubt: Doubt;
      readonly value: number | null;
      readonly unit: StatedUnit | null;
      readonly text: string;
    }
  | { readonly is: 'text'; readonly text: string }
  | { readonly is: 'error'; readonly text: string };

/** How texts of a sheet write numbers: a comma before decimals wherever it stands, or only where it can't be anything else. */
export interface NumberStyle {
  readonly plainText: Sheet['plainText'];
  readonly decimalComma: boolean;
}

const isDoubt = oneOf(doubtWords);
const leading = /^[+\-−–]?\s?\d+(?:[.,]\d+)?(?:e[+-]?\d+)?/iu;
const bound =
  /^(?:[<>≤≥]|&[lg]t;|max\.?\s|min\.?\s|more than|less than|over|under|unter|über|mehr als|weniger als|más de|menos de|plus de|moins de|mais de|più di|meno di)/iu;
const about = /^[~≈±]/u;
const several =
  /\d\s*(?:\/|–|—|\bto\b|\bor\b|\boder\b|\bbis\b|\bo\b|\bou\b|;|&|\bà\b)\s*[+\-−]?\d|\d\s+-\s+\d|\d-\d/u;

/** Reads a cell that should hold a number, with the unit in it. */
export function cellValue(cell: Cell, style: NumberStyle): CellValue {
  if (cell === null) return { is: 'nothing' };
  if (typeof cell === 'number')
    return { is: 'number', value: cell, unit: null, asText: false, percent: false };
  if (typeof cell !== 'string') {
    const read = readNumber(cell, style.plainText);
    if ('value' in read)
      return { is: 'number', value: read.value, unit: null, asText: false, percent: read.percent };
    const text = typeof cell === 'object' && 'code' in cell ? cell.code : cellText(cell);
    return typeof cell === 'object' && 'code' in cell ? { is: 'error', text } : { is: 'text', text };
  }
  const text = cell.trim();
  if (text === '') return { is: 'nothing' };
  const plain = number(text, style);
  if (plain) return { is: 'number', ...plain, unit: null };
  if (isMarkedBlank(text)) return { is: 'said blank', text };
  return written(text, style);
}

function number(
  text: string,
  style: NumberStyle,
): { value: number; asText: boolean; percent: boolean } | undefined {
  const read = readNumber(text, style.decimalComma ? { decimal: ',' } : style.plainText);
  if ('value' in read) return { ...read, asText: style.plainText === undefined };
  if (!style.decimalComma) return undefined;
  const point = readNumber(text, undefined);
  return 'value' in point && !text.includes(',') ? { ...point, asText: true } : undefined;
}

/** A text that holds a number among other things. */
function written(text: string, style: NumberStyle): CellValue {
  if (!/\d/u.test(text)) return { is: 'text', text };
  const doubtful = (doubt: Doubt, value: number | null, unit: StatedUnit | null = null): CellValue => ({
    is: 'doubtful',
    doubt,
    value,
    unit,
    text,
  });
  if (bound.test(text)) return doubtful('bound', null);
  if (about.test(text)) {
    const inner = cellValue(text.slice(1).trim(), style);
    return inner.is === 'number' ? doubtful('about', inner.value, inner.unit) : doubtful('about', null);
  }
  const word = /^(\p{L}+\.?)\s+(\S.*)$/u.exec(text);
  if (word && isDoubt(word[1] ?? '')) {
    const inner = cellValue((word[2] ?? '').trim(), style);
    return inner.is === 'number' ? doubtful('about', inner.value, inner.unit) : doubtful('about', null);
  }
  const [start] = leading.exec(text) ?? [];
  const rest = text.slice(start?.length).trim();
  if (start === undefined || /[\n\r\u2028\u2029]/u.test(rest)) return { is: 'text', text };
  const value = number(start.replace(/\s/u, ''), style);
  const unit = statedUnit(rest);
  if (value && unit) return { is: 'number', value: value.value, unit, asText: false, percent: false };
  if (several.test(text)) return doubtful('several', null);
  if (!value) return /^[+-]?\d{1,3},\d{3}\b/u.test(text) ? doubtful('comma', null) : { is: 'text', text };
  if (/^[\p{L}\p{N}]/u.test(rest) && !/^\S+\s/u.test(text)) return { is: 'text', text };
  const before = beforeRemark(rest);
  const inner = before ? statedUnit(before) : undefined;
  if (before === '' || inner) return doubtful('remark', value.value, inner ?? null);
  return tokensOf(rest).length > 0 ? doubtful('remark', value.value) : { is: 'text', text };
}

/** What stands before a remark in brackets at the end of a text; `undefined` where it ends in none. */
function beforeRemark(text: string): string | undefined {
  const opening = text.search(/[([]/u);
  const closes = text.endsWith(')') || text.endsWith(']');
  return opening >= 0 && closes && opening < text.length - 2 ? text.slice(0, opening).trimEnd() : undefined;
}

/** Whether a text says that there is nothing: a dash, `n/a`, `TBC`. */
export function isMarkedBlank(text: string): boolean {
  const bare = text.trim();
  if (bare.length > 40) return false;
  return /^[-–—_.?*/\\]+$/u.test(bare) || isBlankWord(bare);
}

/** Whether a text in the column of tags says who did something, as a line of signatures below a list begins: `Checked by: A. Moss`. */
export function isSignature(text: string): boolean {
  const colon = text.indexOf(':');
  return saysWhoDid(colon > 0 ? text.slice(0, colon) : text);
}
