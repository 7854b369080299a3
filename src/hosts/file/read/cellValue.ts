import { type Cell, DateCell, ErrorCell } from '../../../cells/cell.ts';
import { unescapeText } from './escapes.ts';
import { type NumberKind, shownNumber } from '../../formats/numberFormat.ts';
import { dayOfIso, durationOfIso, timeOfIso } from '../../formats/dates.ts';

/** A cell as its part stores it. */
export interface StoredCell {
  /** The `t` attribute: `n` where absent. */
  readonly type: string;
  readonly text: string;
  /** Whether a value stands in the cell at all; an empty one (`<v/>`) does. */
  readonly hasValue: boolean;
  readonly hasFormula: boolean;
  readonly kind: NumberKind;
}

/** What the whole workbook shares for reading its cells. */
export interface CellContext {
  readonly sharedStrings: readonly string[];
  readonly date1904: boolean;
  readonly intern: (text: string) => string;
}

/** A stored value that means nothing; `message` says why, without saying where. */
export class BadValue extends Error {}

const decimalNumber = /^\s*[+-]?(\d+(?:\.\d*)?|\.\d+)([eE][+-]?\d+)?\s*$/;

/**
 * The cell a stored cell stands for (ECMA-376 part 1, section 18.18.11, ST_CellType). An empty text is an empty
 * cell; a formula whose result was never stored is an ErrorCell saying so. Throws BadValue where the stored
 * value does not fit its type.
 */
export function cellValue(stored: StoredCell, context: CellContext): Cell {
  const { type, text } = stored;
  if (!stored.hasValue || (text === '' && type !== 'str')) {
    return nothing(stored);
  }
  switch (type) {
    case 'n':
      return numberCell(stored, context.date1904);
    case 's':
      return sharedString(text, context.sharedStrings);
    case 'str':
    case 'inlineStr':
      return text === '' ? null : context.intern(unescapeText(text));
    case 'b':
      return booleanCell(text);
    case 'e':
      return new ErrorCell(context.intern(text));
    case 'd':
      return isoCell(text, context.date1904);
    default:
      throw new BadValue(`has the unknown type “${type}”`);
  }
}

function nothing({ hasFormula }: StoredCell): Cell {
  return hasFormula ? new ErrorCell('no stored result') : null;
}

function numberCell(stored: StoredCell, date1904: boolean): Cell {
  const { text, kind } = stored;
  const value = Number(text);
  if (!decimalNumber.test(text) || !Number.isFinite(value)) {
    if (text.trim() === '') return nothing(stored);
    throw new BadValue(`holds “${text}” where a number should be`);
  }
  return shownNumber(value, kind, date1904);
}

function sharedString(text: string, strings: readonly string[]): Cell {
  const value = /^\s*\d+\s*$/.test(text) ? strings[Number(text)] : undefined;
  if (value === undefined)
    throw new BadValue(`points to text number “${text}”, which the file does not hold`);
  return value === '' ? null : value;
}

function booleanCell(text: string): boolean {
  const value = text.trim();
  if (value === '1' || value === 'true') return true;
  if (value === '0' || value === 'false') return false;
  throw new BadValue(`holds “${text}” where true or false should be`);
}

/** A date, a time of day (which a spreadsheet counts as one of its day 0), or a duration, which is a number of days. */
function isoCell(text: string, date1904: boolean): Cell {
  const iso = text.trim();
  const day = dayOfIso(iso);
  if (day !== undefined) return new DateCell(day);
  const time = timeOfIso(iso);
  if (time !== undefined) return shownNumber(time, 'date', date1904);
  const duration = durationOfIso(iso);
  if (duration === undefined) throw new BadValue(`holds “${text}” where a date should be`);
  return duration;
}
