import { escapeCellText, hasLooseSpace } from '../xml/text.ts';

/** A cell holds this many UTF-16 units of text (common practice of spreadsheet programs, no source). */
export const longestText = 32_767;

/** Text no longer than a cell holds; a longer one ends in an ellipsis. */
export function fittedText(text: string): string {
  if (text.length <= longestText) return text;
  return `${text.slice(0, longestText - 1).replace(/[\uD800-\uDBFF]$/, '')}…`;
}

/**
 * Whether a spreadsheet program would take this text for a formula, a number or a date once someone edits the cell,
 * so that the cell must be marked as text (`quotePrefix`).
 */
export function needsQuote(text: string): boolean {
  return /^[\s]*[=+\-@'.\d]/.test(text);
}

/** Numbers that a cell cannot hold, as text: `∞`, `−∞`; not-a-number is an empty text. */
export function writable(value: number): number | string {
  if (Number.isFinite(value)) return value;
  return Number.isNaN(value) ? '' : value > 0 ? '∞' : '−∞';
}

/** A text as the content of a cell, opening tag not yet closed. */
export function inlineText(text: string): string {
  const space = hasLooseSpace(text) ? ' xml:space="preserve"' : '';
  return ` t="inlineStr"><is><t${space}>${escapeCellText(text)}</t></is></c>`;
}

/** A number in the shortest form that reads back as the same number, as the content of a cell. */
export function plainNumber(value: number): string {
  return `><v>${value}</v></c>`;
}

/** A truth value as the content of a cell. */
export function truth(value: boolean): string {
  return ` t="b"><v>${Number(value)}</v></c>`;
}

/** A formula with the result stored beside it, as the content of a cell. */
export function calculated(formula: string, value: number | string | boolean): string {
  if (typeof value === 'number') return `>${formula}<v>${value}</v></c>`;
  if (typeof value === 'boolean') return ` t="b">${formula}<v>${Number(value)}</v></c>`;
  return ` t="str">${formula}<v>${escapeCellText(value)}</v></c>`;
}
