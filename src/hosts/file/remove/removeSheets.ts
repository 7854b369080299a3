import { reached } from './reached.ts';
import { readRelationships } from '../read/relationships.ts';
import { relationshipsOf } from '../write/package/relationships.ts';
import { undeclarePart } from '../write/package/contentTypes.ts';
import { openWorkbook, type OpenWorkbook } from '../write/package/openWorkbook.ts';
import { attribute, child, childrenNamed, type Element } from '../write/xml/outline.ts';
import { type Edit, replaceAttribute, splice } from '../write/xml/splice.ts';
import { partKey, type ZipEntry } from '../zip/archive.ts';
import { collect } from '../zip/collect.ts';
import type { Deflater } from '../zip/deflater.ts';
import { defaultLimits } from '../zip/limits.ts';
import { FileRefused } from '../zip/refused.ts';
import { zipWriter } from '../zip/writer.ts';

/**
 * A copy of an .xlsx or .xlsm workbook without these sheets: without their parts, those that only they reach, and their names.
 * Every other part but the workbook part, its relationships and the list of parts is taken over byte for byte; the list of
 * formula cells is left out, programs make it anew. Throws FileRefused where sheets can't be removed, as `openWorkbook` does, and
 * where no other sheet is left to be seen.
 */
export function removeSheets(
  original: Uint8Array,
  names: readonly string[],
  deflater?: Deflater,
): Uint8Array {
  const open = openWorkbook(original);
  const { workbook, workbookRels, contentTypes } = open;
  const list = child(workbook.root, 'sheets');
  const all = list ? childrenNamed(list, 'sheet') : [];
  const gone = all.filter((sheet) => names.includes(attribute(sheet, 'name') ?? ''));
  if (gone.length === 0) return original;
  const left = all.filter((sheet) => !gone.includes(sheet));
  if (!left.some((sheet) => (attribute(sheet, 'state') ?? 'visible') === 'visible')) {
    throw new FileRefused(
      'The workbook would hold no other sheet to be seen. Add or unhide a sheet of yours, then try again.',
    );
  }
  const ids = new Set(gone.map((sheet) => attribute(sheet, 'id', open.dialect.relationships) ?? ''));
  const parts = partsOf(open, ids);
  const chain = open.calcChain;
  const texts = new Map<ZipEntry, Uint8Array>();
  const put = (part: typeof workbook, edits: readonly Edit[]): void => {
    texts.set(part.entry, part.encode(splice(part.text, edits)));
  };
  put(workbook, [...removed(gone), ...namesWithout(workbook, all, gone), ...views(workbook, all, left)]);
  put(
    workbookRels,
    removed(
      workbookRels.root.children.filter(
        (one) =>
          ids.has(attribute(one, 'Id') ?? '') ||
          (chain !== undefined && (attribute(one, 'Type') ?? '').endsWith('/calcChain')),
      ),
    ),
  );
  const dropped = [...parts, ...(chain ? [chain] : [])];
  put(
    contentTypes,
    dropped.flatMap(({ name }) => undeclarePart(contentTypes, partKey(name))),
  );
  const { sink, bytes } = collect();
  const zip = zipWriter(sink, deflater);
  for (const entry of open.archive.entries) {
    if (dropped.includes(entry)) continue;
    const text = texts.get(entry);
    if (text) zip.replace(entry, text);
    else zip.copy(entry);
  }
  zip.finish();
  return bytes();
}

function removed(elements: readonly Element[]): Edit[] {
  return elements.map(({ start, end }) => ({ from: start, to: end, text: '' }));
}

/** Parts, with their relationships, that are reached through these relationships of the workbook and not otherwise. */
function partsOf({ archive, workbook }: OpenWorkbook, ids: ReadonlySet<string>): readonly ZipEntry[] {
  const links = readRelationships(archive, workbook.entry.name, defaultLimits);
  const isLost = (source: string, id: string): boolean =>
    partKey(source) === partKey(workbook.entry.name) && ids.has(id);
  const kept = reached(archive, [''], (source, id) => !isLost(source, id));
  const lost = reached(
    archive,
    links.filter(({ id }) => ids.has(id)).map(({ target }) => target),
    (source) => partKey(source) !== partKey(workbook.entry.name),
  );
  return [...lost]
    .filter((name) => !kept.has(name))
    .flatMap((name) => [name, relationshipsOf(name)])
    .flatMap((name) => archive.get(name) ?? []);
}

/** Takes the names out that belong to sheets that go, and counts the sheets of the others anew. */
function namesWithout(
  { text, root }: OpenWorkbook['workbook'],
  all: readonly Element[],
  gone: readonly Element[],
): readonly Edit[] {
  const list = child(root, 'definedNames');
  const names = list ? childrenNamed(list, 'definedName') : [];
  const lost = names.filter((name) => {
    const own = all[Number(attribute(name, 'localSheetId') ?? NaN)];
    return own !== undefined && gone.includes(own);
  });
  if (list && names.length > 0 && lost.length === list.children.length) return removed([list]);
  const moved = names.flatMap((name) => {
    const place = attribute(name, 'localSheetId');
    if (place === undefined || lost.includes(name)) return [];
    const own = all[Number(place)];
    const before = all.slice(0, Number(place)).filter((sheet) => gone.includes(sheet)).length;
    const edit = own && replaceAttribute(text, name, 'localSheetId', String(Number(place) - before));
    return edit && before > 0 ? [edit] : [];
  });
  return [...removed(lost), ...moved];
}

/** The views of the workbook with the places that their sheets have then; the first sheet that is seen stands in for one that went. */
function views(
  { text, root }: OpenWorkbook['workbook'],
  all: readonly Element[],
  left: readonly Element[],
): readonly Edit[] {
  const list = child(root, 'bookViews');
  return (list ? childrenNamed(list, 'workbookView') : []).flatMap((view) =>
    ['activeTab', 'firstSheet'].flatMap((name) => {
      const place = attribute(view, name);
      if (place === undefined) return [];
      const now = left.findIndex((sheet) => sheet === all[Number(place)]);
      const seen = left.findIndex((sheet) => (attribute(sheet, 'state') ?? 'visible') === 'visible');
      return replaceAttribute(text, view, name, String(now < 0 ? seen : now)) ?? [];
    }),
  );
}

/** Sheets among these that hold more than result sheets are written with, such as comments or pictures somebody added. */
export function sheetsWithMore(original: Uint8Array, names: readonly string[]): readonly string[] {
  const { archive, workbook, dialect } = openWorkbook(original, false);
  const list = child(workbook.root, 'sheets');
  const parts = new Map(
    readRelationships(archive, workbook.entry.name, defaultLimits).map(({ id, target }) => [id, target]),
  );
  const kindsFrom = (part: string): readonly string[] =>
    readRelationships(archive, part, defaultLimits).flatMap(({ kind, target }) =>
      kind === 'drawing' ? [kind, ...kindsFrom(target)] : [kind],
    );
  return (list ? childrenNamed(list, 'sheet') : []).flatMap((sheet) => {
    const name = attribute(sheet, 'name') ?? '';
    const part = parts.get(attribute(sheet, 'id', dialect.relationships) ?? '');
    if (!names.includes(name) || part === undefined) return [];
    return kindsFrom(part).every((kind) => ourKinds.has(kind)) ? [] : [name];
  });
}

/** What result sheets link to, and what spreadsheet programs add by themselves when they save. */
const ourKinds = new Set(['drawing', 'chart', 'table', 'printerSettings', 'chartStyle', 'chartColorStyle']);
