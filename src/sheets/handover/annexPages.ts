import type { ThresholdResult } from '../../audit/model/threshold.ts';
import type { Area } from '../../cells/sheet.ts';
import { wide } from '../style/layout.ts';
import type { ModelRow } from '../model.ts';
import { laidOut, pageHeight, type PageLine } from './paper.ts';
import { styles } from './styles.ts';

/** Widths of the printed columns A to L; what formulas and charts draw on stands to the right of them. */
export const widths = [18, 9, 9, 9, 9, 9, 9, 9, 9, 8, 8, 6] as const;
export const lastColumn = widths.length;
const across = widths.reduce((sum, width) => sum + width, 0);

/** Rows that stay together on a page. */
export type Block = readonly PageLine[];

export interface AnnexPages {
  readonly rows: readonly ModelRow[];
  readonly merges: readonly Area[];
  /** Rows with which a new page begins. */
  readonly newPages: readonly number[];
  readonly rowOf: ReadonlyMap<ThresholdResult, number>;
}

/** Blocks one below the other; none is torn by the end of a page that it fits on. */
export function paged(blocks: readonly Block[]): AnnexPages {
  const lines = blocks.flat();
  const { rows, merges } = laidOut(lines, widths, styles);
  const rowOf = new Map<ThresholdResult, number>();
  lines.forEach(({ threshold }, index) => {
    if (threshold) rowOf.set(threshold, index + 1);
  });
  return { rows, merges, newPages: newPages(blocks, rows), rowOf };
}

function newPages(blocks: readonly Block[], rows: readonly ModelRow[]): number[] {
  const most = pageHeight(widths);
  const starts: number[] = [];
  let row = 1;
  let used = 0;
  for (const block of blocks) {
    const heights = block.map((_, index) => rows[row - 1 + index]?.height ?? 15);
    const height = heights.reduce((sum, one) => sum + one, 0);
    if (used > 0 && used + height > most) {
      starts.push(row);
      used = 0;
    }
    // A block taller than a page goes on over the next ones, row by row.
    for (const one of heights) used = used + one > most ? one : used + one;
    row += block.length;
  }
  return starts;
}

/** A text over the whole page. */
export function line(text: string, style = 'wrapped'): PageLine {
  return { entries: [wide(text, style, lastColumn)] };
}

/** A heading, and the room under its line. */
export function heading(text: string): PageLine[] {
  return [space, { entries: [wide(text, 'section', lastColumn)] }, gap];
}

/** Room between a line and the text under it. */
export const gap: PageLine = { entries: [], height: 3 };

/** Room between two parts of the page. */
export const space: PageLine = { entries: [], height: 9 };

/** Long texts in pieces that a row can hold, broken between words where it can be. */
function piecesOf(text: string): readonly string[] {
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
const mostLines = 240;

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
