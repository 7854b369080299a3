import { readWorkbookPart } from '../../read/workbookPart.ts';
import { readXml } from '../../read/xml.ts';
import type { Archive } from '../../zip/archive.ts';
import { defaultLimits } from '../../zip/limits.ts';

/** Cell styles that programs open at most in a workbook (common practice, no source). */
export const greatestFormatCount = 64_000;

/**
 * How many cell styles the cells, rows and columns of a workbook name, whether it has them or not: new ones must come
 * behind those, or cells would take them for theirs. At least 1.
 */
export function namedStyles(archive: Archive): number {
  let greatest = 0;
  for (const { part } of readWorkbookPart(archive, defaultLimits).sheets) {
    readXml(archive, part, defaultLimits, {
      open(name, attributes) {
        if (name !== 'c' && name !== 'row' && name !== 'col') return;
        const style = Number(attributes[name === 'col' ? 'style' : 's'] ?? 0);
        if (style > greatest && style < greatestFormatCount) greatest = Math.floor(style);
      },
    });
  }
  return greatest + 1;
}
