import type { Archive, ZipEntry } from '../zip/archive.ts';
import type { ReadLimits } from '../zip/limits.ts';
import { kindOfBuiltIn, kindOfCode, type NumberKind, shownTextOf } from '../../formats/numberFormat.ts';
import { readXml } from './xml.ts';

/** The numbered lists of a style sheet in the order of the schema (ECMA-376 part 1, section 18.8.39), by what they hold. */
const entryOf = {
  numFmts: 'numFmt',
  fonts: 'font',
  fills: 'fill',
  borders: 'border',
  cellStyleXfs: 'xf',
  cellXfs: 'xf',
  cellStyles: 'cellStyle',
  dxfs: 'dxf',
} as const;

export type StyleListName = keyof typeof entryOf;

export const styleListNames = Object.keys(entryOf) as readonly StyleListName[];

/** What the number format of a cell style makes of a number, and the text that it shows with it. */
export interface NumberStyle {
  readonly kind: NumberKind;
  readonly shown: string;
}

/** For each cell style, by the number cells give in `s`, its number format; a code
 * that the file gives a built-in format is the format's. Throws FileRefused where the part is broken. */
export function readNumberStyles(archive: Archive, part: ZipEntry, limits: ReadLimits): NumberStyle[] {
  const codes = new Map<number, string>();
  const formatOfStyle: number[] = [];
  readXml(archive, part, limits, {
    open(name, attributes, parents) {
      const id = Number(attributes['numFmtId'] ?? 0);
      if (isEntry('numFmts', name, parents)) codes.set(id, attributes['formatCode'] ?? '');
      else if (isEntry('cellXfs', name, parents)) formatOfStyle.push(id);
    },
  });
  return formatOfStyle.map((id) => {
    const code = codes.get(id);
    if (code === undefined) return { kind: kindOfBuiltIn(id), shown: '' };
    return { kind: kindOfCode(code), shown: shownTextOf(code) };
  });
}

/** Whether an element is an entry of its list, by the elements around it; what else stands there is not counted. */
export function isEntry(list: StyleListName, name: string, parents: readonly string[]): boolean {
  return parents.length === 2 && parents[1] === list && name === entryOf[list];
}
