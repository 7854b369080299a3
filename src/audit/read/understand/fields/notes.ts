import { cellText, isBlank } from '../../../../cells/cell.ts';
import type { Sheet } from '../../../../cells/sheet.ts';
import type { ContextText } from '../blocks/context.ts';
import type { Place } from '../blocks/block.ts';
import type { Field } from './field.ts';
import { conceptsIn, tokensOf } from '../vocabulary/lexicon.ts';
import { inEnglishUnits, statedUnit, type StatedUnit } from '../vocabulary/statedUnit.ts';
import type { Concept } from '../vocabulary/wordList.ts';

/** A unit that a sentence states, for the quantity named before it, or for all of its kind. */
export interface NotedUnit {
  readonly stated: StatedUnit;
  readonly of: readonly Concept[];
  /** The names before it, as headers are compared. */
  readonly names: readonly string[];
  /** Sheets that the sentence or its row names; all where it names none. */
  readonly sheets: readonly string[];
  readonly place: Place;
}

const spoken: ReadonlySet<string> = new Set(['displacement', 'velocity', 'acceleration', 'voltage']);
/** What a sentence can say a unit for: quantities, and what tells two of one quantity apart. */
const told: ReadonlySet<Concept> = new Set<Concept>([
  'sensitivity',
  'alert',
  'danger',
  'full scale',
  'gap voltage',
  'setpoint',
  'reading',
  'measured',
  'configured',
  'as found',
  'as left',
]);
/** Words that are units by their letters only. */
const word = /^(?:in|m|a|s|g|d|h|min|cm|v|inch|ms)$/iu;
const longest = 300;
const longestAbbreviation = 6;

/** The parts of a text between full stops, semicolons and brackets; the stop of an abbreviated word, as in `Sens. set`, ends none. */
function sentencesOf(text: string): string[] {
  const parts = text.split(/;\s+|\s[-–]\s|\n|[()]/u);
  return parts.flatMap((part) => {
    const sentences: string[] = [];
    for (const piece of part.split(/\.\s+/u)) {
      const last = sentences.at(-1);
      if (last !== undefined && isAbbreviated(last)) sentences[sentences.length - 1] = `${last}. ${piece}`;
      else sentences.push(piece);
    }
    return sentences;
  });
}

/** Whether a text ends in the beginning of a longer word: short, known, and no unit. */
function isAbbreviated(text: string): boolean {
  const end = text.split(/\s/u).at(-1) ?? '';
  return end.length <= longestAbbreviation && conceptsIn(end).size > 0 && statedUnit(end) === undefined;
}

/** The units that a text around a table states: `Sensitivities in mV/µm; alert, danger: mil peak to peak`. */
export function unitsIn(text: string, place: Place, sheets: readonly string[]): NotedUnit[] {
  if (text.length > longest) return [];
  const found: NotedUnit[] = [];
  for (const sentence of sentencesOf(text)) {
    let names: string[] = [];
    for (const clause of sentence.split(/,\s+/u)) {
      const read = unitsOfClause(clause);
      if (read.length === 0) {
        names.push(clause);
        continue;
      }
      for (const { stated, rest } of read) {
        const spoken = [...names, ...rest.split(/\s[/&+]\s/u)].map((name) => tokensOf(name).join(' '));
        const concepts = new Set([...names, rest].flatMap((name) => [...conceptsIn(name).keys()]));
        found.push({
          stated,
          of: [...concepts].filter((concept) => told.has(concept)),
          names: spoken.filter((name) => name !== ''),
          sheets,
          place,
        });
      }
      names = [];
    }
  }
  return found;
}

