import type { Archive, ZipEntry } from '../zip/archive.ts';
import type { ReadLimits } from '../zip/limits.ts';
import { kindOfBuiltIn, kindOfCode, type NumberKind } from '../../formats/numberFormat.ts';
import { readXml } from './xml.ts';

/** For each cell style, by the number cells give in `s`, what its number format makes of a number. Throws FileRefused where the part is broken. */
export function readNumberKinds(archive: Archive, part: ZipEntry, limits: ReadLimits): NumberKind[] {
  const codes = new Map<number, string>();
  const formatOfStyle: number[] = [];
  readXml(archive, part, limits, {
    open(name, attributes, parents) {
      const parent = parents.at(-1);
      const id = Number(attributes['numFmtId'] ?? 0);
      if (name === 'numFmt' && parent === 'numFmts') codes.set(id, attributes['formatCode'] ?? '');
      else if (name === 'xf' && parent === 'cellXfs') formatOfStyle.push(id);
    },
  });
  return formatOfStyle.map((id) => {
    const code = codes.get(id);
    return code === undefined ? kindOfBuiltIn(id) : kindOfCode(code);
  });
}
