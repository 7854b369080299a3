import type { Area } from '../../cells/sheet.ts';
import { heightOf } from '../look/lines.ts';
import type { ModelCell, ModelRow, ModelValue } from '../model.ts';
import { cell } from '../cells.ts';

/** Widths of columns A to I: eight narrow ones, and one for sentences. */
export const widths = [17, 15, 14, 14, 14, 10, 10, 9, 62] as const;
export const lastColumn = widths.length;

/** A cell that reaches over several columns, its text wrapped. */
export interface Wide {
  readonly value: ModelValue;
  readonly style: string;
  /** Columns it covers. */
  readonly span: number;
}

/** A cell that may be empty, or reach over several columns. */
export type Entry = ModelCell | Wide | undefined;

export interface Layout {
  readonly rows: readonly ModelRow[];
  readonly merges: readonly Area[];
}

/**
 * Rows of a summary one below the other; merged cells and heights follow from their entries and the widths of the
 * columns, in characters.
 */
export function layOut(lines: readonly (readonly Entry[])[], columns: readonly number[] = widths): Layout {
  const merges: Area[] = [];
  const rows = lines.map((entries, index): ModelRow => {
    const row = index + 1;
    const cells: (ModelCell | undefined)[] = [];
    const texts: string[] = [];
    const across: number[] = [];
    for (const entry of entries) {
      const left = cells.length + 1;
      const span = entry && 'span' in entry ? entry.span : 1;
      const right = left + span - 1;
      if (span > 1) merges.push({ top: row, left, bottom: row, right });
      const style = entry?.style ?? 'text';
      const own = cell(entry?.value ?? null, style);
      cells.push(own);
      // The look of a merged cell is that of all cells under it.
      for (let column = left; column < right; column++) cells.push(own && { value: null, style });
      texts.push(typeof own?.value === 'string' ? own.value : '');
      across.push(widthOf(columns, left, right));
    }
    return { height: entries.length === 0 ? 9 : heightFor(entries, texts, across), cells };
  });
  return { rows, merges };
}

const tall: Readonly<Record<string, number>> = { title: 26, section: 26, headline: 24 };

function heightFor(entries: readonly Entry[], texts: readonly string[], across: readonly number[]): number {
  const own = tall[entries[0]?.style ?? ''] ?? 0;
  return Math.max(own, heightOf(texts, across, 12));
}

function widthOf(columns: readonly number[], left: number, right: number): number {
  return columns.slice(left - 1, right).reduce((sum, width) => sum + width, 0);
}

/** A text over columns of the page, from where it stands. */
export function wide(value: ModelValue, style: string, span: number): Wide {
  return { value, style, span };
}

/** A heading over the whole page. */
export function heading(text: string, span: number = lastColumn): readonly Entry[] {
  return [wide(text, 'section', span)];
}

/** A line of quiet text over the whole page. */
export function remark(text: string, span: number = lastColumn): readonly Entry[] {
  return [wide(text, 'remark', span)];
}
