import { parseUnit, type Unit } from '../../../units/parse.ts';
import type { ColumnSpec } from './columnSpec.ts';

/** Texts in which there is nothing to normalise. */
const plain = /^[\x20-\x7e]*$/u;

/** Header text reduced to what matching looks at: case, spaces, punctuation and accents do not count. */
export function headerKey(text: string): string {
  if (plain.test(text)) return text.toLowerCase().replace(/[^a-z0-9]/gu, '');
  return text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '');
}

export interface Header {
  /** The header as it stands in the sheet, on one line. */
  readonly text: string;
  /** The header without what stands in brackets. */
  readonly name: string;
  /** Key of the whole header without what stands in brackets. */
  readonly key: string;
  readonly unit?: Unit;
  /** The coverage factor of an uncertainty, where its brackets name one: `(%, k=3)`. */
  readonly coverage?: number;
  /** What stands in brackets and is no unit. */
  readonly remarks: readonly string[];
}

/** What the key of a column of units ends with, behind the name of the column that they are for. */
export const unitWord = /(units?|uom|engineeringunits?|eu)$/u;

const bracketed = /[([]([^()[\]]*(?:\([^()]*\)[^()[\]]*)*)[)\]]/gu;

/** A coverage factor as headers name it. */
const factor = /\bk\s*=\s*(\d+(?:\.\d+)?)/iu;

/**
 * Splits a header such as `Measured sensitivity [mV/(in/s)]` into its name and unit. The unit stands in round or square
 * brackets; `Alert, mil` is understood too when `isName` knows what stands before the unit.
 */
export function parseHeader(cell: string, isName: (key: string) => boolean): Header {
  const text = cell.replace(/\s+/gu, ' ').replace(/（/gu, '(').replace(/）/gu, ')').trim();
  const remarks: string[] = [];
  let unit: Unit | undefined;
  let coverage: number | undefined;
  const name = text.replace(bracketed, (_, inside: string) => {
    const named = factor.exec(inside);
    if (named) coverage ??= Number(named[1]);
    const rest = named ? withoutSpan(inside, named.index, named.index + named[0].length) : inside;
    const found = unit === undefined ? parseUnit(rest) : undefined;
    if (found) unit = found;
    else if (/[^\s,;]/u.test(rest)) remarks.push(rest.trim());
    return ' ';
  });
  const key = headerKey(name);
  const plain = name.replace(/\s+/gu, ' ').trim();
  if (coverage !== undefined) return { text, name: plain, key, remarks, coverage, ...(unit ? { unit } : {}) };
  if (unit) return { text, name: plain, key, unit, remarks };
  return trailingUnit(text, plain, remarks, isName) ?? { text, name: plain, key, remarks };
}

/** A text without a part of it and the signs that set the part off. */
function withoutSpan(text: string, from: number, to: number): string {
  const before = text.slice(0, from).trimEnd().replace(/[,;]$/u, '');
  const after = text.slice(to).trimStart().replace(/^[,;]/u, '');
  return `${before} ${after}`.trim();
}

/** Longest text that is looked at for a unit behind a name. */
const longestUnit = 64;

function trailingUnit(
  text: string,
  name: string,
  remarks: readonly string[],
  isName: (key: string) => boolean,
): Header | undefined {
  if (isName(headerKey(name))) return undefined;
  const words = name.trim().split(/[\s,;:]+/u);
  for (let cut = words.length - 1; cut > 0; cut--) {
    const behind = words.slice(cut).join(' ');
    if (behind.length > longestUnit) return undefined;
    const stem = words.slice(0, cut).join(' ');
    const key = headerKey(stem);
    const unit = isName(key) ? parseUnit(behind) : undefined;
    if (unit) return { text, name: stem, key, unit, remarks };
  }
  return undefined;
}

/** Keys under which a column is known: its standard header first, then the others. */
export function keysOf(spec: ColumnSpec): { standard: string; also: ReadonlySet<string> } {
  return { standard: headerKey(spec.name), also: new Set((spec.also ?? []).map(headerKey)) };
}

/** Whether what stands in brackets was meant as a unit, though it is none known here: `mil/month`, `um*10`. */
export function looksLikeUnit(remark: string): boolean {
  return /[/*·^%]/u.test(remark) && !/\s\S+\s/u.test(remark);
}
