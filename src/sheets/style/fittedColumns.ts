import type { ModelRow } from '../model.ts';
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

/** Widths of the columns of a list: at least their own, and as wide as their longest text where that does not wrap. */
export function fittedWidths(columns: readonly ListColumn[], lines: readonly ModelRow[]): number[] {
  return columns.map(({ width, style }, index) => {
    if (style === 'wrapped') return width;
    const factor = style === 'strong' ? bold : 1;
    return lines.reduce((most, { cells }) => {
      const value = cells[index]?.value;
      if (typeof value !== 'string') return most;
      return Math.max(most, Math.min(widest, Math.ceil(widthOfText(value) * factor)));
    }, width);
  });
}
