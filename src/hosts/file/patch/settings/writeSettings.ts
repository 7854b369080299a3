import {
  declaredNames,
  declareParts,
  type NewPart,
  relationshipsPart,
} from '../../write/package/contentTypes.ts';
import {
  packageRelationships,
  type Dialect,
  strict as strictDialect,
} from '../../write/package/namespaces.ts';
import { openWorkbook, type OpenWorkbook } from '../../write/package/openWorkbook.ts';
import { addRelationships, freeIds, relationshipsOf } from '../../write/package/relationships.ts';
import { splice } from '../../write/xml/splice.ts';
import type { ZipEntry } from '../../zip/archive.ts';
import { collect } from '../../zip/collect.ts';
import { zipWriter } from '../../zip/writer.ts';
import { settingsPart, namespace, settingsMarkup, type Settings } from './readSettings.ts';

/** Marks the part among the workbook's custom XML parts; the same in every workbook. */
const itemId = '{6E1B8C52-5D0F-4B7E-9C38-2A54D1F07B93}';
const propertiesType = 'application/vnd.openxmlformats-officedocument.customXmlProperties+xml';
const declaration = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/**
 * The workbook with these settings in place of those it has, in a custom XML part of their own, which spreadsheet programs
 * keep as it is; the same bytes where it has them already. All other parts stay byte for byte, but for the lists that name
 * a new one. Throws FileRefused as `openWorkbook` does.
 */
export function withSettings(bytes: Uint8Array, settings: Settings): Uint8Array {
  const book = openWorkbook(bytes, false);
  const present = settingsPart(book.archive);
  const text = settingsMarkup(settings);
  if (present === undefined && settings.size === 0) return bytes;
  if (present !== undefined && settingsMarkup(present.settings) === text) return bytes;
  const { changed, added } = present
    ? { changed: new Map([[present.entry, encoded(text)]]), added: [] }
    : newParts(book, text);
  const collected = collect();
  const zip = zipWriter(collected.sink);
  for (const entry of book.archive.entries) {
    const rewritten = changed.get(entry);
    if (rewritten) zip.replace(entry, rewritten);
    else zip.copy(entry);
  }
  for (const [name, markup] of added) zip.add(name, encoded(markup));
  zip.finish();
  return collected.bytes();
}

interface Additions {
  readonly changed: ReadonlyMap<ZipEntry, Uint8Array>;
  readonly added: readonly (readonly [name: string, text: string])[];
}

function newParts(book: OpenWorkbook, text: string): Additions {
  const { contentTypes, workbook, workbookRels, dialect } = book;
  const number = freeNumber(book);
  const item = `customXml/item${number}.xml`;
  const properties = `customXml/itemProps${number}.xml`;
  const declared: NewPart[] = [
    { name: item, contentType: 'application/xml' },
    { name: properties, contentType: propertiesType },
    relationshipsPart(relationshipsOf(item)),
  ];
  const link = {
    id: freeIds(workbookRels.root, 1)[0] ?? '',
    type: `${dialect.relationships}/customXml`,
    part: item,
  };
  const types = splice(contentTypes.text, declareParts(contentTypes, declared));
  const links = splice(workbookRels.text, addRelationships(workbookRels, workbook.entry.name, [link]));
  return {
    changed: new Map([
      [contentTypes.entry, contentTypes.encode(types)],
      [workbookRels.entry, workbookRels.encode(links)],
    ]),
    added: [
      [item, text],
      [properties, propertiesMarkup(dialect)],
      [
        relationshipsOf(item),
        `${declaration}<Relationships xmlns="${packageRelationships}"><Relationship Id="rId1" Type="${dialect.relationships}/customXmlProps" Target="itemProps${number}.xml"/></Relationships>`,
      ],
    ],
  };
}

/** ECMA-376 part 1, section 22.5: what the part holds. */
function propertiesMarkup(dialect: Dialect): string {
  const stem =
    dialect === strictDialect
      ? 'http://purl.oclc.org/ooxml/officeDocument'
      : 'http://schemas.openxmlformats.org/officeDocument/2006';
  return `${declaration}<ds:datastoreItem ds:itemID="${itemId}" xmlns:ds="${stem}/customXml"><ds:schemaRefs><ds:schemaRef ds:uri="${namespace}"/></ds:schemaRefs></ds:datastoreItem>`;
}

function freeNumber({ archive, contentTypes }: OpenWorkbook): number {
  const declared = new Set(declaredNames(contentTypes));
  const isTaken = (name: string): boolean =>
    archive.get(name) !== undefined || declared.has(name.toLowerCase());
  let number = 1;
  while (isTaken(`customXml/item${number}.xml`) || isTaken(`customXml/itemProps${number}.xml`)) number++;
  return number;
}

function encoded(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}
