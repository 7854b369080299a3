import {
  type Argument,
  type SwitchArgument,
  label,
  type LabelsArgument,
  type UnitArgument,
  type MembersArgument,
} from '../declare/argument.ts';
import { numberReader, choiceReader, seriesReader, isNumeric } from './cellReaders.ts';
import { type Reader, blank, errorIn, shown } from './cellKind.ts';
import { type Range, isRange, shapeOf } from '../range.ts';
import { refused, type FunctionError } from '../functionError.ts';
import { parseUnit } from '../../units/parse.ts';
import type { Unit } from '../../units/unit.ts';
import { inRange, ranges } from '../declare/numberRange.ts';

/** The reader of an argument, made once for all calls. Members and series are read from their whole range. */
export function readerOf(argument: Argument): Reader<unknown> {
  switch (argument.kind) {
    case 'number':
      return numberReader(argument);
    case 'choice':
      return choiceReader(argument);
    case 'unit':
      return unitReader(argument);
    case 'members':
      return (cell) => readMembers(argument, asRows(cell));
    case 'switch':
      return switchReader(argument);
    case 'labels':
      return (cell) => readLabels(argument, asRows(cell));
    case 'series': {
      const read = seriesReader(argument);
      return (cell) => read(asRows(cell));
    }
  }
}

function asRows(cell: unknown): Range {
  return isRange(cell) ? cell : [[cell]];
}

/** Reads whether something holds: TRUE or FALSE, 1 or 0, or one of the argument's words, in any case. */
function switchReader(argument: SwitchArgument): Reader<boolean> {
  const { on, off, otherwise } = argument;
  const cure = `enter TRUE or FALSE.`;
  const known = new Map<unknown, boolean>([
    [1, true],
    [0, false],
    [true, true],
    [false, false],
    ...['true', '1', ...on].map((word) => [word, true] as const),
    ...['false', '0', ...off].map((word) => [word, false] as const),
  ]);

  return (cell) => {
    if (blank(cell)) return otherwise;
    const found = known.get(typeof cell === 'string' ? cell.trim().toLowerCase() : cell);
    return found ?? errorIn(cell) ?? refused(`${label(argument)} is ${shown(cell)}: ${cure}`);
  };
}

/**
 * The names in a row or column, in their order, `null` where a cell is blank. Names are the same whatever their case and
 * the spaces about them; a number is a name too. An empty list where all cells are blank.
 */
function readLabels(argument: LabelsArgument, rows: Range): (string | null)[] | FunctionError {
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

/** Reads a unit, in any spelling that the project knows, and checks what it measures. */
function unitReader(argument: UnitArgument): Reader<Unit> {
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

/**
 * The thresholds of a group's members, from a row, a column or a block: `Infinity` for a text or an error, a member
 * that cannot act; blank cells are no members. A number as text is refused, since its meaning would be guessed.
 */
function readMembers(
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
