import type { Archive, ZipEntry } from '../zip/archive.ts';
import type { ReadLimits } from '../zip/limits.ts';
import { kindOfBuiltIn, kindOfCode, type NumberKind, shownTextOf } from '../../formats/numberFormat.ts';
import { isEntry } from './styleLists.ts';
import { readXml } from './xml.ts';

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
