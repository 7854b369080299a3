import type { ThresholdResult } from '../../audit/model/threshold.ts';
import type { Area } from '../../cells/sheet.ts';
import { heightOf } from '../style/lines.ts';
import { layOut, type Entry, type Written } from '../style/layout.ts';
import type { CellStyle, ModelRow } from '../model.ts';

/** Letters of a name that a sheet of paper shows; the workbook that was audited has it in full. */
const longest = 120;

/** Names in one sentence; what goes beyond stands elsewhere on the sheet, one by one. */
const mostNames = 30;

/** One row; its height follows from its texts where it is not given. */
export interface PageLine {
  readonly entries: readonly Entry[];
  /** Points. */
  readonly height?: number;
  /** The threshold whose numbers it shows. */
  readonly threshold?: ThresholdResult;
}

export interface LaidOut {
  readonly rows: readonly ModelRow[];
  readonly merges: readonly Area[];
}

/** Lines one below the other in columns of these widths, each as high as its texts need in their styles. */
export function laidOut(
  lines: readonly PageLine[],
  widths: readonly number[],
  styles: Readonly<Record<string, CellStyle>>,
): LaidOut {
  return layOut(
    lines.map(({ entries }) => entries),
    widths,
    (written, index) => lines[index]?.height ?? heightFor(written, styles),
  );
}

/** Height of rows in points of the sheet. */
export function heightOfRows(rows: readonly ModelRow[]): number {
  return rows.reduce((sum, { height }) => sum + (height ?? usualHeight), 0);
}

/**
 * Points of a sheet that a page holds: Letter between its margins (9.8 in), enlarged as the sheet is shrunk to the page's
 * width (7.7 in; a column of n characters is 7·n + 5 pixels of 1/96 in), less a reserve. A4 holds more.
 */
export function pageHeight(widths: readonly number[]): number {
  return 9.8 * 72 * Math.max(1, widths.reduce((sum, width) => sum + 7 * width + 5, 0) / 96 / 7.7) * 0.97;
}

const usualHeight = 15;
/** Rows are no taller than 409 points (limit of spreadsheet programs, from memory). */
const tallest = 400;
const usualSize = 11;

function heightFor({ entries, texts, across }: Written, styles: Readonly<Record<string, CellStyle>>): number {
  let height = 0;
  entries.forEach((entry, index) => {
    const { size = usualSize, bold = false, wrap = false } = styles[entry?.style ?? ''] ?? {};
    // How much of its room a text may fill: larger and bold letters take more of it.
    const fit = ((0.95 * usualSize) / size) * (bold ? 0.92 : 1);
    const line = (usualHeight * size) / usualSize;
    const lines = wrap ? heightOf([texts[index] ?? ''], [(across[index] ?? 0) * fit], 100) / usualHeight : 1;
    height = Math.max(height, lines * line);
  });
  return Math.min(tallest, Math.ceil(height === 0 ? usualHeight : height));
}

/** A name for paper: in one line, and cut where it is too long to be one. */
export function clipped(name: string, most: number = longest): string {
  const line = name.replace(/[\s\p{Cc}]+/gu, ' ').trim();
  return line.length <= most ? line : `${line.slice(0, most).replace(/[\uD800-\uDBFF]$/u, '')}…`;
}

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
