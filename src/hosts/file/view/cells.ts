import { DateCell, ErrorCell } from '../../../cells/cell.ts';
import { serialOfDay } from '../../formats/serialDate.ts';
import { type CellContext, cellValue, type StoredCell } from '../read/cellValue.ts';
import type { ViewCell } from './types.ts';

type ViewValueOf = Pick<ViewCell, 'value' | 'error' | 'uncalculated'>;

/** A cell's stored value as it is, whatever its number format. Throws BadValue where it does not fit its type. */
export function viewValue(stored: StoredCell, context: CellContext): ViewValueOf {
  if (!stored.hasValue) return none(stored);
  const cell = cellValue(stored, context);
  if (cell === null || typeof cell !== 'object') return { value: cell };
  if (cell instanceof DateCell) return { value: serialOfDay(cell.day, context.date1904) };
  if (!(cell instanceof ErrorCell)) return { value: cell.percent / 100 };
  return stored.text === '' ? none(stored) : { value: cell.code, error: true };
}

function none({ hasFormula }: StoredCell): ViewValueOf {
  return hasFormula ? { value: null, uncalculated: true } : { value: null };
}
