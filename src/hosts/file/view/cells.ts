import { DateCell, ErrorCell } from '../../../cells/cell.ts';
import { serialOfDay } from '../../formats/serialDate.ts';
import { type CellContext, cellValue, type StoredCell } from '../read/cellValue.ts';
import type { ViewCell } from './types.ts';

/** A cell's stored value as it is, whatever its number format. Throws BadValue where it does not fit its type. */
export function viewValue(stored: StoredCell, context: CellContext): Pick<ViewCell, 'value' | 'error'> {
  if (!stored.hasValue) return { value: null };
  const cell = cellValue(stored, context);
  if (cell === null || typeof cell !== 'object') return { value: cell };
  if (cell instanceof DateCell) return { value: serialOfDay(cell.day, context.date1904) };
  if (!(cell instanceof ErrorCell)) return { value: cell.percent / 100 };
  return stored.text === '' ? { value: null } : { value: cell.code, error: true };
}
