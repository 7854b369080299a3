import { columnLetters } from '../../../cells/address.ts';
import { longestText, writable } from '../../../sheets/cellContent.ts';
import { reference } from '../../formats/reference.ts';
import { storedFormula } from '../../formats/storedFormula.ts';
import { FileRefused, oneLine } from '../zip/refused.ts';
import { inlineText } from '../write/sheet/values.ts';
import { escapeCellText, escapeXml } from '../write/xml/text.ts';
import type { EditedCell } from './types.ts';

/** A formula holds this many characters (common practice of spreadsheet programs, no source). */
const longestFormula = 8_192;

/** Attributes a rewritten cell element begins with, each with a space before it; the address is added. */
export type KeptAttributes = string;

/** The markup of an edited formula. Throws FileRefused for one that is longer than a cell holds. */
export function formulaMarkup(edit: EditedCell, sheet: string): string {
  if (edit.formula === undefined) return '';
  const stored = storedFormula(edit.formula);
  if (stored.length > longestFormula) throw tooLong(edit, sheet, 'formula', longestFormula);
  const array = edit.array === undefined ? '' : ` t="array" ref="${reference(edit.array)}"`;
  return `<f${array}>${escapeXml(stored)}</f>`;
}

/**
 * A cell element with its value; `formula` is the markup of its formula or empty. Text is stored in the cell itself and
 * is never a formula. Throws FileRefused for a text that is longer than a cell holds.
 */
export function cellMarkup(edit: EditedCell, kept: KeptAttributes, formula: string, sheet: string): string {
  const start = `<c r="${columnLetters(edit.column)}${edit.row}"${kept}`;
  const value = typeof edit.value === 'number' ? writable(edit.value) : edit.value;
  if (value === null || (value === '' && formula === '')) {
    return formula === '' ? `${start}/>` : `${start}>${formula}</c>`;
  }
  if (typeof value === 'number') return `${start}>${formula}<v>${value}</v></c>`;
  if (typeof value === 'boolean') return `${start} t="b">${formula}<v>${Number(value)}</v></c>`;
  if (edit.error === true) return `${start} t="e">${formula}<v>${escapeXml(value)}</v></c>`;
  if (value.length > longestText) throw tooLong(edit, sheet, 'text', longestText);
  if (formula === '') return start + inlineText(value);
  return `${start} t="str">${formula}<v>${escapeCellText(value)}</v></c>`;
}

function tooLong({ row, column }: EditedCell, sheet: string, what: string, most: number): FileRefused {
  return new FileRefused(
    `Sheet “${oneLine(sheet)}”, cell ${columnLetters(column)}${row}: the ${what} is longer than the ${most.toLocaleString('en')} characters a cell holds. Shorten it.`,
  );
}
