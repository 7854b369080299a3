import { BooleanNumber, type IRowData, type Worksheet } from '@univerjs/core';
import type { Area } from '../../cells/sheet.ts';
import type { EditedColumns, EditedRow, SheetEdits } from '../../hosts/file/patch/types.ts';
import type { SheetView } from '../../hosts/file/view/types.ts';
import { reference } from '../../hosts/formats/reference.ts';
import { areaOf } from '../../hosts/grid/read/readWorkbook.ts';
import { markedColumns, markedRows, originOf } from './origins.ts';

/** Widths, heights and merged cells of a sheet that are not as they were when it was opened. */
export function frameEdits(
  sheet: Worksheet,
  view: SheetView,
): Pick<SheetEdits, 'columns' | 'rows' | 'merges'> {
  const columns = columnEdits(sheet);
  const rows = rowEdits(sheet);
  const merges = sheet.getMergeData().map(areaOf);
  return {
    ...(columns.length > 0 && { columns }),
    ...(rows.length > 0 && { rows }),
    ...(!sameAreas(merges, view.merges) && { merges }),
  };
}

function columnEdits(sheet: Worksheet): EditedColumns[] {
  return markedColumns(sheet).flatMap(([column, { w: width, hd }]) => {
    const origin = originOf(sheet.getConfig().columnData[column]);
    const hidden = hd === BooleanNumber.TRUE;
    if (width === origin?.size && hidden === (origin?.hidden === BooleanNumber.TRUE)) return [];
    return [{ first: column + 1, last: column + 1, width: digitsOf(sheet.getColumnWidth(column)), hidden }];
  });
}

/** Width as files store it, from pixels, so that it gives as many pixels again (ECMA-376 part 1, section 18.3.1.13). */
function digitsOf(pixels: number): number {
  return Math.trunc((Math.round(pixels) / 7) * 256) / 256;
}

function rowEdits(sheet: Worksheet): EditedRow[] {
  const usual = sheet.getConfig().defaultRowHeight;
  return markedRows(sheet).flatMap(([row, data]): EditedRow[] => {
    const origin = originOf(data);
    const pixels = shownHeight(data);
    const changed = pixels !== undefined && pixels !== (origin ? origin.size : usual);
    const height = changed ? (pixels * 72) / 96 : undefined;
    const hidden = data.hd === BooleanNumber.TRUE;
    const hiding = hidden !== (origin?.hidden === BooleanNumber.TRUE);
    if (height === undefined && !hiding) return [];
    return [{ row: row + 1, ...(height !== undefined && { height }), ...(hiding && { hidden }) }];
  });
}

/** A row's height that somebody gave it; `undefined` where the grid fits it to its cells by itself. */
function shownHeight({ h: given, ah: fitted, ia: fits, ...row }: Partial<IRowData>): number | undefined {
  if (fits === BooleanNumber.FALSE) return given;
  return originOf(row)?.size === undefined ? given : (fitted ?? given);
}

/** Whether merged areas are the same, in any order. */
export function sameAreas(some: readonly Area[], others: readonly Area[]): boolean {
  const names = new Set(others.map(reference));
  return some.length === others.length && some.every((area) => names.has(reference(area)));
}
