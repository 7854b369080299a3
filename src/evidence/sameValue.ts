import { type Cell, cellText } from '../cells/cell.ts';
import { canonicalText, plainNumber } from '../audit/evidence/canonical.ts';
import { negligible, storedValue, textCounted } from '../sheets/evidence/resultsFingerprint.ts';
import type { ModelValue } from '../sheets/model.ts';

/** Part of a number by which a program that calculates anew may differ. */
const relative = 1e-9;

/**
 * Whether a cell holds what a result sheet was written with: numbers to nine significant digits, texts exactly but for
 * how their line breaks are stored and what no cell can hold.
 */
export function sameValue(cell: Cell, value: ModelValue): boolean {
  const wanted = storedValue(value);
  if (wanted === null || wanted === '')
    return cell === null || (typeof cell === 'string' && cell.trim() === '');
  if (typeof wanted === 'number') {
    const number = plainNumber(cell);
    if (number === undefined) return false;
    const apart = Math.abs(number - wanted);
    return apart <= relative * Math.max(Math.abs(number), Math.abs(wanted)) || apart <= negligible;
  }
  if (typeof wanted === 'string') {
    if (typeof cell !== 'string') return wanted.trim() === '' && cell === null;
    return cell === wanted || counted(cell) === counted(wanted);
  }
  return cell === wanted;
}

function counted(text: string): string {
  return canonicalText(text).slice(0, textCounted);
}

/** A value of a model as a person would quote it. */
export function valueText(value: ModelValue): string {
  return quoted(storedValue(value));
}

/** A cell as a person would quote it, cut to a line. */
export function quoted(cell: Cell): string {
  return cut(textOf(cell));
}

/** Characters of what two texts have in common that are shown before they part. */
const lead = 20;

/** A cell and the value that it should hold, cut so that the place where their texts part is seen. */
export function quotedApart(
  cell: Cell,
  value: ModelValue,
): { readonly stands: string; readonly should: string } {
  const [one, other] = [textOf(cell), textOf(storedValue(value))];
  let same = 0;
  while (same < one.length && one[same] === other[same]) same++;
  const from = same > 2 * lead ? same - lead : 0;
  const [stands, should] = [one, other].map((text) => cut(from > 0 ? `…${text.slice(from)}` : text));
  return { stands: stands ?? '', should: should ?? '' };
}

function textOf(cell: Cell): string {
  return cell === null ? '' : typeof cell === 'boolean' ? String(cell).toUpperCase() : cellText(cell);
}

function cut(text: string): string {
  return text.length > 120 ? `${text.slice(0, 119)}…` : text;
}
