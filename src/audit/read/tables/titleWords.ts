import { headerKey } from './header.ts';
import { tagWords } from './tagKey.ts';
import type { Sheet } from '../../../cells/sheet.ts';

/** First words of cell A1 of every sheet that an audit writes. */
export const resultSheetMark = 'Tripdrift audit';

/** Rows above the headers of a record in which its title may stand. */
export const titleReach = 4;
/** Longest text of a title that is looked at. */
export const longestTitle = 80;

const tagKeys = new Set(['tag', ...tagWords].map(headerKey));
const named = /^\s*(?:tag(?: no\.?| number)?)\s*[:#]\s*(\S.*)$/iu;
const labelled = /^\s*(?:tag(?: no\.?| number)?|probe|channel)\s*(?:[:#-]\s*)?(\S.*)$/iu;

/** The tag in `Tag: P-101X`: what stands behind is the tag, known or not. */
export function namedTag(text: string): string | undefined {
  return named.exec(text)?.[1]?.trim();
}

/** What stands behind the word in `Probe P-101X`: the tag, if it is one that is known. */
export function labelledTag(text: string): string | undefined {
  return labelled.exec(text)?.[1]?.trim();
}

/** Whether a text is a word for a tag, beside which the tag stands. */
export function isTagWord(text: string): boolean {
  return tagKeys.has(headerKey(text));
}

/** Whether a text is the word beside which a probe's tag stands, if it is one that is known. */
export function isProbeWord(text: string): boolean {
  return headerKey(text) === 'probe';
}

/** Whether a sheet is the result of an earlier audit, and so no input of this one. */
export function isResultSheet(sheet: Sheet): boolean {
  const first = sheet.rows[0]?.[0];
  return typeof first === 'string' && first.startsWith(resultSheetMark);
}
