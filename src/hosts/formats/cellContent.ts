/** A cell holds this many UTF-16 units of text (common practice of spreadsheet programs, no source). */
export const longestText = 32_767;

/** Text no longer than a cell holds; a longer one ends in an ellipsis. */
export function fittedText(text: string): string {
  if (text.length <= longestText) return text;
  return `${text.slice(0, longestText - 1).replace(/[\uD800-\uDBFF]$/, '')}…`;
}

/** Numbers that a cell cannot hold, as text: `∞`, `−∞`; not-a-number is an empty text. */
export function writable(value: number): number | string {
  if (Number.isFinite(value)) return value;
  return Number.isNaN(value) ? '' : value > 0 ? '∞' : '−∞';
}
