import { escapeCellText, hasLooseSpace } from '../xml/text.ts';
import { utf8 } from './stream.ts';

/**
 * Whether a spreadsheet program would take this text for a formula, a number or a date once someone edits the cell,
 * so that the cell must be marked as text (`quotePrefix`).
 */
function needsQuote(text: string): boolean {
  return /^[\s]*[=+\-@'.\d]/.test(text);
}

/** A text as the content of a cell, opening tag not yet closed. */
export function inlineText(text: string): string {
  const space = hasLooseSpace(text) ? ' xml:space="preserve"' : '';
  return ` t="inlineStr"><is><t${space}>${escapeCellText(text)}</t></is></c>`;
}

/** A text that is written into cells. */
export interface CellText {
  readonly needsQuote: boolean;
  /** Opens it in a cell that it stands in by itself, opening tag not yet closed. */
  readonly start: Uint8Array;
  /** Its characters: bytes of one that is kept. */
  readonly content: Uint8Array | string;
}

/** Closes such a cell. */
export const textEnd = utf8('</t></is></c>');

const textStart = utf8(' t="inlineStr"><is><t>');
const looseStart = utf8(' t="inlineStr"><is><t xml:space="preserve">');

/** Longest text that is kept, and how many are: words, names and tags, which stand in many cells. */
const longestKept = 40;
const mostKept = 10_000;

/** Texts ready to be written into cells; those that come again and again are made ready once. */
export function cellTexts(): (text: string) => CellText {
  const kept = new Map<string, CellText>();
  return (text) => {
    const known = kept.get(text);
    if (known) return known;
    const escaped = escapeCellText(text);
    const isKept = text.length <= longestKept;
    const made = {
      needsQuote: needsQuote(text),
      start: hasLooseSpace(text) ? looseStart : textStart,
      content: isKept ? utf8(escaped) : escaped,
    };
    if (!isKept) return made;
    if (kept.size === mostKept) kept.clear();
    kept.set(text, made);
    return made;
  };
}
