import type { Area } from '../../../../cells/sheet.ts';
import { lastColumn, lastRow } from '../../read/area.ts';

/** Rows or columns taken out and put in at one place of a sheet. */
export interface Step {
  /** From 1, as the sheet was: the first one taken out, or the one before which new ones come. */
  readonly at: number;
  readonly removed: number;
  readonly inserted: number;
}

/** What happened to the rows or to the columns of a sheet: steps in ascending order that do not overlap. */
export type Axis = readonly Step[];

/** Where a row or column stands afterwards; `undefined` where it was taken out. */
export function moved(axis: Axis, place: number): number | undefined {
  const isGone = axis.some(({ at, removed }) => place >= at && place < at + removed);
  return isGone ? undefined : landing(axis, place);
}

/** As `moved`; of one that was taken out, where the next one behind it stands. */
export function landing(axis: Axis, place: number): number {
  let shift = 0;
  for (const { at, removed, inserted } of axis) {
    if (at > place) break;
    // Of one that was taken out, only those before it are missing.
    shift += inserted - Math.min(removed, place - at);
  }
  return place + shift;
}

/**
 * Where a run of rows or columns stands afterwards, grown by what came between; `undefined` where nothing is left of it.
 * One that reaches to the edge of the sheet, `edge`, still does.
 */
export function movedSpan(
  axis: Axis,
  first: number,
  last: number,
  edge: number,
): readonly [first: number, last: number] | undefined {
  let from = first;
  let to = last;
  for (const { at, removed } of axis) if (from >= at && from < at + removed) from = at + removed;
  for (const { at, removed } of axis.toReversed()) if (to >= at && to < at + removed) to = at - 1;
  if (from > to) return undefined;
  const start = landing(axis, from);
  const end = last === edge ? edge : Math.min(landing(axis, to), edge);
  return start > edge ? undefined : [start, end];
}

/** Whether a run of rows or columns is cut: something was taken out of it or put into it. */
export function cuts(axis: Axis, first: number, last: number): boolean {
  return axis.some(
    ({ at, removed, inserted }) =>
      (removed > 0 && at <= last && at + removed > first) || (inserted > 0 && at > first && at <= last),
  );
}

/** Rows and columns inserted into a sheet and deleted from it. */
export interface SheetMove {
  /** The sheet's name in the workbook. */
  readonly sheet: string;
  readonly rows: Axis;
  readonly columns: Axis;
}

/** The moves of a workbook by the sheet's name in lower case. */
export type Moves = ReadonlyMap<string, SheetMove>;

/** Where an area of a sheet lies afterwards; `undefined` where nothing is left of it. */
export function movedArea({ rows, columns }: SheetMove, area: Area): Area | undefined {
  const down = movedSpan(rows, area.top, area.bottom, lastRow);
  const across = movedSpan(columns, area.left, area.right, lastColumn);
  if (!down || !across) return undefined;
  return { top: down[0], bottom: down[1], left: across[0], right: across[1] };
}
