import { escapeCellText, hasLooseSpace } from '../xml/text.ts';

/**
 * Whether a spreadsheet program would take this text for a formula, a number or a date once someone edits the cell,
 * so that the cell must be marked as text (`quotePrefix`).
 */
export function needsQuote(text: string): boolean {
  return /^[\s]*[=+\-@'.\d]/.test(text);
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
