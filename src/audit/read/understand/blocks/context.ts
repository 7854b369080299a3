import { cellText, isBlank } from '../../../../cells/cell.ts';
import { cellAt, type Sheet } from '../../../../cells/sheet.ts';
import { readHeader } from '../vocabulary/headerText.ts';
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
  /** Texts at the top of its sheet, above all blocks. */
  readonly ofSheet: readonly ContextText[];
}

/** Rows above a block that can hold its titles. */
const reach = 8;

/** The texts that belong to each block. */
export function contextOf(block: Block, blocks: readonly Block[]): BlockContext {
  const { sheet } = block;
  const onSheet = blocks.filter((other) => other.sheet === sheet && other.lies !== 'forms');
  const top = topOf(block);
  const first = Math.min(...onSheet.map(topOf), top);
  const titles: ContextText[] = [];
  const left = block.lies === 'rows' ? Math.min(...block.fields.map(({ at }) => at)) : 1;
  const right = block.lies === 'rows' ? Math.max(...block.fields.map(({ at }) => at)) : 16_384;
  const beside = onSheet.filter((other) => other !== block && topOf(other) === top);
  const from = Math.max(0, ...beside.filter((other) => leftOf(other) < left).map((other) => leftOf(other)));
  for (let row = top - 1; row >= Math.max(1, top - reach); row--) {
    const found = textsIn(
      sheet,
      row,
      beside.length > 0 ? Math.max(from === 0 ? 1 : left - 1, 1) : 1,
      beside.length > 0 ? right : 16_384,
    );
    if (found === undefined) break;
    titles.push(...found);
  }
  const ofSheet: ContextText[] = [];
  for (let row = 1; row < first; row++) ofSheet.push(...(textsIn(sheet, row, 1, 16_384) ?? []));
  return { titles, ofSheet };
}

function leftOf(block: Block): number {
  return block.lies === 'rows' ? Math.min(...block.fields.map(({ at }) => at)) : block.header[0];
}

function topOf(block: Block): number {
  if (block.lies === 'rows') return block.header[0];
  if (block.lies === 'columns') return Math.min(...block.fields.map(({ at }) => at));
  return block.header[0];
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
  const behind = /^([^:]{1,40}):\s*(\S.*)$/u.exec(text);
  if (behind?.[2] && readHeader(behind[1] ?? '').known > 0) return behind[2].trim();
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
    ? text.slice(0, text.length - value.length).replace(/[:\s]+$/u, '')
    : text;
}
