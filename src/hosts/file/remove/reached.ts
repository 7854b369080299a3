import { readRelationships } from '../read/relationships.ts';
import { type Archive, partKey } from '../zip/archive.ts';
import { defaultLimits } from '../zip/limits.ts';

/**
 * Keys of the parts that are reached from these by links, themselves included; `''` is the file itself. Only links that
 * `passing` lets through are followed.
 */
export function reached(
  archive: Archive,
  starts: readonly string[],
  passing: (source: string, id: string) => boolean,
): ReadonlySet<string> {
  const found = new Set<string>();
  const open = [...starts];
  for (let source = open.pop(); source !== undefined; source = open.pop()) {
    if (found.has(partKey(source))) continue;
    found.add(partKey(source));
    for (const { id, target } of readRelationships(archive, source, defaultLimits))
      if (passing(source, id) && archive.get(target)) open.push(target);
  }
  return found;
}
