import type { Area } from '../../../../cells/sheet.ts';
import { columnLetters } from '../../../../cells/address.ts';
import { FileRefused } from '../../zip/refused.ts';
import { quotedName } from '../../../formats/reference.ts';
import { attribute, child, childrenNamed, type Element } from '../xml/outline.ts';
import { appendInside, type Edit } from '../xml/splice.ts';
import { escapeXml } from '../xml/text.ts';
import type { EditablePart } from './editable.ts';
import type { Dialect } from './namespaces.ts';

/** A sheet to be listed in the workbook part. */
export interface ListedSheet {
  readonly name: string;
  readonly relationshipId: string;
  readonly filter: Area | undefined;
  readonly repeatRows: { readonly from: number; readonly to: number } | undefined;
  readonly printArea: Area | undefined;
}

/** The names of the workbook's sheets of every kind, in order. */
export function sheetNames({ root }: EditablePart): readonly string[] {
  return sheetElements(root).map((element) => attribute(element, 'name') ?? '');
}

/**
 * Lists new sheets behind the existing ones, which keep their ids and places, and defines the names their
 * filters and repeated rows need.
 */
export function listSheets(
  part: EditablePart,
  dialect: Dialect,
  sheets: readonly ListedSheet[],
): readonly Edit[] {
  if (sheets.length === 0) return [];
  const { text, root } = part;
  const list = child(root, 'sheets');
  if (!list) throw new FileRefused('The workbook lists no sheets; it is damaged. Save it again as .xlsx.');
  const existing = sheetElements(root);
  const greatestId = existing.reduce(
    (id, element) => Math.max(id, Number(attribute(element, 'sheetId')) || 0),
    0,
  );
  const { prefix, declaration } = relationshipPrefix(list, dialect);
  const markup = sheets.map(
    ({ name, relationshipId }, index) =>
      `<${list.prefix}sheet name="${escapeXml(name)}" sheetId="${greatestId + 1 + index}"${declaration} ${prefix}:id="${relationshipId}"/>`,
  );
  const names = sheets.flatMap((sheet, index) => definedNames(sheet, existing.length + index, root.prefix));
  return [appendInside(text, list, markup.join('')), ...addNames(part, list, names)];
}

function sheetElements(root: Element): readonly Element[] {
  const list = child(root, 'sheets');
  return list ? childrenNamed(list, 'sheet') : [];
}

function relationshipPrefix(list: Element, dialect: Dialect): { prefix: string; declaration: string } {
  for (const [prefix, uri] of list.namespaces) {
    if (uri === dialect.relationships && prefix !== '') return { prefix, declaration: '' };
  }
  let prefix = 'r';
  while (list.namespaces.has(prefix)) prefix += 'r';
  return { prefix, declaration: ` xmlns:${prefix}="${dialect.relationships}"` };
}

function definedNames(sheet: ListedSheet, index: number, prefix: string): readonly string[] {
  const { filter, repeatRows, printArea } = sheet;
  const names: string[] = [];
  const define = (name: string, attributes: string, range: string): void => {
    const refersTo = escapeXml(`${quotedName(sheet.name)}!${range}`);
    names.push(
      `<${prefix}definedName name="${name}" localSheetId="${index}"${attributes}>${refersTo}</${prefix}definedName>`,
    );
  };
  if (filter) define('_xlnm._FilterDatabase', ' hidden="1"', absolute(filter));
  if (printArea) define('_xlnm.Print_Area', '', absolute(printArea));
  if (repeatRows) define('_xlnm.Print_Titles', '', `$${repeatRows.from}:$${repeatRows.to}`);
  return names;
}

function absolute({ top, left, bottom, right }: Area): string {
  return `$${columnLetters(left)}$${top}:$${columnLetters(right)}$${bottom}`;
}

/** The schema's order (CT_Workbook): sheets, functionGroups, externalReferences, definedNames, calcPr … */
function addNames({ text, root }: EditablePart, list: Element, names: readonly string[]): readonly Edit[] {
  if (names.length === 0) return [];
  const present = child(root, 'definedNames');
  if (present) return [appendInside(text, present, names.join(''))];
  const before = child(root, 'externalReferences') ?? child(root, 'functionGroups') ?? list;
  const tag = `${root.prefix}definedNames`;
  return [{ from: before.end, to: before.end, text: `<${tag}>${names.join('')}</${tag}>` }];
}
