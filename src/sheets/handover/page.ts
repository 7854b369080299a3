import type { ThresholdResult } from '../../audit/model/threshold.ts';
import type { Area } from '../../cells/sheet.ts';
import { heightOf } from '../look/lines.ts';
import { layOut, wide, type Entry, type Written } from '../look/layout.ts';
import type { ModelRow } from '../model.ts';
import { styles } from './styles.ts';

/** Widths of the printed columns A to L; what formulas and charts draw on stands to the right of them. */
export const widths = [18, 9, 9, 9, 9, 9, 9, 9, 9, 8, 8, 6] as const;
export const lastColumn = widths.length;
const across = widths.reduce((sum, width) => sum + width, 0);

/** One row; its height follows from its texts where it is not given. */
export interface PageLine {
  readonly entries: readonly Entry[];
  /** Points. */
  readonly height?: number;
  /** The threshold whose numbers it shows. */
  readonly threshold?: ThresholdResult;
}

/** Rows that stay together on a page. */
export type Block = readonly PageLine[];

export interface Page {
  readonly rows: readonly ModelRow[];
  readonly merges: readonly Area[];
  /** Rows with which a new page begins. */
  readonly newPages: readonly number[];
  readonly rowOf: ReadonlyMap<ThresholdResult, number>;
}

/** Blocks one below the other; none is torn by the end of a page that it fits on. */
export function paged(blocks: readonly Block[]): Page {
  const lines = blocks.flat();
  const { rows, merges } = layOut(
    lines.map(({ entries }) => entries),
    widths,
    (written, index) => lines[index]?.height ?? heightFor(written),
  );
  const rowOf = new Map<ThresholdResult, number>();
  lines.forEach(({ threshold }, index) => {
    if (threshold) rowOf.set(threshold, index + 1);
  });
  return { rows, merges, newPages: newPages(blocks, rows), rowOf };
}

/**
 * Height of a page in points of the sheet: Letter between its margins (9.8 in), enlarged as the sheet is shrunk to the
 * page's width (7.7 in; a column of n characters is 7·n + 5 pixels of 1/96 in), less a reserve. A4 holds more.
 */
const pageHeight =
  9.8 * 72 * Math.max(1, widths.reduce((sum, width) => sum + 7 * width + 5, 0) / 96 / 7.7) * 0.97;

function newPages(blocks: readonly Block[], rows: readonly ModelRow[]): number[] {
  const starts: number[] = [];
  let row = 1;
  let used = 0;
  for (const block of blocks) {
    const heights = block.map((_, index) => rows[row - 1 + index]?.height ?? 15);
    const height = heights.reduce((sum, one) => sum + one, 0);
    if (used > 0 && used + height > pageHeight) {
      starts.push(row);
      used = 0;
    }
    // A block taller than a page goes on over the next ones, row by row.
    for (const one of heights) used = used + one > pageHeight ? one : used + one;
    row += block.length;
  }
  return starts;
}

/** How much of its room a text may fill, and points a line: larger and bold letters take more of it. */
const fits: Readonly<Record<string, readonly [fit: number, line: number]>> = {
  machine: [0.54, 25],
  standing: [0.76, 17],
  section: [0.78, 26],
  tag: [0.76, 20],
  place: [0.85, 20],
  caution: [0.82, 16],
  strong: [0.82, 15],
  name: [0.82, 15],
  warned: [0.82, 15],
  label: [1.1, 12.5],
  labelLeft: [1.1, 12.5],
  labelCentred: [1.1, 12.5],
};
const usual = [0.82, 15] as const;
/** Rows are no taller than 409 points (limit of spreadsheet programs, from memory). */
const tallest = 400;

function heightFor({ entries, texts, across: room }: Written): number {
  let height = 15;
  entries.forEach((entry, index) => {
    const style = entry?.style ?? 'text';
    const [fit, line] = fits[style] ?? usual;
    const wraps = styles[style]?.wrap === true;
    const lines = wraps ? heightOf([texts[index] ?? ''], [(room[index] ?? 0) * fit], 100) / 15 : 1;
    height = Math.max(height, lines * line);
  });
  return Math.min(tallest, height);
}

/** A text over the whole page. */
export function line(text: string, style = 'wrapped'): PageLine {
  return { entries: [wide(text, style, lastColumn)] };
}

/** A heading, and the room under its line. */
export function heading(text: string): PageLine[] {
  return [{ entries: [wide(text, 'section', lastColumn)] }, gap];
}

/** Room between a line and the text under it. */
export const gap: PageLine = { entries: [], height: 3 };

/** Room between two parts of the page. */
export const space: PageLine = { entries: [], height: 9 };

/** Long texts in pieces that a row can hold, broken between words where it can be. */
export function piecesOf(text: string): readonly string[] {
  const most = Math.floor(across * 0.85) * 20;
  const pieces: string[] = [];
  let rest = text;
  while (rest.length > most) {
    const space = rest.lastIndexOf(' ', most);
    const end = space > 0 ? space : most;
    pieces.push(rest.slice(0, end));
    rest = rest.slice(end).trimStart();
  }
  return [...pieces, rest];
}

/** A text over the whole page, in as many rows as it needs. */
export function text(words: string, style = 'wrapped'): PageLine[] {
  return piecesOf(words).map((piece) => line(piece, style));
}

/** Rows of a table that stay together. */
const mostTogether = 20;

/** Lines of a table; the audit's own sheets have all of them. */
const mostLines = 120;

/** A heading, headers and lines; what goes over to another page has the headers again. */
export function table(title: readonly PageLine[], headers: PageLine, lines: readonly PageLine[]): Block[] {
  const blocks: Block[] = [];
  const shown = lines.slice(0, mostLines);
  for (let from = 0; from < shown.length; from += mostTogether) {
    blocks.push([...(from === 0 ? title : []), headers, gap, ...shown.slice(from, from + mostTogether)]);
  }
  const more = lines.length - shown.length;
  if (more > 0) blocks.push([line(`And ${more} more, which stand in the audit’s own sheets.`, 'remark')]);
  return blocks;
}
