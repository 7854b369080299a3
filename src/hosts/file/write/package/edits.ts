import type { SheetModel } from '../../../../sheets/model.ts';
import type { ZipEntry } from '../../zip/archive.ts';
import { splice } from '../xml/splice.ts';
import { declareParts, type NewPart } from './contentTypes.ts';
import { stylesType, worksheetType } from './namespaces.ts';
import type { OpenWorkbook } from './openWorkbook.ts';
import type { PlannedParts } from './plannedParts.ts';
import { addRelationships, freeIds, type NewRelationship } from './relationships.ts';
import { listSheets } from './workbookPart.ts';

/** The new bytes of each part that must know of the new sheets. `names` are those the sheets get, `styles` the style sheet's text. */
export function editedParts(
  open: OpenWorkbook,
  sheets: readonly SheetModel[],
  names: readonly string[],
  parts: PlannedParts,
  styles: string,
): ReadonlyMap<ZipEntry, Uint8Array> {
  const { contentTypes, workbook, workbookRels, dialect } = open;
  const stem = dialect.relationships;
  const stylesPart = parts.styles === undefined ? [] : [parts.styles];
  const ids = freeIds(workbookRels.root, sheets.length + stylesPart.length);
  const declared: NewPart[] = [
    ...parts.sheets.map((name) => ({ name, contentType: worksheetType })),
    ...stylesPart.map((name) => ({ name, contentType: stylesType })),
  ];
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
  const edited = new Map([
    [
      contentTypes.entry,
      contentTypes.encode(splice(contentTypes.text, declareParts(contentTypes, declared))),
    ],
    [workbook.entry, workbook.encode(splice(workbook.text, listSheets(workbook, dialect, listed)))],
    [
      workbookRels.entry,
      workbookRels.encode(
        splice(workbookRels.text, [addRelationships(workbookRels, workbook.entry.name, links)]),
      ),
    ],
  ]);
  if (open.styles && open.styles.text !== styles) edited.set(open.styles.entry, open.styles.encode(styles));
  return edited;
}
