import type { Cell } from '../../../cells/cell.ts';
import type { Sheet } from '../../../cells/sheet.ts';
import { finish, type Steps } from '../../model/steps.ts';
import { headerKey } from './header.ts';
import { mayHeadRecord } from './recordHeaders.ts';

/** Rows that are looked at in one step. */
const stride = 2_000;
/** Cells of a sheet never change once it is read. */
const known = new WeakMap<Sheet, readonly number[]>();

/** The rows of a sheet, from 1 and in order, whose texts may be the headers of a calibration record. */
export function recordRows(sheet: Sheet): readonly number[] {
  return finish(recordRowsInSteps(sheet));
}

/** Looks for those rows some at a time, and remembers them, so that `recordRows` need not look again. */
export function* recordRowsInSteps(sheet: Sheet): Steps<void, readonly number[]> {
  const before = known.get(sheet);
  if (before) return before;
  const rows: number[] = [];
  for (const [index, cells] of sheet.rows.entries()) {
    if (index % stride === stride - 1) yield;
    if (cells.some((cell) => typeof cell === 'string' && mayHeadRecord(cell)) && cells.some(mayBeVolts))
      rows.push(index + 1);
  }
  known.set(sheet, rows);
  return rows;
}

/** Every header of a column of volts has one of these words in it. */
function mayBeVolts(cell: Cell): boolean {
  return typeof cell === 'string' && cell.length <= 60 && /volt|output/u.test(headerKey(cell));
}
