import { transitional } from '../../../hosts/file/write/package/namespaces.ts';
import { outline } from '../../../hosts/file/write/xml/outline.ts';
import { splice } from '../../../hosts/file/write/xml/splice.ts';
import { partNamed, type Parts } from './parts.ts';

/** The last children of a worksheet in the order of the schema, from merged cells on (ECMA-376 part 1, 18.3.1.99). */
const order = [
  'mergeCells',
  'phoneticPr',
  'conditionalFormatting',
  'dataValidations',
  'hyperlinks',
  'printOptions',
  'pageMargins',
  'pageSetup',
  'headerFooter',
  'drawing',
  'legacyDrawing',
  'tableParts',
];

/** The part of the n-th sheet of a new workbook, counted from 1. */
export function sheetPartName(number: number): string {
  return `xl/worksheets/sheet${number}.xml`;
}

/** Puts an element into a worksheet at its place in the schema. Throws a RangeError for an element not known here. */
export function addSheetElement(parts: Parts, sheet: string, name: string, markup: string): void {
  const place = order.indexOf(name);
  if (place < 0) throw new RangeError(`no place is known for <${name}> in a worksheet`);
  const text = partNamed(parts, sheet);
  const root = outline(text, sheet);
  const later = root.children.find((element) => order.indexOf(element.local) > place);
  const at = later?.start ?? root.closeStart;
  parts.set(sheet, splice(text, [{ from: at, to: at, text: markup }]));
}

/** An element that does nothing but refer to another part by a relationship's id. */
export function reference(name: string, id: string): string {
  return `<${name} xmlns:r="${transitional.relationships}" r:id="${id}"/>`;
}
