import type { ModelCell } from '../../../sheets/model.ts';
import type { Written } from '../station/records.ts';
import { writtenCell } from './writtenCell.ts';

/** A column of a hand-kept sheet: what of a record stands in it. */
export interface SheetColumn<Entry> {
  readonly header: string;
  /** In characters. */
  readonly width: number;
  readonly of: (entry: Entry) => Written | undefined;
  /** Texts stand in the middle: units and other short words. */
  readonly centred?: true;
}

/** The header cells of a table. */
export function headerCells(columns: readonly { readonly header: string }[]): ModelCell[] {
  return columns.map(({ header }) => ({ value: header, style: 'header' }));
}

/** One row's cells. */
export function entryCells<Entry>(
  columns: readonly SheetColumn<Entry>[],
  entry: Entry,
): (ModelCell | undefined)[] {
  return columns.map(({ of, centred }) => {
    const cell = writtenCell(of(entry));
    return centred && typeof cell?.value === 'string' ? { ...cell, style: 'word' } : cell;
  });
}
