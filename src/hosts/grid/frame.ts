import type { IFreeze, IRange } from '@univerjs/core';
import type { Area } from '../../cells/sheet.ts';

/** Merged areas as the grid counts rows and columns, from 0. */
export function mergedRanges(merges: readonly Area[]): IRange[] {
  return merges.map(({ top, left, bottom, right }) => ({
    startRow: top - 1,
    startColumn: left - 1,
    endRow: bottom - 1,
    endColumn: right - 1,
  }));
}

/** So many frozen rows at the top and columns at the left; none where 0. */
export function frozenAt(rows: number, columns: number): IFreeze {
  return {
    xSplit: columns,
    ySplit: rows,
    startRow: rows === 0 ? -1 : rows,
    startColumn: columns === 0 ? -1 : columns,
  };
}
