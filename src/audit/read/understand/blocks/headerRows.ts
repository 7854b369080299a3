import { isSpread, isUnderHeaders } from './unitRows.ts';
import { stretchesOf, textsOf, type Stretch } from './stretches.ts';
import { cellText, isBlank } from '../../../../cells/cell.ts';
import { cellAt, type Sheet } from '../../../../cells/sheet.ts';
import { headerKey } from '../../tables/header.ts';
import { isAmount, isYear, labelOf } from './cellKind.ts';
import { arePairs, isPairAt } from './labelPairs.ts';
import { mergeAt, shownAt } from './shownCells.ts';

/** Rows that head a table whose records are rows: `core` has the most labels; groups stand above it, sub-headers and units below. */
export interface HeaderBand {
  readonly core: number;
  readonly first: number;
  readonly last: number;
  /** First and last column of its labels. */
  readonly left: number;
  readonly right: number;
  /** How many of its cells are labels that are known. */
  readonly labels: number;
}

/** Rows of headers above each other at most, on either side of the core. */
const reach = 3;
/** Rows below a header that are looked at for what it heads. */
const sample = 12;

/** Labels in a stretch of a row, where it can head a table: texts alone, at least two of them known. */
function labelsIn(sheet: Sheet, row: number, stretch: Stretch): readonly number[] {
  const { filled, amounts } = textsOf(sheet, row, stretch);
  if (amounts > 0 || filled.length < 2) return [];
  const labels = filled.filter((column) => labelOf(cellAt(sheet, row, column)) !== undefined);
  const fewest = stretch.to < 16_384 ? 3 : 2;
  return labels.length >= fewest && (labels.length >= 3 || filled.length - labels.length <= labels.length * 2)
    ? labels
    : [];
}

/** The bands of headers in a row: one, or several beside each other where other tables' numbers stand in it. */
export function bandsAt(sheet: Sheet, row: number): HeaderBand[] {
  return stretchesOf(sheet, row).flatMap((stretch) => bandAt(sheet, row, stretch) ?? []);
}

/** The band around a row with labels, where what stands below it can be its records. */
function bandAt(sheet: Sheet, row: number, stretch: Stretch): HeaderBand | undefined {
  const labels = labelsIn(sheet, row, stretch);
  if (labels.length < 2 || isForm(sheet, row, labels, stretch)) return undefined;
  let last = row;
  while (last - row < reach && continuesBelow(sheet, last + 1, row, labels, stretch)) last++;
  let first = row;
  while (row - first < reach && continuesAbove(sheet, first - 1, first, labels, stretch)) first--;
  let core = row;
  let best = labels;
  for (let at = row + 1; at <= last; at++) {
    const there = labelsIn(sheet, at, stretch);
    if (there.length > best.length) [core, best] = [at, there];
  }
  const own = new Set(best);
  for (let at = first; at <= last; at++)
    for (const column of textsOf(sheet, at, stretch).filled)
      own.add(column).add(mergeAt(sheet, at, column)?.right ?? column);
  const all = [...own];
  const band = { core, first, last, left: Math.min(...all), right: Math.max(...all), labels: best.length };
  return headsRecords(sheet, band, [...new Set([...labels, ...best])]) ? band : undefined;
}

/** Whether the labels of a row are those of a form, or two words of which one is hardly a label. */
function isForm(sheet: Sheet, row: number, labels: readonly number[], stretch: Stretch): boolean {
  const texts = labels.map((column) => cellText(cellAt(sheet, row, column)));
  const asked = labels.filter((column, at) => {
    const next = cellAt(sheet, row, column + 1);
    return /:\s*$/u.test(texts[at] ?? '') && !isBlank(next) && !labelOf(next);
  });
  if (asked.length * 2 >= labels.length) return true;
  const { filled } = textsOf(sheet, row, stretch);
  if (arePairs(sheet, row, filled)) return true;
  if (labels.length > 2) return false;
  return texts.some((text) => {
    const read = labelOf(text);
    return (
      read !== undefined &&
      read.standard.length === 0 &&
      read.unit === null &&
      read.known < read.words &&
      ![...read.concepts.values()].includes('strong')
    );
  });
}

/**
 * Whether a row below goes on with the header: texts alone, all of them units, labels or short marks, and nothing of a
 * record in the column of names.
 */
function continuesBelow(
  sheet: Sheet,
  row: number,
  core: number,
  labels: readonly number[],
  stretch: Stretch,
): boolean {
  const { filled, amounts } = textsOf(sheet, row, stretch);
  if (filled.length === 0) return false;
  if (isUnderHeaders(sheet, row, { left: labels[0] ?? 1, right: labels.at(-1) ?? 1 })) return true;
  if (amounts > 0) return false;
  const fresh = filled.filter((column) => !isSpread(sheet, row, column));
  if (fresh.length === 0) return true;
  const texts = fresh.map((column) => cellAt(sheet, row, column));
  const name = labels[0] ?? 1;
  if (fresh.includes(name) && (fresh.length < 2 || !labelOf(cellAt(sheet, row, name)))) return false;
  const known = texts.filter((cell) => labelOf(cell) !== undefined || isYear(cell)).length;
  const short = texts.filter((cell) => typeof cell === 'string' && cell.trim().length <= 3).length;
  const grouped = fresh.filter(
    (column) =>
      (mergeAt(sheet, core, column)?.right ?? column) > (mergeAt(sheet, core, column)?.left ?? column),
  ).length;
  if (fresh.includes(name) && known < texts.length) return false;
  return known * 2 > texts.length || (grouped === fresh.length && known + short === texts.length);
}

