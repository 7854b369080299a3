/** UTF-16 units that the name of a sheet may have (common practice of spreadsheet programs; no public standard). */
export const longestSheetName = 31;

/** A name cut to so many UTF-16 units, without half a character, a blank or an apostrophe at its end. */
export function cutSheetName(name: string, most: number): string {
  const whole = name.slice(0, most).replace(/[\uD800-\uDBFF]$/u, '');
  let end = whole.length;
  while (end > 0 && (whole[end - 1] === "'" || whole.slice(end - 1, end).trim() === '')) end--;
  return whole.slice(0, end);
}

/** A name without the apostrophes at its ends, which no name of a sheet may have. */
export function withoutApostrophes(name: string): string {
  let from = 0;
  let to = name.length;
  while (name[from] === "'") from++;
  while (to > from && name[to - 1] === "'") to--;
  return name.slice(from, to);
}
