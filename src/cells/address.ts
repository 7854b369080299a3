/** UTF-16 units that the name of a sheet may have (common practice of spreadsheet programs; no public standard). */
export const longestSheetName = 31;

/** Letters of a column counted from 1: 1 → `A`, 27 → `AA`, 16384 → `XFD`. */
export function columnLetters(column: number): string {
  let letters = '';
  for (let rest = column; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}

/** Column number, from 1, of its letters in any case: `A` → 1, `XFD` → 16384; `NaN` where it is no column. */
export function columnNumber(letters: string): number {
  if (!/^[A-Za-z]{1,3}$/.test(letters)) return NaN;
  let column = 0;
  for (const letter of letters.toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  return column <= 16384 ? column : NaN;
}

/** A cell's address as people write it: (14, 6) → `F14`. */
export function cellAddress(row: number, column: number): string {
  return `${columnLetters(column)}${row}`;
}

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
