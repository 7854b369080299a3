import type { SheetModel } from '../../../../sheets/model.ts';
import type { ZipEntry } from '../../zip/archive.ts';
import { splice } from '../xml/splice.ts';
import { declareParts, type NewPart, relationshipsPart, undeclarePart } from './contentTypes.ts';
import type { EditablePart } from './editable.ts';
import { openOn } from './frontSheet.ts';
import { chartType, drawingType, stylesType, tableType, worksheetType } from './namespaces.ts';
import type { OpenWorkbook } from './openWorkbook.ts';
import type { PlannedParts } from './plannedParts.ts';
import {
  addRelationships,
  freeIds,
  type NewRelationship,
  relationshipsOf,
  removeRelationships,
} from './relationships.ts';
import { asWorkbook } from './workbookKind.ts';
import { listSheets, sheetNames } from './workbookPart.ts';

/**
 * The new bytes of each part that must know of the new sheets, or that the list of formula cells is `dropped`. `names`
 * are those the sheets get, `styles` the style sheet's text.
 */
export function editedParts(
  open: OpenWorkbook,
  sheets: readonly SheetModel[],
  names: readonly string[],
  parts: PlannedParts,
  styles: string,
  dropped: ZipEntry | undefined,
): ReadonlyMap<ZipEntry, Uint8Array> {
  const { contentTypes, workbook, workbookRels, dialect } = open;
  const stem = dialect.relationships;
  const stylesPart = parts.styles === undefined ? [] : [parts.styles];
  const ids = freeIds(workbookRels.root, sheets.length + stylesPart.length);
  const declared: NewPart[] = [
    ...parts.sheets.map(({ sheet }) => ({ name: sheet, contentType: worksheetType })),
    ...stylesPart.map((name) => ({ name, contentType: stylesType })),
  ];
  const linked: NewPart[] = parts.sheets.flatMap(({ sheet, drawing, charts, table }) => [
    ...((drawing ?? table) ? [relationshipsPart(relationshipsOf(sheet))] : []),
    ...(drawing === undefined
      ? []
      : [{ name: drawing, contentType: drawingType }, relationshipsPart(relationshipsOf(drawing))]),
    ...charts.map((name) => ({ name, contentType: chartType })),
    ...(table === undefined ? [] : [{ name: table, contentType: tableType }]),
  ]);
  const front = sheets.findIndex(({ inFront }) => inFront === true);
  const links: NewRelationship[] = declared.map(({ name, contentType }, index) => ({
    id: ids[index] ?? '',
    type: `${stem}/${contentType === stylesType ? 'styles' : 'worksheet'}`,
    part: name,
  }));
  const listed = sheets.map((sheet, index) => ({
    name: names[index] ?? sheet.name,
    relationshipId: ids[index] ?? '',
    filter: sheet.filter,
    repeatRows: sheet.print.repeatRows,
    printArea: sheet.print.area,
  }));
  const undeclared = dropped ? undeclarePart(contentTypes, dropped.name) : [];
  const unlinked = [
    ...(dropped ? removeRelationships(workbookRels, 'calcChain') : []),
    // A link to a style sheet that is not there.
    ...(parts.styles === undefined ? [] : removeRelationships(workbookRels, 'styles')),
  ];
  const texts: readonly (readonly [EditablePart, string])[] = [
    [
      contentTypes,
      splice(contentTypes.text, [
        ...asWorkbook(contentTypes, workbook.entry.name),
        ...undeclared,
        ...declareParts(contentTypes, [...declared, ...linked]),
      ]),
    ],
    [
      workbook,
      splice(workbook.text, [
        ...listSheets(workbook, dialect, listed),
        ...(front < 0 ? [] : openOn(workbook, sheetNames(workbook).length + front)),
      ]),
    ],
    [
      workbookRels,
      splice(workbookRels.text, [...unlinked, ...addRelationships(workbookRels, workbook.entry.name, links)]),
    ],
    ...(open.styles ? [[open.styles, styles] as const] : []),
  ];
  return new Map(
    texts
      .filter(([part, text]) => part.text !== text)
      .map(([part, text]): [ZipEntry, Uint8Array] => [part.entry, part.encode(text)]),
  );
}
