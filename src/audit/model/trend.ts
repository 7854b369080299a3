import type { Cell } from '../../cells/cell.ts';

/** A table of recorded readings, as whoever reads it delivers its rows: they can be gone through more than once. */
export interface TrendSource {
  /** Name of the file or sheet. */
  readonly name: string;
  readonly from: 'file' | 'workbook';
  /** Cells from column A on, row 1 first. */
  readonly rows: () => Iterable<readonly Cell[]>;
  /** How texts that are numbers were meant, where every cell is a text by nature of the format. */
  readonly plainText?: { readonly decimal: '.' | ',' };
}

/** What a trend is read by where it does not say so itself. */
export interface TrendClock {
  /** `UTC`, an offset such as `+01:00`, or a name such as `Europe/Berlin`. */
  readonly zone: string | null;
  readonly dates: 'day first' | 'month first' | null;
}
