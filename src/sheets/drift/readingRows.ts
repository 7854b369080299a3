import type { ModelCell, ModelRow } from '../model.ts';
import { cell } from '../cells.ts';
import { decimalsFor } from '../look/significant.ts';
import type { Drifting } from './driftColumns.ts';

const headers = [
  'Tag',
  'Sheet',
  'Found in',
  'Row',
  'Date',
  'Reading',
  'Unit',
  'Sensitivity',
  'Days from the first',
  'Counts',
] as const;

/** Headers of the readings; `readingColumn` names two of their columns. */
export const readingHeaders: readonly (ModelCell | undefined)[] = headers.map((header) =>
  cell(header, 'header'),
);

/** The readings of a channel, one a row, in the order of their dates; those from before a correction have no days. */
export function* readingRows({ tag, configured, drift }: Drifting): Generator<ModelRow> {
  const { readings, unit } = drift;
  const start = dayOf(readings.find(({ counts }) => counts)?.date ?? '');
  const look = `level${Math.min(decimalsFor(configured) + 1, 6)}`;
  for (const { date, sensitivity, asLeft, from, sheet, row, counts } of readings) {
    yield {
      cells: [
        cell(tag, 'strong'),
        cell(sheet, 'text'),
        cell(from, 'text'),
        cell(row, 'count'),
        cell(date, 'text'),
        cell(asLeft ? 'as left' : 'as found', 'text'),
        cell(unit, 'text'),
        cell(sensitivity, look),
        cell(counts ? dayOf(date) - start : null, 'count'),
        cell(counts ? 'yes' : 'no', 'text'),
      ],
    };
  }
}

function dayOf(date: string): number {
  return Date.parse(date) / 86_400_000;
}
