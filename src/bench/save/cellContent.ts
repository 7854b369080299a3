import { CellValueType, type ICellData, type Nullable } from '@univerjs/core';
import type { EditedCell } from '../../hosts/file/patch/types.ts';
import { isErrorCode } from '../../hosts/grid/storedText.ts';

export type CellContent = Omit<EditedCell, 'row' | 'column'>;

/** What a cell of the grid holds, as a file stores it. */
export function cellContent(cell: Nullable<ICellData>): CellContent {
  if (!cell) return { value: null };
  const { f: formula, p: rich } = cell;
  const called = typeof formula === 'string' && formula !== '' ? { formula: formula.replace(/^=/, '') } : {};
  const text = rich?.body?.dataStream.replace(/\r?\n?$/, '').replaceAll('\r', '\n');
  const value = cell.v ?? text;
  if (value === undefined || value === '') return { value: null, ...called };
  if (cell.t === CellValueType.BOOLEAN) {
    return { value: value === true || value === 1 || value === 'TRUE', ...called };
  }
  if (cell.t === CellValueType.FORCE_STRING || typeof value === 'boolean') return { value, ...called };
  const number = typeof value === 'number' ? value : cell.t === CellValueType.NUMBER ? Number(value) : NaN;
  if (!Number.isNaN(number)) return { value: number, ...called };
  return isErrorCode(String(value)) ? { value, error: true, ...called } : { value, ...called };
}
