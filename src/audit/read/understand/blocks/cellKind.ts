import { isBlank, type Cell } from '../../../../cells/cell.ts';
import { readHeader, type HeaderRead } from '../vocabulary/headerText.ts';
import { flagWords } from '../vocabulary/valueWords.ts';
import { statedUnit } from '../vocabulary/statedUnit.ts';
import { wordsOf, type Concept } from '../vocabulary/wordList.ts';

const digits = /^[\s<>~≈≤≥±+\-−–]*\d[\d.,' ]*(?:e[+-]?\d+\s*|[^\S ]\s*)?%?$/iu;
/** A number in front of something else. */
const numberFirst = /^[\s<>~≈≤≥±+\-−–]*\d[\d.,]*/u;
/** Longest unit behind a number. */
const longestUnit = 20;

/** Whether a text is written as a number: `7,94`, `-9.8`, `~160`, `−9.8`. */
export function isNumberText(text: string): boolean {
  return mayBeNumber(text) && digits.test(text);
}

/** Whether the first sign of a text can be that of a number. */
function mayBeNumber(text: string): boolean {
  const first = text.charCodeAt(0);
  return first < 64 || signs.has(text.charAt(0));
}

const signs: ReadonlySet<string> = new Set('~≈≤≥±−–');

/** Whether a text is a number with its unit and nothing else: `7,87 mV/µm`. */
export function isQuantityText(text: string): boolean {
  if (!mayBeNumber(text)) return false;
  const written = numberFirst.exec(text)?.[0];
  const unit = written === undefined ? '' : text.slice(written.length).trim();
  return (unit.length > 1 || unit === 'V') && unit.length <= longestUnit && statedUnit(unit) !== undefined;
}

/** Whether a cell is a number or a date, or a text written as a number. */
export function isAmount(cell: Cell): boolean {
  if (cell === null || typeof cell === 'boolean') return false;
  return typeof cell === 'string' ? isNumberText(cell) : true;
}

/** Whether a cell holds a year, as a header of readings does. */
export function isYear(cell: Cell): boolean {
  const year = typeof cell === 'string' && /^\s*\d{4}[\s.:]*$/u.test(cell) ? parseInt(cell, 10) : cell;
  return typeof year === 'number' && Number.isInteger(year) && year >= 1980 && year <= 2099;
}

/** Longest text that can be a label; what is longer is prose. */
const longestLabel = 70;
/** Quantities of which a label names one: a text with several is a sentence. */
const hard: ReadonlySet<Concept> = new Set<Concept>(['sensitivity', 'alert', 'gap voltage', 'full scale']);
const flags: ReadonlySet<string> = new Set(Object.values(flagWords).flatMap(wordsOf));
const empty: ReadonlySet<Concept> = new Set<Concept>(['setpoint', 'other']);

/** A text that says something of what it names: `Alarm, trip: mil`. */
const isNote = /;|:\s*[^\s([]/u;

/** Whether what stands behind the colon of one name is its unit and nothing else: `Sensitivity : mV/mil`. */
function isNameWithUnit(text: string): boolean {
  const colon = text.indexOf(':');
  return colon > 0 && !/[,;/]/u.test(text.slice(0, colon)) && statedUnit(text.slice(colon + 1)) !== undefined;
}

/** A text read as a label, where it can be one: known words or a unit, and no sentence. */
export function labelOf(cell: Cell): HeaderRead | undefined {
  if (typeof cell !== 'string' || cell.length > longestLabel || isBlank(cell) || isNumberText(cell))
    return undefined;
  if (cell.length < 6 && flags.has(cell.trim().toLowerCase())) return undefined;
  const read = readHeader(cell);
  if (read.standard.length > 0) return read;
  if (isNote.test(cell) && !isNameWithUnit(cell)) return undefined;
  const concepts = [...read.concepts.keys()];
  if (concepts.filter((concept) => hard.has(concept)).length > 1 && read.words > 4) return undefined;
  if (read.unit !== null && (read.words <= 6 || concepts.length > 0)) return read;
  if (read.words - read.known > 3 || !concepts.some((concept) => !empty.has(concept))) return undefined;
  return read.known * 2 >= read.words ? read : undefined;
}
