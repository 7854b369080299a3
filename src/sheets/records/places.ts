import type { ShownRecord } from './shown.ts';

/** Letters that fit across the printed columns. */
const across = 125;

/** Key figures stand in two lists side by side, each of this many rows. */
export const figureRows = 8;
const chartRows = 24;

/** Rows of a block, counted from 1 as the spreadsheet does. */
export interface BlockPlaces {
  readonly top: number;
  /** First row of the key figures. */
  readonly figures: number;
  /** Header row of the thresholds. */
  readonly thresholds: number;
  /** First row of the texts. */
  readonly texts: number;
  readonly firstPoint: number;
  readonly lastPoint: number;
  /** First and last row that the charts cover. */
  readonly charts: { readonly top: number; readonly bottom: number };
  /** Row before that of the next block's title. */
  readonly bottom: number;
}

/** Where the parts of a block stand whose title is in row `top`. */
export function placesOf(record: ShownRecord, top: number): BlockPlaces {
  const figures = top + 2;
  const thresholds = figures + figureRows + 1;
  const texts = thresholds + 1 + record.thresholds.length;
  const firstPoint = texts + blockTexts(record).length + 2;
  const lastPoint = firstPoint + record.gaps.length - 1;
  const charts = { top: lastPoint + 2, bottom: lastPoint + 1 + chartRows };
  return { top, figures, thresholds, texts, firstPoint, lastPoint, charts, bottom: charts.bottom + 2 };
}

/** Everything that the block says in words, a line a row. */
export function blockTexts({ others, findings }: ShownRecord): readonly string[] {
  return [...others, ...findings].flatMap(linesOf);
}

/** A text in lines that fit across a page, broken between words where it can be. */
export function linesOf(text: string): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/u).filter((part) => part !== '')) {
    if (line !== '' && line.length + 1 + word.length > across) {
      lines.push(line);
      line = `  ${word}`;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return line === '' ? lines : [...lines, line];
}
