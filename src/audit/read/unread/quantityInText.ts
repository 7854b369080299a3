import { isBlank, type Cell } from '../../../cells/cell.ts';
import { readNumber } from '../../../cells/number.ts';
import type { Sheet } from '../../../cells/sheet.ts';
import { parseUnit, type Unit } from '../../../units/parse.ts';

/** Longer texts are sentences. */
const longestQuantity = 40;

const numberAndUnit = /^[-+\u2212]?\d[\d.,]*\s*([^\d.,\s].*)$/u;

/** Whether a cell says a number, be it as a text or with its unit behind it. */
export function saysNumber(cell: Cell, plainText: Sheet['plainText']): boolean {
  if (isBlank(cell) || cell === null) return false;
  return 'value' in readNumber(cell, plainText) || unitInText(cell) !== undefined;
}

/** The unit of a text that is a number with its unit and nothing else, as `160 mV/mil`. */
export function unitInText(cell: Cell): Unit | undefined {
  if (typeof cell !== 'string') return undefined;
  const text = cell.trim();
  if (text.length > longestQuantity) return undefined;
  const unit = numberAndUnit.exec(text)?.[1];
  return unit === undefined ? undefined : parseUnit(unit);
}
