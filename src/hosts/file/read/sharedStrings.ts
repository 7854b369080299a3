import type { Archive, ZipEntry } from '../zip/archive.ts';
import type { ReadLimits } from '../zip/limits.ts';
import { unescapeText } from './escapes.ts';
import { RichText } from './richText.ts';
import { readXml } from './xml.ts';

/** The texts that cells point to by number (ECMA-376 part 1, section 18.4.9), in order. Throws FileRefused where the part is broken. */
export function readSharedStrings(
  archive: Archive,
  part: ZipEntry,
  limits: ReadLimits,
  intern: (text: string) => string,
  onBytes?: (count: number) => void,
): string[] {
  const strings: string[] = [];
  const current = new RichText(limits.textLength);
  readXml(
    archive,
    part,
    limits,
    {
      open(name) {
        current.open(name);
      },
      close(name) {
        current.close(name);
        if (name === 'si') strings.push(intern(unescapeText(current.take())));
      },
      text(text) {
        current.add(text);
      },
    },
    onBytes,
  );
  return strings;
}
