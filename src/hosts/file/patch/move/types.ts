import type { Area } from '../../../../cells/sheet.ts';
import { lastColumn, lastRow } from '../../read/area.ts';
import { type Axis, movedSpan } from './axis.ts';

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
