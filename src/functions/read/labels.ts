import { type LabelsArgument, label } from '../declare/argument.ts';
import { type FunctionError, refused } from '../functionError.ts';
import { type Range, shapeOf } from '../range.ts';
import { blank, errorIn, shown } from './cellKind.ts';

/**
 * The names in a row or column, in their order, `null` where a cell is blank. Names are the same whatever their case and
 * the spaces about them; a number is a name too. An empty list where all cells are blank.
 */
export function readLabels(argument: LabelsArgument, rows: Range): (string | null)[] | FunctionError {
  const name = label(argument);
  const { rows: down, columns } = shapeOf(rows);
  if (down > 1 && columns > 1) return refused(`${name} is a block: select one row or one column.`);
  const labels: (string | null)[] = [];
  for (const cell of rows.flat()) {
    if (blank(cell)) labels.push(null);
    else if (typeof cell === 'string') labels.push(cell.trim().toLowerCase());
    else if (typeof cell === 'number' && Number.isFinite(cell) && cell !== 0) labels.push(String(cell));
    else if (cell === 0) return refused(`${name} ${labels.length + 1} is zero or blank: enter a name.`);
    else {
      const place = labels.length + 1;
      return errorIn(cell) ?? refused(`${name} ${place} is ${shown(cell)}: enter a name or leave it blank.`);
    }
  }
  return labels.some((one) => one !== null) ? labels : [];
}
