import { readXml } from '../read/xml.ts';
import type { Archive, ZipEntry } from '../zip/archive.ts';
import { FileRefused } from '../zip/refused.ts';
import type { ReadLimits } from '../zip/limits.ts';

/** Cells count light before dark, the theme has them the other way round (common practice, no source). */
const order = 'lt1 dk1 lt2 dk2 accent1 accent2 accent3 accent4 accent5 accent6 hlink folHlink'.split(' ');

/** Colours of a workbook without a theme of its own: black on white, and the accents of the time before themes changed (from memory). */
export const plainTheme: readonly string[] =
  'FFFFFF 000000 EEECE1 1F497D 4F81BD C0504D 9BBB59 8064A2 4BACC6 F79646 0000FF 800080'.split(' ');

/** The theme's colours (ECMA-376 part 1, section 20.1.6.2) in the order cells count them; those of a workbook without a theme where the part is broken, as it holds nothing but colours. */
export function readTheme(
  archive: Archive,
  part: ZipEntry | undefined,
  limits: ReadLimits,
): readonly string[] {
  if (part === undefined) return plainTheme;
  const found = new Map<string, string>();
  try {
    readXml(archive, part, limits, {
      open(name, attributes, parents) {
        if (parents.at(-2) !== 'clrScheme') return;
        const value = name === 'sysClr' ? attributes['lastClr'] : attributes['val'];
        if (value !== undefined && /^[0-9a-f]{6}$/i.test(value)) {
          found.set(parents.at(-1) ?? '', value.toUpperCase());
        }
      },
    });
  } catch (error) {
    if (!(error instanceof FileRefused)) throw error;
    return plainTheme;
  }
  return order.map((name, index) => found.get(name) ?? plainTheme[index] ?? '000000');
}
