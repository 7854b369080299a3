import { headerKey, keysOf } from '../../tables/header.ts';
import { columnsOf, type TableKind } from '../../tables/vocabulary.ts';
import { readWords, withoutTrailing, type Concepts } from './lexicon.ts';
import { statedUnit, type StatedUnit } from './statedUnit.ts';

/** A standard header or another way to write it, as the template and the help name them. */
export interface StandardName {
  readonly table: TableKind;
  readonly id: string;
  readonly exact: boolean;
}

/** What a text says where it stands as a header or label. */
export interface HeaderRead {
  /** On one line. */
  readonly text: string;
  /** Without its unit. */
  readonly name: string;
  readonly unit: StatedUnit | null;
  /** Coverage factor in its brackets, as in `(%, k=3)`. */
  readonly coverage: number | null;
  /** What stands in brackets and is no unit. */
  readonly remarks: readonly string[];
  readonly concepts: Concepts;
  /** Words that it has, and how many of them are known. */
  readonly words: number;
  readonly known: number;
  readonly standard: readonly StandardName[];
  readonly years: readonly number[];
}

const longest = 250;
const kept = 20_000;
const bracketed = /[([]([^()[\]]*(?:\([^()]*\)[^()[\]]*)*)[)\]]/gu;
const factor = /\bk\s*=\s*(\d+(?:[.,]\d+)?)[\s,;]*/iu;
const year = /(?<!\d)(?:19[89]\d|20\d\d)(?!\d)/gu;
/** Units of one letter and the like, which stand in texts as words too: they count in brackets alone. */
const word = /^(?:a|g|s|m|h|d|in|min|cm|wk|day|days|week|weeks|v)$/iu;

const names = standardNames();
const known = new Map<string, HeaderRead>();

/** Reads a text as a header: its unit, its words, and whether it is a standard header. */
export function readHeader(cell: string): HeaderRead {
  const before = known.get(cell);
  if (before) return before;
  const found = read(cell.slice(0, longest));
  if (known.size < kept) known.set(cell, found);
  return found;
}

function read(cell: string): HeaderRead {
  const text = cell.replace(/\s+/gu, ' ').replace(/（/gu, '(').replace(/）/gu, ')').trim();
  let unit = null as StatedUnit | null;
  let coverage: number | null = null;
  const remarks: string[] = [];
  const bare = text.replace(bracketed, (_, inside: string) => {
    const { rest, value } = withoutFactor(inside);
    coverage ??= value;
    const stated = unit === null ? statedUnit(rest) : undefined;
    if (stated) unit = stated;
    else if (/[^\s,;]/u.test(rest)) remarks.push(rest.trim());
    return ' ';
  });
  let name = bare.replace(/\s+/gu, ' ').trim();
  if (unit === null && names.get(headerKey(name)) === undefined) {
    const split = besideName(name);
    if (split) [name, unit] = split;
  }
  const spoken = remarks.length > 0 ? `${name} ${remarks.join(' ')}` : name;
  const { concepts, words, known: knownWords } = readWords(spoken.trim());
  const years = [...text.matchAll(year)].map(([digits]) => Number(digits));
  return {
    text,
    name,
    unit,
    coverage,
    remarks,
    concepts,
    words,
    known: knownWords,
    standard: names.get(headerKey(name)) ?? [],
    years,
  };
}

/** What stands in brackets without the coverage factor in it. */
function withoutFactor(inside: string): { rest: string; value: number | null } {
  const found = factor.exec(inside);
  if (!found) return { rest: inside, value: null };
  const before = withoutTrailing(inside.slice(0, found.index), /[\s,;]/u);
  const rest = before + inside.slice(found.index + found[0].length);
  return { rest, value: Number((found[1] ?? '').replace(',', '.')) };
}

/** Units of one letter that stand below a header in a row of units, where no probe or setpoint is called so. */
const ofUnitRows: ReadonlySet<string> = new Set(['V', 's']);

/** A part of a header below its name that is a unit of one letter and nothing else. */
export function readUnitPart(cell: string): HeaderRead | undefined {
  const text = cell.replace(/[[\]()\s]/gu, '');
  const unit = ofUnitRows.has(text) ? statedUnit(text) : undefined;
  return unit && { ...readHeader(cell), name: '', unit };
}

/** A unit written behind a name or before it, without brackets: `HH trip, mil pp`. */
function besideName(name: string): [name: string, unit: StatedUnit] | undefined {
  const whole = statedUnit(name);
  if (whole && !word.test(name)) return ['', whole];
  const words = name.split(/[\s,;:]+|\s[-–]\s/u).filter((part) => part !== '');
  for (let count = Math.min(5, words.length - 1); count > 0; count--) {
    for (const [text, rest] of [
      [words.slice(-count), words.slice(0, -count)],
      [words.slice(0, count), words.slice(count)],
    ] as const) {
      const [written, left] = [text.join(' '), rest.join(' ')];
      const unit =
        count === 1 && word.test(written) && !(/^v$/iu.test(written) && readWords(left).known > 0)
          ? undefined
          : statedUnit(written);
      if (unit && readWords(left).known > 0) return [left, unit];
    }
  }
  return undefined;
}

function standardNames(): ReadonlyMap<string, readonly StandardName[]> {
  const found = new Map<string, StandardName[]>();
  for (const table of ['channels', 'settings'] as const) {
    for (const [id, spec] of Object.entries(columnsOf(table))) {
      const { standard, also } = keysOf(spec);
      for (const [key, exact] of [
        [standard, true] as const,
        ...[...also].map((one) => [one, false] as const),
      ]) {
        found.set(key, [...(found.get(key) ?? []), { table, id, exact }]);
      }
    }
  }
  return found;
}
