import { type Cell, DateCell, ErrorCell } from '../../../cells/cell.ts';
import { serialOfDay } from '../../formats/serialDate.ts';
import type { StoredCell } from '../read/cellValue.ts';
import type { ViewCell } from './types.ts';

/** A cell's stored value as it is, whatever its number format; `cell` is what it stands for. */
export function viewValue(
  cell: Cell,
  { type, text, hasFormula, hasValue }: StoredCell,
  date1904: boolean,
): Pick<ViewCell, 'value' | 'error' | 'uncalculated'> {
  if (cell === null || typeof cell !== 'object') return { value: cell };
  if (cell instanceof ErrorCell) {
    const isUncalculated = hasFormula && (!hasValue || text.trim() === '');
    return isUncalculated ? { value: null, uncalculated: true } : { value: cell.code, error: true };
  }
  if (type !== 'n' && cell instanceof DateCell) return { value: serialOfDay(cell.day, date1904) };
  return { value: Number(text) };
}
