import { parseUnit, type Unit } from '../../../../units/parse.ts';
import { parseDetection } from '../../../../units/detectionWords.ts';
import { conceptsIn } from './lexicon.ts';
import { unitSpellings } from './unitWords.ts';

/** A unit as a text states it: one of a quantity, or a percentage of the channel's full scale. */
export type StatedUnit =
  | { readonly text: string; readonly unit: Unit; readonly ofScale: false }
  | { readonly text: string; readonly unit: null; readonly ofScale: true };

/** Distinct texts kept; a hostile workbook must not fill the memory. */
const kept = 4000;
const known = new Map<string, StatedUnit | undefined>();
const longest = 64;
const percent = /^[[(]?\s*(?:%|pct|percent)\s*((?:\S.*?)??)[\])]?$/iu;

/** The unit that a text states in any of the languages known, brackets around it or not; `undefined` for any other text. */
export function statedUnit(text: string): StatedUnit | undefined {
  if (text.length > longest) return undefined;
  if (known.has(text)) return known.get(text);
  const found = read(text);
  if (known.size < kept) known.set(text, found);
  return found;
}

/** A text with its foreign words for units and detections replaced by English ones, and single spaces. */
export function inEnglishUnits(text: string): string {
  let english = text.replace(/\s+/gu, ' ');
  for (const [pattern, word] of unitSpellings) english = english.replace(pattern, word);
  return english;
}

function read(text: string): StatedUnit | undefined {
  const bare = text
    .trim()
    .replace(/^\[(.*)\]$/u, '$1')
    .replace(/^\((.*)\)$/u, '$1')
    .trim();
  if (bare === '' || /^\d|^\p{L}\d$/u.test(bare)) return undefined;
  const english = inEnglishUnits(bare);
  const rest = percent.exec(english)?.[1]?.trim();
  if (rest !== undefined && rest !== '' && parseDetection(rest) === undefined) {
    return conceptsIn(rest).has('full scale') ? { text: bare, unit: null, ofScale: true } : undefined;
  }
  const unit = parseUnit(english);
  return unit && { text: bare, unit, ofScale: false };
}
