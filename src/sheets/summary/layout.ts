import { layOut as layOutIn, wide, type Entry, type Layout, type Written } from '../look/layout.ts';
import { heightOf } from '../look/lines.ts';

export { wide, type Entry } from '../look/layout.ts';

/** Widths of columns A to I: eight narrow ones, and one for sentences. */
export const widths = [17, 15, 14, 14, 14, 10, 10, 9, 62] as const;
export const lastColumn = widths.length;

/** Rows of the summary one below the other; merged cells and heights follow from their entries. */
export function layOut(lines: readonly (readonly Entry[])[]): Layout {
  return layOutIn(lines, widths, heightFor);
}

const tall: Readonly<Record<string, number>> = { title: 26, section: 26, headline: 24 };

function heightFor({ entries, texts, across }: Written): number {
  if (entries.length === 0) return 9;
  const own = tall[entries[0]?.style ?? ''] ?? 0;
  return Math.max(own, heightOf(texts, across, 12));
}

/** A heading over the whole page. */
export function heading(text: string): readonly Entry[] {
  return [wide(text, 'section', lastColumn)];
}

/** A line of quiet text over the whole page. */
export function remark(text: string): readonly Entry[] {
  return [wide(text, 'remark', lastColumn)];
}
