import { parseUnit } from '../../units/parse.ts';
import type { Unit } from '../../units/unit.ts';
import { type UnitArgument, label } from '../declare/argument.ts';
import { type FunctionError, refused } from '../functionError.ts';
import { blank, errorIn, shown } from './cellKind.ts';
import type { Reader } from './reader.ts';

/** Reads a unit, in any spelling that the project knows, and checks what it measures. */
export function unitReader(argument: UnitArgument): Reader<Unit> {
  const { dimensions, otherwise, such } = argument;
  const name = label(argument);
  const cure = `enter a unit such as ${such}.`;

  function read(text: string): Unit | FunctionError {
    const unit = parseUnit(text);
    if (unit === undefined) return refused(`${name} is ${shown(text)}: ${cure}`);
    if (dimensions !== undefined && !dimensions.includes(unit.dimension)) {
      return refused(`${name} "${unit.text}" measures ${unit.dimension}: ${cure}`);
    }
    return unit;
  }

  return (cell) => {
    if (blank(cell)) return otherwise === undefined ? refused(`${name} is blank: ${cure}`) : read(otherwise);
    if (typeof cell === 'string') return read(cell);
    if (cell === 0) return refused(`${name} is zero or blank: ${cure}`);
    return errorIn(cell) ?? refused(`${name} is ${shown(cell)}: ${cure}`);
  };
}
