import { parseUnit, type Unit } from '../../../../units/parse.ts';
import { parseDetection } from '../../../../units/detection.ts';
import { conceptsIn } from './lexicon.ts';
import { oneOf } from './wordList.ts';

/**
 * Spellings of units and of how a vibration is counted that are not English ones, each with the English one, in texts with
 * single spaces. From memory.
 */
const unitSpellings: readonly (readonly [pattern: RegExp, english: string])[] = [
  [/(v) ?(?:cc|dc|gs|c\.c\.)(?![\p{L}\p{N}])/giu, '$1'],
  [
    /(?<![\p{L}\p{N}])(?:spitze ?(?:[-–/] ?)?(?:zu ?(?:[-–/] ?)?)?spitze|s ?[-–/.] ?s\.?|ss)(?![\p{L}\p{N}])/giu,
    'p-p',
  ],
  [
    /(?<![\p{L}\p{N}])(?:cr[êe]te ?(?:[-–/] ?)?(?:[àa] ?(?:[-–/] ?)?)?cr[êe]te|c ?[-–/.] ?(?:[àa] ?[-–/.] ?)?c\.?|cc|c [àa] c)(?![\p{L}\p{N}])/giu,
    'p-p',
  ],
  [
    /(?<![\p{L}\p{N}])(?:pico ?(?:[-–/] ?)?(?:a ?(?:[-–/] ?)?)?pico|picco ?(?:[-–/] ?)?(?:a ?(?:[-–/] ?)?)?picco|pap|p ?\. ?a ?\. ?p\.?|p ?\. ?p\.?)(?![\p{L}\p{N}])/giu,
    'p-p',
  ],
  [
    /(?<![\p{L}\p{N}])(?:0 ?[-–/] ?s|null(?: ?[-–/] ?| )spitze|0 ?[-–/] ?spitze|0 ?[-–/] ?c|z[ée]ro(?: ?[-–/] ?| )cr[êe]te|0 ?[-–/] ?cr[êe]te|cero(?: ?[-–/] ?| )pico|0 ?[-–/] ?pico|zero(?: ?[-–/] ?| )pico|zero(?: ?[-–/] ?| )picco|0 ?[-–/] ?picco|o ?[-–/] ?s)(?![\p{L}\p{N}])/giu,
    '0-p',
  ],
  [
    /(?<![\p{L}\p{N}])(?:eff|effektiv|effektivwert|efficace|eficaz|efficace|rcm|valeur efficace)\.?(?![\p{L}\p{N}])/giu,
    'rms',
  ],
  [
    /(?<![\p{L}\p{N}])(?:mikrometer|micras?|micrones|micr[oô]n|microm[eè]tres?|micr[oó]metros?|micrometri?|micr[oô]metros?|mikron)(?![\p{L}\p{N}])/giu,
    'µm',
  ],
  [/(?<![\p{L}\p{N}])(?:mil[eé]simas?(?: de pulgada)?|milli[eè]mes? de pouce)(?![\p{L}\p{N}])/giu, 'mil'],
  [/(?<=\p{L}\s?)(?<![\p{L}\p{N}])(?:je|pro|por|par|per)(?![\p{L}\p{N}])/giu, 'per'],
  [/(?<![\p{L}\p{N}])(?:volt(?:ios|i)|voltaje)(?![\p{L}\p{N}])/giu, 'V'],
  [/(?<![\p{L}\p{N}])(?:u\/min|tr\/min|tpm|giri\/min|1\/min)(?![\p{L}\p{N}])/giu, 'rpm'],
  [
    /(?<![\p{L}\p{N}])(?:prozent|porcentaje|por ciento|pour\s?cent|por cento|per cento)(?![\p{L}\p{N}])/giu,
    '%',
  ],
];

/** A unit as a text states it: one of a quantity, or a percentage of the channel's full scale. */
export type StatedUnit =
  | { readonly text: string; readonly unit: Unit; readonly ofScale: false }
  | { readonly text: string; readonly unit: null; readonly ofScale: true };

/** Full scale in short where it stands behind a per cent sign alone: other words elsewhere. From memory. */
const isScaleInShort = oneOf({
  de: 'v. E. | v. MB',
  fr: 'EM | E.M. | de l’EM',
  es: 'EC',
  it: 'CS',
  pt: 'FM | da FM',
});

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
    return conceptsIn(rest).has('full scale') || isScaleInShort(rest)
      ? { text: bare, unit: null, ofScale: true }
      : undefined;
  }
  const unit = parseUnit(english);
  return unit && { text: bare, unit, ofScale: false };
}
