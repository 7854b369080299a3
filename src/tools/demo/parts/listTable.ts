import type { Area } from '../../../cells/sheet.ts';
import { transitional } from '../../../hosts/file/write/package/namespaces.ts';
import { reference as areaReference } from '../../../hosts/formats/reference.ts';
import { escapeXml } from '../../../hosts/file/write/xml/text.ts';
import { addPart, xmlDeclaration } from '../package/addPart.ts';
import type { Parts } from '../package/parts.ts';
import { addSheetElement, reference } from '../package/sheetElement.ts';

const contentType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml';

/** Makes an area of a sheet a table; `columns` are the texts of its header cells, which stand in its first row. */
export function addListTable(
  parts: Parts,
  sheet: string,
  name: string,
  area: Area,
  columns: readonly string[],
): void {
  const ref = areaReference(area);
  const entries = columns.map(
    (column, index) => `<tableColumn id="${index + 1}" name="${escapeXml(column)}"/>`,
  );
  const id = addPart(parts, {
    name: 'xl/tables/table1.xml',
    contentType,
    from: sheet,
    relationship: 'table',
    text:
      `${xmlDeclaration}<table xmlns="${transitional.main}" id="1" name="${name}" displayName="${name}" ref="${ref}">` +
      `<autoFilter ref="${ref}"/><tableColumns count="${columns.length}">${entries.join('')}</tableColumns>` +
      `<tableStyleInfo name="TableStyleLight1" showRowStripes="1"/></table>`,
  });
  addSheetElement(
    parts,
    sheet,
    'tableParts',
    `<tableParts count="1">${reference('tablePart', id)}</tableParts>`,
  );
}
