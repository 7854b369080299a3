import { FileRefused } from '../zip/refused.ts';
import { csvRecords } from './csvRecords.ts';

export type Separator = '\t' | ';' | ',';

/** Best guess first where everything else is equal: a comma may stand in any text, a tab hardly ever. */
const separators: readonly Separator[] = ['\t', ';', ','];
const recordsLookedAt = 50;

/**
 * What separates the fields of a text, and the text without the line that says so. A first line such as `sep=;`
 * decides; else the separator found, outside quotes, in most of the first records, and among equals the one
 * found equally often in most of them. A text without any is one column.
 */
export function separatorOf(text: string): { separator: Separator; body: string } {
  const stated = /^sep=([\t;,])(?:\r\n|\n|\r|$)/i.exec(text);
  if (stated !== null) return { separator: stated[1] as Separator, body: text.slice(stated[0].length) };
  let best = { separator: ',' as Separator, present: 0, alike: 0 };
  for (const separator of separators) {
    const score = scoreOf(fieldCounts(text, separator));
    if (score.present > best.present || (score.present === best.present && score.alike > best.alike)) {
      best = { separator, ...score };
    }
  }
  return { separator: best.separator, body: text };
}

/** Records that have the separator, and how many of those have it the commonest number of times. */
function scoreOf(counts: readonly number[]): { present: number; alike: number } {
  const split = counts.filter((count) => count > 1);
  const alike = split.map((count) => split.filter((other) => other === count).length);
  return { present: split.length, alike: Math.max(0, ...alike) };
}

function fieldCounts(text: string, separator: Separator): number[] {
  const counts: number[] = [];
  try {
    for (const record of csvRecords(text, separator)) {
      counts.push(record.length);
      if (counts.length === recordsLookedAt) break;
    }
  } catch (error) {
    // A quote that never ends with this separator may end with another; the reading itself reports it.
    if (!(error instanceof FileRefused)) throw error;
  }
  return counts;
}