/** Whether a row above groups the columns below it: texts alone, fewer than below, at least two or one merged over several. */
function continuesAbove(
  sheet: Sheet,
  row: number,
  below: number,
  labels: readonly number[],
  stretch: Stretch,
): boolean {
  if (row < 1) return false;
  const { filled, amounts } = textsOf(sheet, row, stretch);
  const [left, right] = [labels[0] ?? 1, labels.at(-1) ?? 1];
  const inside = filled.filter((column) => column >= left - 1 && column <= right);
  if (inside.length === 0 || inside.length < filled.length || amounts > 0) return false;
  const merged = inside.some((column) => {
    const merge = mergeAt(sheet, row, column);
    return merge && merge.right > merge.left && !(merge.left <= left && merge.right >= right);
  });
  if (merged) return true;
  if (inside.some((column) => isPairAt(sheet, row, column))) return false;
  if (inside.length < 2 || inside.some((column) => /:\s|:$|;/u.test(cellText(cellAt(sheet, row, column)))))
    return false;
  const named = inside.filter(
    (column) => labelOf(cellAt(sheet, row, column)) !== undefined || isYear(cellAt(sheet, row, column)),
  );
  const isPair = inside.length === 2 && !labelOf(cellAt(sheet, row, inside[1] ?? 1));
  return named.length * 2 >= inside.length && !isPair && !isRecordRow(sheet, row, below, stretch);
}

/** Whether a row above is one of another list: no text of it stands over a label of its own. */
function isRecordRow(sheet: Sheet, row: number, below: number, stretch: Stretch): boolean {
  const above = textsOf(sheet, row - 1, stretch);
  return above.amounts > 0 && textsOf(sheet, below, stretch).filled.length > 0;
}

/** Whether the cells below labels are what they name: not labels again, and numbers where numbers belong. */
function headsRecords(sheet: Sheet, band: HeaderBand, labels: readonly number[]): boolean {
  let cells = 0;
  let again = 0;
  let amounts = 0;
  let rows = 0;
  for (let row = band.last + 1; row <= Math.min(band.last + sample, sheet.rows.length); row++) {
    if (repeatsRow(sheet, band.core, row, labels)) continue;
    let any = false;
    for (const column of labels) {
      const cell = shownAt(sheet, row, column);
      if (isBlank(cell)) continue;
      any = true;
      cells++;
      if (isAmount(cell)) amounts++;
      else if (labelOf(cell) && labelOf(cell)?.unit === null && (labelOf(cell)?.standard.length ?? 0) > 0)
        again++;
    }
    if (any) rows++;
    else if (rows > 0) break;
  }
  if (
    rows === 0 ||
    (sureLabels(sheet, band.core, labels) < 2 && standsOverLabels(sheet, band, labels[0] ?? 1))
  )
    return false;
  return again * 3 < cells && (amounts > 0 || labels.length >= 2);
}

/** Labels of a row that hardly mean something else: standard headers, strong words, names with a unit. */
function sureLabels(sheet: Sheet, row: number, labels: readonly number[]): number {
  return labels.filter((column) => {
    const label = labelOf(cellAt(sheet, row, column));
    return (
      label !== undefined &&
      (label.standard.length > 0 || label.unit !== null || [...label.concepts.values()].includes('strong'))
    );
  }).length;
}

/** Whether labels of several quantities follow below the first label of a row: it is a line of a form, or of a table on its side. */
function standsOverLabels(sheet: Sheet, band: HeaderBand, column: number): boolean {
  let filled = 0;
  let labels = 0;
  const concepts = new Set<string>();
  for (let row = band.last + 1; row <= Math.min(band.last + sample, sheet.rows.length); row++) {
    const cell = cellAt(sheet, row, column);
    if (isBlank(cell)) {
      if (filled > 1) break;
      continue;
    }
    filled++;
    const label = labelOf(cell);
    if (!label) continue;
    labels++;
    const [first] = label.concepts.keys();
    if (first !== undefined) concepts.add(first);
  }
  return labels >= 2 && labels * 3 >= filled * 2 && concepts.size >= 2;
}

/** Whether a row has the texts of a header row again. */
export function repeatsRow(sheet: Sheet, header: number, row: number, columns: readonly number[]): boolean {
  let same = 0;
  for (const column of columns) {
    const [one, other] = [cellAt(sheet, header, column), cellAt(sheet, row, column)];
    if (typeof other !== 'string' || headerKey(cellText(one)) !== headerKey(other)) return false;
    same++;
  }
  return same > 0;
}
