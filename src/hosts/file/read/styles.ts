import type { Archive, ZipEntry } from '../zip/archive.ts';
import type { ReadLimits } from '../zip/limits.ts';
import { kindOfBuiltIn, kindOfCode, type NumberKind } from '../../formats/numberFormat.ts';
import { isEntry } from './styleLists.ts';
import { readXml } from './xml.ts';

/** For each cell style, by the number cells give in `s`, what its number format makes of a number; a code that the file gives a built-in format is the format's. Throws FileRefused where the part is broken. */
export function readNumberKinds(archive: Archive, part: ZipEntry, limits: ReadLimits): NumberKind[] {
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
    return code === undefined ? kindOfBuiltIn(id) : kindOfCode(code);
  });
}
