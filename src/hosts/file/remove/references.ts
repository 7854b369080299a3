import { decodeXml } from '../write/xml/encoding.ts';
import { openWorkbook } from '../write/package/openWorkbook.ts';
import { attribute, child, childrenNamed } from '../write/xml/outline.ts';
import { escapeXml } from '../write/xml/text.ts';
import { tagAttributes } from '../write/xml/tagAttributes.ts';
import { reached } from './reached.ts';
import { readTables } from '../read/tables.ts';
import { readWorkbookPart } from '../read/workbookPart.ts';
import { partKey } from '../zip/archive.ts';
import { defaultLimits } from '../zip/limits.ts';

/** Something of the user's that leads to a sheet which is to go. */
export interface Reference {
  /** Where it stands, for people: `'Notes'!B3`, `name Limits`, `part xl/charts/chart1.xml`. */
  readonly where: string;
  /** The sheet to which it leads. */
  readonly sheet: string;
}

/** Formulas, names, charts and pivot tables outside these sheets that refer to one of them or to a table on one of them. */
export function referencesTo(original: Uint8Array, names: readonly string[]): readonly Reference[] {
  const { archive, workbook } = openWorkbook(original, false);
  const { sheets } = readWorkbookPart(archive, defaultLimits);
  const going = sheets.filter(({ name }) => names.includes(name));
  const marks = going.flatMap(({ name, part }) => {
    const tables = readTables(archive, part, defaultLimits).map((table) => table.name);
    return marksOf(name, tables).map((mark) => ({ mark, sheet: name }));
  });
  const found: Reference[] = [];
  const lost = reached(
    archive,
    going.map(({ part }) => part.name),
    (source) => partKey(source) !== partKey(workbook.entry.name),
  );
  const sheetOf = new Map(sheets.map(({ name, part }) => [partKey(part.name), name]));
  for (const entry of archive.entries) {
    const key = partKey(entry.name);
    if (!key.endsWith('.xml') || lost.has(key) || key === partKey(workbook.entry.name)) continue;
    const { text } = decodeXml(archive.bytes(entry), entry.name);
    const own = sheetOf.get(key);
    for (const { at, sheet } of marksIn(text, marks)) {
      const cell = own === undefined ? undefined : cellAround(text, at);
      const place =
        own === undefined ? `part ${entry.name}` : `'${own}'${cell === undefined ? '' : `!${cell}`}`;
      found.push({ where: place, sheet });
    }
  }
  const defined = child(workbook.root, 'definedNames');
  for (const name of defined ? childrenNamed(defined, 'definedName') : []) {
    const local = Number(attribute(name, 'localSheetId') ?? NaN);
    if (going.some(({ tab }) => tab === local)) continue;
    const formula = workbook.text.slice(name.openEnd, name.closeStart).toLowerCase();
    const mark = marks.find((one) => formula.includes(one.mark));
    if (mark) found.push({ where: `name ${attribute(name, 'name') ?? ''}`, sheet: mark.sheet });
  }
  return found;
}

interface Mark {
  /** In small letters, as XML stores it. */
  readonly mark: string;
  readonly sheet: string;
}

/** How formulas name a sheet and its tables, and how a pivot table names its source. */
function marksOf(sheet: string, tables: readonly string[]): readonly string[] {
  const quoted = sheet.replaceAll("'", "''");
  const ends = ["'!", "':", ':'];
  const bare = /^[\w.]+$/u.test(sheet) ? [`${sheet}!`] : [];
  const named = [...ends.map((end) => `${quoted}${end}`), ...bare].flatMap((mark) => [
    escapeXml(mark),
    escapeXml(mark).replaceAll("'", '&apos;'),
    escapeXml(mark).replaceAll("'", '&#39;'),
  ]);
  const sources = [sheet, ...tables].flatMap((name) => [
    ` sheet="${escapeXml(name)}"`,
    ` name="${escapeXml(name)}"`,
  ]);
  return [...named, ...tables.map((table) => `${escapeXml(table)}[`), ...sources].map((mark) =>
    mark.toLowerCase(),
  );
}

/** Elements whose text is a formula, by their local names. */
const formulas = new Set([
  'f',
  'formula',
  'formula1',
  'formula2',
  'calculatedcolumnformula',
  'totalsrowformula',
]);

/** Where marks stand in formulas, and in the sources of pivot tables. */
function* marksIn(
  text: string,
  marks: readonly Mark[],
): Generator<{ readonly at: number; readonly sheet: string }> {
  const small = text.toLowerCase();
  const seen = new Set<number>();
  for (const { mark, sheet } of marks) {
    for (let at = small.indexOf(mark); at >= 0; at = small.indexOf(mark, at + 1)) {
      const open = small.lastIndexOf('<', at);
      const isText = small.lastIndexOf('>', at) > open;
      const name = /^<(?:[\w.-]+:)?([\w.-]+)/u.exec(small.slice(open, open + 60))?.[1] ?? '';
      const counts = isText ? formulas.has(name) : name === 'worksheetsource';
      if (!counts || seen.has(open)) continue;
      seen.add(open);
      yield { at, sheet };
    }
  }
}

/** The address of the cell whose formula stands there; `undefined` in rules and the like. */
function cellAround(text: string, at: number): string | undefined {
  const open = Math.max(text.lastIndexOf('<c ', at), text.lastIndexOf(':c ', at));
  if (open < 0 || text.lastIndexOf('c>', at) > open) return undefined;
  const end = text.indexOf('>', open) + 1;
  const address = tagAttributes(text, open + 2, end).find(({ name }) => name === 'r');
  return address && text.slice(address.valueFrom, address.valueTo);
}
