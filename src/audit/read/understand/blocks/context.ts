import { cellText, isBlank } from '../../../../cells/cell.ts';
import { cellAt, type Sheet } from '../../../../cells/sheet.ts';
import { readHeader } from '../vocabulary/headerText.ts';
import { withoutTrailing } from '../vocabulary/lexicon.ts';
import type { Block, Place } from './block.ts';
import { isAmount, labelOf } from './cellKind.ts';

/** A text around a block, with the value beside it where it is a label. */
export interface ContextText {
  readonly place: Place;
  readonly text: string;
  /** What stands beside it or behind its colon, where it is a label. */
  readonly value: string | null;
}

/** What stands around a block and belongs to it. */
export interface BlockContext {
  /** Texts above it up to what is another block's, nearest first. */
  readonly titles: readonly ContextText[];
  /** Texts at the top of its sheet, above its blocks: those of its own columns and those of all. */
  readonly ofSheet: readonly ContextText[];
  /** Other blocks stand beside it, so that a text at the top of the sheet may be theirs. */
  readonly hasBeside: boolean;
}

/** Rows above a block that can hold its titles. */
const reach = 8;
/** Longest name in front of a colon and what it names. */
const longestName = 40;

/** The cells of a block, as far as texts around it have to be told from them. */
interface Extent {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

/** The texts that belong to each block. */
export function contextOf(block: Block, blocks: readonly Block[]): BlockContext {
  const { sheet } = block;
  const own = extentOf(block);
  const others = blocks
    .filter((other) => other !== block && other.sheet === sheet && other.lies !== 'forms')
    .map(extentOf);
  const beside = others.filter(
    ({ top, bottom, left, right }) =>
      top <= own.bottom && bottom >= own.top - 1 && (right < own.left || left > own.right),
  );
  const from = Math.max(0, ...beside.filter(({ right }) => right < own.left).map(({ right }) => right)) + 1;
  const to = Math.min(16_385, ...beside.filter(({ left }) => left > own.right).map(({ left }) => left)) - 1;
  const titles: ContextText[] = [];
  for (let row = own.top - 1; row >= Math.max(1, own.top - reach); row--) {
    const found = isRecordOf(others, sheet, row) ? undefined : textsIn(sheet, row, from, to);
    if (found === undefined) break;
    titles.push(...found);
  }
  return { titles, ofSheet: ofSheet(sheet, [own, ...others]), hasBeside: beside.length > 0 };
}

/** Whether a row stands in another block and holds an amount. */
function isRecordOf(others: readonly Extent[], sheet: Sheet, row: number): boolean {
  return (
    others.some(({ top, bottom }) => row >= top && row <= bottom) &&
    (sheet.rows[row - 1] ?? []).some((cell) => cell !== null && isAmount(cell))
  );
}

/** The texts above the highest blocks of a sheet, outside all of them. */
function ofSheet(sheet: Sheet, all: readonly Extent[]): ContextText[] {
  const highest = all.filter(
    (one) =>
      !all.some((other) => other.bottom < one.top && other.left <= one.right && other.right >= one.left),
  );
  const bottom = Math.max(...highest.map(({ top }) => top));
  const found: ContextText[] = [];
  for (let row = 1; row < bottom; row++) {
    const taken = all.filter(({ top, bottom: last }) => row >= top && row <= last);
    const texts = taken.length === 0 ? textsIn(sheet, row, 1, 16_384) : undefined;
    if (texts) found.push(...texts);
    else
      for (const { left, right } of gapsBetween(taken))
        found.push(...(textsIn(sheet, row, left, right) ?? []));
  }
  return found;
}

/** The columns of a row that are of none of some blocks. */
function gapsBetween(taken: readonly Extent[]): { left: number; right: number }[] {
  const gaps: { left: number; right: number }[] = [];
  let left = 1;
  for (const one of taken.toSorted((a, b) => a.left - b.left)) {
    if (one.left > left) gaps.push({ left, right: one.left - 1 });
    left = Math.max(left, one.right + 1);
  }
  return [...gaps, { left, right: 16_384 }];
}

function extentOf({ lies, header, fields, span }: Block): Extent {
  const ats = fields.map(({ at }) => at);
  const [least, greatest] = [Math.min(...ats), Math.max(...ats)];
  if (lies === 'rows') return { top: header[0], bottom: span[1], left: least, right: greatest };
  if (lies === 'columns') return { top: least, bottom: greatest, left: header[0], right: span[1] };
  return { top: header[0], bottom: header[1], left: 1, right: 16_384 };
}

/** The texts of a row of titles; `undefined` where the row is one of records or headers. */
function textsIn(sheet: Sheet, row: number, left: number, right: number): ContextText[] | undefined {
  const cells = sheet.rows[row - 1] ?? [];
  const found: ContextText[] = [];
  let amounts = 0;
  let filled = 0;
  for (let column = left; column <= Math.min(right, cells.length); column++) {
    const cell = cells[column - 1] ?? null;
    if (isBlank(cell)) continue;
    filled++;
    if (isAmount(cell)) amounts++;
    if (typeof cell !== 'string') continue;
    const text = cell.replace(/\s+/gu, ' ').trim();
    found.push({
      place: { sheet: sheet.name, row, column },
      text,
      value: valueBeside(sheet, row, column, text),
    });
  }
  return filled >= 3 && amounts >= 2 ? undefined : found;
}

function valueBeside(sheet: Sheet, row: number, column: number, text: string): string | null {
  const colon = text.indexOf(':');
  const behind = text.slice(colon + 1).trim();
  if (colon > 0 && colon <= longestName && behind !== '' && readHeader(text.slice(0, colon)).known > 0)
    return behind;
  if (!labelOf(text)) return null;
  for (let at = column + 1; at <= column + 3; at++) {
    const cell = cellAt(sheet, row, at);
    if (!isBlank(cell)) return cellText(cell);
  }
  return null;
}

/** The label in front of a value: the part before a colon. */
export function labelText({ text, value }: ContextText): string {
  return value !== null && text.endsWith(value)
    ? withoutTrailing(text.slice(0, text.length - value.length), /[:\s]/u)
    : text;
}
