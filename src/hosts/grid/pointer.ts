import type { IDisposable } from '@univerjs/core';
import { cellAddress } from '../../cells/address.ts';
import type { SheetArea } from '../port/port.ts';
import { type Grid, openBook } from './grid.ts';
import { scrollTo, shownSheet } from './selection.ts';

/** The colour of what is pointed at, its frame and what lies over its cells: told from the grid's own green selection. */
const look = { stroke: '#a8360b', strokeWidth: 2, fill: 'rgba(239, 199, 94, 0.28)' } as const;

/** Columns to the left of what is pointed at that stay in view. */
const seenBeside = 4;

/** A range that a grid on a screen can mark; a grid without one only brings the sheet to the front. */
interface Markable {
  readonly highlight?: (style: typeof look) => IDisposable;
}

/** Points at one area of the grid at a time, with a frame that is no part of the workbook. */
export function pointer(grid: Grid): (place: SheetArea | null) => void {
  let mark: IDisposable | undefined;
  return (place) => {
    mark?.dispose();
    mark = undefined;
    if (!place) return;
    const { top, left, bottom, right } = place.area;
    const sheet = shownSheet(grid, place.sheet, cellAddress(top, left));
    const front = openBook(grid).setActiveSheet(sheet.getSheetId());
    const range = front.getRange(top - 1, left - 1, bottom - top + 1, right - left + 1);
    mark = (range as Markable).highlight?.(look);
    // What stands to the left of it, such as tags, stays in view where there is room.
    scrollTo(front, top, Math.max(1, left - seenBeside));
  };
}
