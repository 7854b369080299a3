export type Separator = '\t' | ';' | ',';

/** Best guess first where everything else is equal: a comma may stand in any text, a tab hardly ever. */
const separators: readonly Separator[] = ['\t', ';', ','];
const charactersLookedAt = 2 ** 16;
const linesLookedAt = 50;
const quotedField = /(^|[\t;,\r\n])"(?:[^"]|"")*"/g;

/**
 * What separates the fields of a text, and the text without the line that says so. A first line such as `sep=;`
 * decides; else the separator that most of the first lines have outside quotes, and among equals the one that
 * most of them have equally often. A comma between digits says nothing in a line that has a semicolon or tab:
 * it may be a decimal comma. A text without any separator is one column.
 */
export function separatorOf(text: string): { separator: Separator; body: string } {
  const stated = /^sep=([\t;,])(?:\r\n|\n|\r|$)/i.exec(text);
  if (stated !== null) return { separator: stated[1] as Separator, body: text.slice(stated[0].length) };
  const lines = text
    .slice(0, charactersLookedAt)
    .replace(quotedField, '$1')
    .split(/\r\n|\n|\r/, linesLookedAt);
  let best = { separator: ',' as Separator, present: 0, alike: 0 };
  for (const separator of separators) {
    const score = scoreOf(lines.map((line) => countIn(line, separator)));
    if (score.present > best.present || (score.present === best.present && score.alike > best.alike)) {
      best = { separator, ...score };
    }
  }
  return { separator: best.separator, body: text };
}

function countIn(line: string, separator: Separator): number {
  const mayBeDecimal = separator === ',' && /[\t;]/.test(line);
  const counted = mayBeDecimal ? line.replace(/(?<=\d),(?=\d)/g, '') : line;
  return counted.split(separator).length - 1;
}

/** Lines that have the separator, and how many of those have it the commonest number of times. */
function scoreOf(counts: readonly number[]): { present: number; alike: number } {
  const split = counts.filter((count) => count > 0);
  const alike = split.map((count) => split.filter((other) => other === count).length);
  return { present: split.length, alike: Math.max(0, ...alike) };
}
