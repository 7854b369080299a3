/** Letters of a name that a sheet of paper shows; the workbook that was audited has it in full. */
const longest = 120;

/** A name for paper: in one line, and cut where it is too long to be one. */
export function clipped(name: string, most: number = longest): string {
  const line = name.replace(/[\s\p{Cc}]+/gu, ' ').trim();
  return line.length <= most ? line : `${line.slice(0, most).replace(/[\uD800-\uDBFF]$/u, '')}…`;
}

/** Names one after the other: `A, B and C`. */
export function listed(names: readonly string[]): string {
  const all = names.map((name) => clipped(name));
  const last = all.at(-1) ?? '';
  return all.length < 2 ? last : `${all.slice(0, -1).join(', ')} and ${last}`;
}
