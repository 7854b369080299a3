import type { SheetModel } from '../../../sheets/model.ts';
import { collect } from '../zip/collect.ts';
import { zipWriter } from '../zip/writer.ts';
import { addSheets, type WriteOptions } from './addSheets.ts';
import {
  packageContentTypes,
  packageRelationships,
  relationshipsType,
  stylesType,
  transitional,
  workbookType,
} from './package/namespaces.ts';
import { emptyStyleSheet } from './styles/empty.ts';

/** A workbook of nothing but these sheets, as .xlsx. `addSheets(emptyWorkbook(), …)` gives the notes and names too. */
export function newWorkbook(sheets: readonly SheetModel[], options: WriteOptions = {}): Uint8Array {
  if (sheets.length === 0) throw new RangeError('a workbook needs at least one sheet');
  return addSheets(emptyWorkbook(), sheets, options).bytes;
}

/** A package that lacks nothing but its sheets; a workbook only once some are added. */
export function emptyWorkbook(): Uint8Array {
  const { sink, bytes } = collect();
  const zip = zipWriter(sink);
  const add = (name: string, markup: string): void => {
    zip.add(
      name,
      new TextEncoder().encode(`<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${markup}`),
    );
  };
  const { main, relationships } = transitional;
  add(
    '[Content_Types].xml',
    [
      `<Types xmlns="${packageContentTypes}">`,
      `<Default Extension="rels" ContentType="${relationshipsType}"/>`,
      '<Default Extension="xml" ContentType="application/xml"/>',
      `<Override PartName="/xl/workbook.xml" ContentType="${workbookType}"/>`,
      `<Override PartName="/xl/styles.xml" ContentType="${stylesType}"/>`,
      '</Types>',
    ].join(''),
  );
  add('_rels/.rels', relationshipsPart(`${relationships}/officeDocument`, 'xl/workbook.xml'));
  add(
    'xl/workbook.xml',
    `<workbook xmlns="${main}" xmlns:r="${relationships}"><bookViews><workbookView/></bookViews><sheets/></workbook>`,
  );
  add('xl/_rels/workbook.xml.rels', relationshipsPart(`${relationships}/styles`, 'styles.xml'));
  zip.add('xl/styles.xml', new TextEncoder().encode(emptyStyleSheet(transitional)));
  zip.finish();
  return bytes();
}

function relationshipsPart(type: string, target: string): string {
  return `<Relationships xmlns="${packageRelationships}"><Relationship Id="rId1" Type="${type}" Target="${target}"/></Relationships>`;
}