/** The units in a part of a sentence, each with the words beside it. */
function unitsOfClause(clause: string): { readonly stated: StatedUnit; readonly rest: string }[] {
  const found: { stated: StatedUnit; rest: string }[] = [];
  const written = clause
    .split(/(?<=[:=])/u)
    .map((part) => part.split(/[\s:=]+/u).filter((one) => one !== ''));
  const words = written.flat();
  const behindColon = new Set(written.map((_, at) => written.slice(0, at).flat().length));
  for (let from = 0; from < words.length; from++) {
    if (/^[\d.,]+$/u.test(words[from - 1] ?? '') && !behindColon.has(from)) continue;
    for (let to = Math.min(words.length, from + 5); to > from; to--) {
      const text = words.slice(from, to).join(' ');
      const stated =
        to - from === 1 && word.test(text) && !isVolt(text) ? undefined : statedUnit(inEnglishUnits(text));
      if (
        !stated ||
        (stated.unit && !spoken.has(stated.unit.dimension) && !stated.unit.dimension.includes('/'))
      )
        continue;
      if (stated.unit?.dimension === 'percent') continue;
      found.push({ stated, rest: [...words.slice(0, from), ...words.slice(to)].join(' ') });
      from = to;
      break;
    }
  }
  return found;
}

function isVolt(text: string): boolean {
  return text === 'V';
}

/** A field with the units that texts state for its header by name: `Output: V/mm` above a column `Output`. */
export function withNoted(
  field: Field,
  noted: readonly { readonly unit: NotedUnit; readonly scope: 'title' | 'note' | 'legend' }[],
): Field {
  if (field.units.length > 0 || field.values.cellUnits.size > 0) return field;
  const headers = new Set(field.parts.map(({ name }) => tokensOf(name).join(' ')));
  for (const scope of ['title', 'note', 'legend'] as const) {
    const own = noted.filter(
      (one) => one.scope === scope && one.unit.names.some((name) => headers.has(name)),
    );
    const [first] = own;
    if (!first) continue;
    if (own.some(({ unit }) => unit.stated.unit?.factor !== first.unit.stated.unit?.factor)) return field;
    const { stated, place } = first.unit;
    return { ...field, units: [{ stated, scope, place, named: true }] };
  }
  return bySensitivityNote(field, noted);
}

/** A column with a weak word for a sensitivity below a text that says the unit of the sensitivities, as one beside such units. */
function bySensitivityNote(field: Field, noted: readonly { readonly unit: NotedUnit }[]): Field {
  if (field.concepts.get('sensitivity')?.strength !== 'weak' || field.values.least <= 0) return field;
  const said = noted.find(
    ({ unit: { of, stated } }) => of.includes('sensitivity') && stated.unit?.dimension.includes('/'),
  );
  return said?.unit.stated.unit ? { ...field, besideOf: said.unit.stated.unit.dimension } : field;
}

/** The units stated in the texts above a block. */
export function notedAbove(texts: readonly ContextText[]): NotedUnit[] {
  return texts.flatMap(({ text, value, place }) =>
    unitsIn(value !== null && !text.includes(value) ? `${text} ${value}` : text, place, []),
  );
}

/** The units stated on a sheet without lists: for the sheets that its rows name, or for all. */
export function notedInLegend(sheet: Sheet, names: readonly string[]): NotedUnit[] {
  const found: NotedUnit[] = [];
  for (const [index, cells] of sheet.rows.entries()) {
    const texts = cells
      .map((cell, at) => ({ column: at + 1, text: isBlank(cell) ? '' : cellText(cell) }))
      .filter(({ text }) => text !== '');
    const named = names.filter(
      (name) => name !== sheet.name && texts.some(({ text }) => namesSheet(text, name)),
    );
    const label = texts[0]?.text ?? '';
    for (const { column, text } of texts) {
      const place = { sheet: sheet.name, row: index + 1, column };
      const isName = named.some((name) => name.toLowerCase() === label.toLowerCase());
      const whole = text === label || isName ? text : `${label} ${text}`;
      found.push(...unitsIn(whole, place, named));
    }
  }
  return found;
}

function namesSheet(text: string, name: string): boolean {
  const at = text.toLowerCase().indexOf(name.toLowerCase());
  if (at < 0 || name.length < 3) return text.trim().toLowerCase() === name.toLowerCase();
  const [before, after] = [text[at - 1] ?? ' ', text[at + name.length] ?? ' '];
  return !/[\p{L}\p{N}]/u.test(before) && !/[\p{L}\p{N}]/u.test(after);
}
