import { cell } from '../cells.ts';
import type { ModelCell, ModelRow } from '../model.ts';
import { heightOf } from './lines.ts';
import { widthOfText } from './textWidth.ts';

/** Columns that a text on one line may make wider, in characters; a longer one is cut. */
const widest = 40;
/** Bold letters are wider by about so much (from memory). */
const bold = 1.08;

/** A column of a list: its least width in characters, and the style of its cells; that of numbers may differ by line. */
interface ListColumn {
  readonly width: number;
  readonly style: unknown;
}

/** Styles whose texts wrap. */
const wrapping: ReadonlySet<unknown> = new Set(['oneLine', 'wrapped']);
/** Styles of texts. */
const worded: ReadonlySet<unknown> = new Set([...wrapping, 'text', 'strong']);

/** Widths of the columns of a list: at least their own, and as wide as their longest text where that does not wrap. */
export function fittedWidths(columns: readonly ListColumn[], lines: readonly ModelRow[]): number[] {
  return columns.map(({ width, style }, index) => {
    if (wrapping.has(style)) return width;
    const factor = style === 'strong' ? bold : 1;
    return lines.reduce((most, { cells }) => {
      const value = cells[index]?.value;
      if (typeof value !== 'string') return most;
      return Math.max(most, Math.min(widest, Math.ceil(widthOfText(value) * factor)));
    }, width);
  });
}

/** The line as tall as its texts that wrap. */
export function fittedLine(columns: readonly ListColumn[], { cells, ...line }: ModelRow): ModelRow {
  const texts = cells.map((made) => (typeof made?.value === 'string' ? made.value : ''));
  const widths = columns.map(({ width, style }) => (wrapping.has(style) ? width : 0));
  return { ...line, height: heightOf(texts, widths), cells };
}

/** Headers of a list: those of numbers stand in the middle of their columns. */
export function headerCells(
  columns: readonly (ListColumn & { readonly header: string })[],
): (ModelCell | undefined)[] {
  return columns.map(({ header, style }) => cell(header, worded.has(style) ? 'header' : 'headerCentred'));
}
