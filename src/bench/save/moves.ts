import type { Worksheet } from '@univerjs/core';
import type { Axis, Step } from '../../hosts/file/patch/move/axis.ts';
import type { SheetMove } from '../../hosts/file/patch/move/types.ts';
import { type Grid, storedBook } from '../../hosts/grid/grid.ts';
import { sheetId } from '../open/gridWorkbook.ts';
import type { OpenedFile } from '../open/openFile.ts';
import { markedColumns, markedRows, type Origin, originOf } from './origins.ts';

/** The rows and columns that were inserted and deleted since the file was opened, and what of it cannot be told, a sentence each. */
export interface FileMoves {
  readonly moves: readonly SheetMove[];
  readonly notes: readonly string[];
}

/** Reads off the marks of rows and columns which came, which went, and which changed their order. */
export function movesOf(grid: Grid, { view, added }: OpenedFile): FileMoves {
  const notes: string[] = [];
  const moves = view.sheets.flatMap(({ name }, index): SheetMove[] => {
    const sheet = storedBook(grid).getSheetBySheetId(sheetId(index));
    if (!sheet || added.has(index)) return [];
    const rows = axisOf(rowOrigins(sheet));
    const columns = axisOf(columnOrigins(sheet));
    if (!rows || !columns) {
      notes.push(
        `Sheet “${name}”: ${rows ? 'columns' : 'rows'} were put into another order here; the copy has their cells in that order, while tables, rules, charts and names of the file stay at their places.`,
      );
    }
    const move = { sheet: name, rows: rows ?? [], columns: columns ?? [] };
    return move.rows.length + move.columns.length === 0 ? [] : [move];
  });
  return { moves, notes };
}

function rowOrigins(sheet: Worksheet): Placed[] {
  return markedRows(sheet).flatMap(([row, data]) => placed(row, originOf(data)));
}

function columnOrigins(sheet: Worksheet): Placed[] {
  return markedColumns(sheet).flatMap(([column, data]) => placed(column, originOf(data)));
}

/** Where a marked row or column stands and stood, both from 1. */
interface Placed {
  readonly now: number;
  readonly before: number;
}

function placed(at: number, origin: Origin | undefined): Placed[] {
  return origin ? [{ now: at + 1, before: origin.place }] : [];
}

/** The steps that lead from the places before to those now; `undefined` where the order changed. */
function axisOf(marks: readonly Placed[]): Axis | undefined {
  const steps: Step[] = [];
  let last: Placed = { now: 0, before: 0 };
  for (const mark of marks.toSorted((a, b) => a.now - b.now)) {
    if (mark.before <= last.before) return undefined;
    const more = mark.now - last.now - (mark.before - last.before);
    // New rows take after the row above them; between blank ones none can be told from another.
    if (more !== 0) {
      steps.push({ at: last.before + 1, removed: Math.max(0, -more), inserted: Math.max(0, more) });
    }
    last = mark;
  }
  return steps;
}
