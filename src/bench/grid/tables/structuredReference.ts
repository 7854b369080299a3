/** A part of a table that a formula can name. */
export type TablePart = 'all' | 'data' | 'headers' | 'totals' | 'this row';

/** What a formula names of a table: some of its parts, its data where none is said; one column, or the first and last of several. */
export interface StructuredReference {
  readonly parts: readonly TablePart[];
  readonly columns: readonly string[];
}

const keywords: ReadonlyMap<string, TablePart> = new Map([
  ['#all', 'all'],
  ['#data', 'data'],
  ['#headers', 'headers'],
  ['#totals', 'totals'],
  ['#this row', 'this row'],
]);

/**
 * What stands in the brackets behind the name of a table, as in `[Measured]`, `[[#Totals],[Tag]:[Measured]]` or `[@Tag]`;
 * `undefined` where it is no such thing. Source: the grammar of structure references, [MS-OE376] section 3.2.3.1.1, for
 * ECMA-376 part 1, section 18.17.2.3; `@` for `[#This Row]` is how Excel shows it (from memory).
 */
export function structuredReference(brackets: string): StructuredReference | undefined {
  const inner = /^\[(.*)\]$/s.exec(brackets)?.[1]?.trim();
  if (inner === undefined) return undefined;
  if (!inner.startsWith('@')) return namedIn(inner);
  const columns = namedIn(inner.slice(1).trim());
  return columns?.parts.length === 0 ? { ...columns, parts: ['this row'] } : undefined;
}

function namedIn(inner: string): StructuredReference | undefined {
  if (inner === '') return { parts: [], columns: [] };
  // A name by itself needs no brackets of its own.
  const names = inner.startsWith('[') ? namesIn(inner) : [{ name: inner, before: '' }];
  if (!names) return undefined;
  const parts: TablePart[] = [];
  const columns: string[] = [];
  for (const { name, before } of names) {
    const part = keywords.get(name.toLowerCase().replace(/\s+/g, ' '));
    const fits = columns.length === 0 ? before !== ':' && !name.startsWith('#') : before === ':';
    if (part && columns.length === 0 && before !== ':') parts.push(part);
    else if (fits && columns.length < 2) columns.push(name.replace(/'(.)/gs, '$1'));
    else return undefined;
  }
  // The row a formula stands in goes with no other part.
  return parts.includes('this row') && parts.length > 1 ? undefined : { parts, columns };
}

/** Names in brackets of their own, each with the sign before it. */
function namesIn(inner: string): { name: string; before: string }[] | undefined {
  const one = /(?:([,:])\s*)?\[((?:'.|[^'[\]])*)\]\s*/gsy;
  const names = [];
  while (one.lastIndex < inner.length) {
    const [, before = '', name] = one.exec(inner) ?? [];
    if (name === undefined) return undefined;
    if ((before === '') !== (names.length === 0)) return undefined;
    names.push({ name: name.trim(), before });
  }
  return names;
}
