import type { Archive, ZipEntry } from '../zip/archive.ts';
import type { ReadLimits } from '../zip/limits.ts';
import { readXml } from './xml.ts';

/** A link from one part to another inside the file (ECMA-376 part 2, section 6.5). */
export interface Relationship {
  readonly id: string;
  /** Last word of the relationship type, the same in transitional and strict files: `worksheet`, `styles`, … */
  readonly kind: string;
  /** Name of the target part, from the root, without a leading slash. */
  readonly target: string;
}

/**
 * The links of a part, `''` for those of the file itself; none where it has no relationships part. Links out of
 * the file are left out: nothing outside is ever read. Throws FileRefused where the part is broken.
 */
export function readRelationships(archive: Archive, source: string, limits: ReadLimits): Relationship[] {
  const slash = source.lastIndexOf('/') + 1;
  const part: ZipEntry | undefined = archive.get(
    `${source.slice(0, slash)}_rels/${source.slice(slash)}.rels`,
  );
  if (part === undefined) return [];
  const found: Relationship[] = [];
  readXml(archive, part, limits, {
    open(name, attributes) {
      const target = attributes['Target'];
      if (name !== 'Relationship' || target === undefined || attributes['TargetMode'] === 'External') return;
      const type = attributes['Type'] ?? '';
      found.push({
        id: attributes['Id'] ?? '',
        kind: type.slice(type.lastIndexOf('/') + 1),
        target: targetIn(archive, source.slice(0, slash), target),
      });
    },
  });
  return found;
}

/** The part that a link names: as it is written, or with the codes of a web address undone where only that is there. */
function targetIn(archive: Archive, folder: string, target: string): string {
  const plain = target.replaceAll('\\', '/');
  const segments: string[] = [];
  for (const segment of (plain.startsWith('/') ? plain : folder + plain).split('/')) {
    if (segment === '..') segments.pop();
    else if (segment !== '' && segment !== '.') segments.push(segment);
  }
  const name = segments.join('/');
  return archive.get(name) === undefined ? unescapeUri(name) : name;
}

function unescapeUri(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
