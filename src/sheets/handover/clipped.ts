/** Letters of a name that a sheet of paper shows; the workbook that was audited has it in full. */
const longest = 120;

/** A name for paper: in one line, and cut where it is too long to be one. */
export function clipped(name: string, most: number = longest): string {
  const line = name.replace(/[\s\p{Cc}]+/gu, ' ').trim();
  return line.length <= most ? line : `${line.slice(0, most).replace(/[\uD800-\uDBFF]$/u, '')}…`;
}

/** Names in one sentence; what goes beyond stands elsewhere on the sheet, one by one. */
const mostNames = 30;

/** Names one after the other: `A, B and C`; of more than `most` the first, and how many more; each cut at `letters`. */
export function listed(
  names: readonly string[],
  most: number = mostNames,
  letters: number = longest,
): string {
  const all = names.slice(0, most).map((name) => clipped(name, letters));
  const more = names.length - all.length;
  if (more > 0) all.push(`${more} more`);
  const last = all.at(-1) ?? '';
  return all.length < 2 ? last : `${all.slice(0, -1).join(', ')} and ${last}`;
}
