import { type MembersArgument, label } from '../declare/argument.ts';
import { inRange, ranges } from '../declare/numberRange.ts';
import { type FunctionError, refused } from '../functionError.ts';
import { blank, errorIn, shown } from './cellKind.ts';
import { isNumeric } from './number.ts';

/**
 * The thresholds of a group's members, from a row, a column or a block: `Infinity` for a text or an error, a member
 * that cannot act; blank cells are no members. A number as text is refused, since its meaning would be guessed.
 */
export function readMembers(
  argument: MembersArgument,
  rows: readonly (readonly unknown[])[],
): number[] | FunctionError {
  const name = label(argument);
  const members: number[] = [];
  for (const cell of rows.flat()) {
    if (blank(cell)) continue;
    if (typeof cell === 'number' && inRange(cell, ranges.positive)) {
      members.push(cell);
    } else if (cell === 0) {
      return refused(`${name} has a cell that is zero or blank: leave it out of the range.`);
    } else if (typeof cell === 'number') {
      return refused(`${name} has ${shown(cell)}: enter amounts above 0, or text if it cannot act.`);
    } else if (typeof cell === 'string' && isNumeric(cell)) {
      return refused(`${name} has ${shown(cell)} in a range: enter it as a number.`);
    } else if (typeof cell === 'string' || errorIn(cell) !== undefined) {
      members.push(Infinity);
    } else {
      return refused(`${name} has ${shown(cell)}: enter numbers, or text if it cannot act.`);
    }
  }
  return members.length > 0 ? members : refused(`${name} is blank: select the cells of the members.`);
}
