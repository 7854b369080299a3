import { layOut as layOutIn, wide, type Entry, type Layout, type Written } from '../style/layout.ts';
import { heightOf } from '../style/lines.ts';
import { tones } from '../style/palette.ts';
import { frameStyles, levelStyles } from '../style/styles.ts';
import type { CellStyle } from '../model.ts';
export { wide, type Entry } from '../style/layout.ts';

/** Styles of sheets that sum up. */
export const summaryStyles: Readonly<Record<string, CellStyle>> = {
  ...frameStyles,
  ...levelStyles,
  headline: { bold: true, size: 13, color: tones.ink, wrap: true, valign: 'center' },
  section: { bold: true, size: 13, color: tones.ink, valign: 'center' },
  remark: { color: tones.quiet, wrap: true, valign: 'top' },
  headerRight: { ...frameStyles.header, align: 'right' },
  name: { bold: true, wrap: true, valign: 'top' },
  nameLink: { bold: true, linked: true, wrap: true, valign: 'top' },
  fall: { numberFormat: '[<0.001]"< 0.001"_0;0.000_0', align: 'center', valign: 'top' },
  countLeft: { numberFormat: '0', align: 'left', valign: 'top' },
};

/** Widths of columns A to K: eight narrow ones, one for what is wrong, one for what to do, one for where it stands. */
export const widths = [16, 16, 14, 10, 9, 9, 11, 8, 48, 38, 20] as const;
export const lastColumn = widths.length;

/**
 * Rows of a summary one below the other; merged cells and heights follow from their entries and the widths of the
 * columns, in characters.
 */
export function layOut(lines: readonly (readonly Entry[])[], columns: readonly number[] = widths): Layout {
  return layOutIn(lines, columns, heightFor);
}

/** What is left of the page behind its first `count` columns. */
export function rest(count: number): number {
  return lastColumn - count;
}

const tall: Readonly<Record<string, number>> = { title: 26, section: 26, headline: 24 };

function heightFor({ entries, texts, across }: Written): number {
  if (entries.length === 0) return 9;
  const own = tall[entries[0]?.style ?? ''] ?? 0;
  // Fingerprints differ in width from audit to audit; the height of their rows does not.
  const wrapping = across.map((width, index) => (entries[index]?.style === 'oneLine' ? 0 : width));
  return Math.max(own, heightOf(texts, wrapping, 12));
}

/** A heading over the whole page. */
export function heading(text: string, span: number = lastColumn): readonly Entry[] {
  return [wide(text, 'section', span)];
}

/** A line of quiet text over the whole page. */
export function remark(text: string, span: number = lastColumn): readonly Entry[] {
  return [wide(text, 'remark', span)];
}
