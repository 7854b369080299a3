import type { ModelCell, ModelValue } from './model.ts';

/** A cell holds this many UTF-16 units of text (common practice of spreadsheet programs, no source). */
export const longestText = 32_767;

/** A cell of a style; an empty one where there is no value. */
export function cell(value: ModelValue, style: string): ModelCell | undefined {
  return value === null || value === '' ? undefined : { value, style };
}

/** A number that a cell can hold; `null` where it is not given or not finite. */
export function finite(value: number | null): number | null {
  return value !== null && Number.isFinite(value) ? value : null;
}

/** Text of at most `longest` UTF-16 units, by default what a cell holds; a longer one ends in an ellipsis. */
export function fittedText(text: string, longest = longestText): string {
  if (text.length <= longest) return text;
  return `${text.slice(0, longest - 1).replace(/[\uD800-\uDBFF]$/, '')}…`;
}

/** Numbers that a cell cannot hold, as text: `∞`, `−∞`; not-a-number is an empty text. */
export function writable(value: number): number | string {
  if (Number.isFinite(value)) return value;
  return Number.isNaN(value) ? '' : value > 0 ? '∞' : '−∞';
}
