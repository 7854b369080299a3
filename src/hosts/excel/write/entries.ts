import { fittedText, longestText, writable } from '../../../sheets/cells.ts';
import type { ModelValue } from '../../../sheets/model.ts';

/** What is entered into a cell, as if typed in English; `null` leaves it empty. */
export type Entry = string | number | boolean | null;

/** Longer texts are no number, date or truth value whatever they say. */
const longestLiteral = 255;

/** A value as Excel takes it for exactly that value. Numbers that a cell can't hold become the texts `∞` and `−∞`. */
export function entryOf(value: ModelValue): Entry {
  const held = typeof value === 'number' ? writable(value) : value;
  if (typeof held !== 'string') return held;
  return held === '' ? null : textEntry(held);
}

/**
 * A text as Excel takes it for a text: it enters everything as if it were typed, so that `=1+1`, `1E5`, `3-4` or `TRUE`
 * would become something else. The apostrophe before it is not part of the cell's text. Longer than a cell holds, with
 * the apostrophe, ends in an ellipsis.
 */
function textEntry(text: string): string {
  if (text.length > longestLiteral && /^\p{L}/u.test(text)) return fittedText(text, longestText);
  return `'${fittedText(text, longestText - 1)}`;
}
