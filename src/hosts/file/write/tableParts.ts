import type { SheetModel } from '../../../sheets/model.ts';
import { tableColumns } from '../../../sheets/tableColumns.ts';
import { reference } from '../../formats/reference.ts';
import { freeTableNames } from '../../formats/tableNames.ts';
import { decodeXml } from './xml/encoding.ts';
import { attribute, child, childrenNamed, outline } from './xml/outline.ts';
import { escapeCellText, escapeXml } from './xml/text.ts';
import { type Dialect, tableType } from './package/namespaces.ts';
import type { OpenWorkbook } from './package/openWorkbook.ts';
import type { PlannedParts } from './package/plannedParts.ts';

/** A table's part ready to be put into the package. */
export interface TablePart {
  readonly name: string;
  readonly text: string;
}

/** The parts of the tables that sheets have, under names and numbers that no table or defined name of the workbook has. */
export function tableParts(
  workbook: OpenWorkbook,
  sheets: readonly SheetModel[],
  { sheets: parts }: Pick<PlannedParts, 'sheets'>,
): readonly TablePart[] {
  const wanted = sheets.flatMap((sheet, index) => {
    const part = parts[index]?.table;
    return sheet.table && part !== undefined ? [{ sheet, table: sheet.table, part }] : [];
  });
  if (wanted.length === 0) return [];
  const there = tablesThere(workbook);
  const names = freeTableNames(
    wanted.map(({ table }) => table.name),
    [...there.names, ...definedNames(workbook)],
  );
  return wanted.map(({ sheet, table, part }, index) => ({
    name: part,
    text: tableMarkup(
      {
        id: there.greatestId + 1 + index,
        name: names[index] ?? table.name,
        ref: reference(table.area),
        columns: tableColumns(sheet, table),
      },
      workbook.dialect,
    ),
  }));
}

interface Table {
  readonly id: number;
  readonly name: string;
  readonly ref: string;
  readonly columns: readonly string[];
}

/** ECMA-376 part 1, section 18.5.1. Its rows are told apart by shades of the plainest style that programs bring along. */
function tableMarkup({ id, name, ref, columns }: Table, { main }: Dialect): string {
  const markup = columns.map(
    (title, index) => `<tableColumn id="${index + 1}" name="${attributeText(title)}"/>`,
  );
  return [
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n',
    `<table xmlns="${main}" id="${id}" name="${escapeXml(name)}" displayName="${escapeXml(name)}" ref="${ref}" totalsRowShown="0">`,
    `<autoFilter ref="${ref}"/>`,
    `<tableColumns count="${columns.length}">${markup.join('')}</tableColumns>`,
    '<tableStyleInfo name="TableStyleLight1" showFirstColumn="0" showLastColumn="0" showRowStripes="1" showColumnStripes="0"/>',
    '</table>',
  ].join('');
}

/** As in a cell; line feeds and tabs, which an attribute turns into blanks, are coded. */
function attributeText(text: string): string {
  return escapeCellText(text).replaceAll('\n', '_x000a_').replaceAll('\t', '_x0009_');
}

/** Names and the greatest number of the tables of a workbook, found by the types of its parts. */
function tablesThere({ archive, contentTypes }: OpenWorkbook): {
  readonly names: readonly string[];
  readonly greatestId: number;
} {
  const names: string[] = [];
  let greatestId = 0;
  for (const declared of contentTypes.root.children) {
    if (attribute(declared, 'ContentType')?.toLowerCase() !== tableType.toLowerCase()) continue;
    const entry = archive.get((attribute(declared, 'PartName') ?? '').replace(/^\//u, ''));
    if (!entry) continue;
    const table = outline(decodeXml(archive.bytes(entry), entry.name).text, entry.name);
    greatestId = Math.max(greatestId, Number(attribute(table, 'id')) || 0);
    names.push(attribute(table, 'displayName') ?? '', attribute(table, 'name') ?? '');
  }
  return { names, greatestId };
}

function definedNames({ workbook: { root } }: OpenWorkbook): readonly string[] {
  const list = child(root, 'definedNames');
  return list ? childrenNamed(list, 'definedName').map((one) => attribute(one, 'name') ?? '') : [];
}
