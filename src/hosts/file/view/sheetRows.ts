import type { Attributes } from '../read/branches.ts';
import type { Area } from '../../../cells/sheet.ts';
import { parseArea } from '../read/area.ts';
import type { ParsedCell, SheetKeeper } from '../read/worksheet.ts';
import { booleanAttribute, type XmlHandler } from '../read/xml.ts';
import { RuleList } from './rules.ts';
import { SheetFrame } from './sheetFrame.ts';
import type { ViewStyles } from './styles.ts';
import type { ViewCell, ViewRow, ViewRule } from './types.ts';
import { type Cell, DateCell, ErrorCell } from '../../../cells/cell.ts';
import { serialOfDay } from '../../formats/dates.ts';
import type { StoredCell } from '../read/cellValue.ts';
import { shiftedCopies } from '../../formats/shiftFormula.ts';
import { shownFormula } from '../../formats/storedFormula.ts';

interface Master {
  readonly row: number;
  readonly column: number;
  readonly copy: (down: number, right: number) => string;
}

/**
 * The formulas of one sheet's cells as the sheet is read, each in full: of a shared one the first cell has the text, and
 * those that share it come after (ECMA-376 part 1, section 18.3.1.40).
 */
class SharedFormulas {
  readonly #masters = new Map<string, Master>();

  /** The cell's formula as people type it; undefined where it has none: in a table of what-ifs, or where what it shares is missing. */
  formulaAt(row: number, column: number, attributes: Attributes, text: string): string | undefined {
    const { t: type, si: group } = attributes;
    if (type === 'dataTable') return undefined;
    if (type !== 'shared' || group === undefined) return text === '' ? undefined : shownFormula(text);
    if (text !== '') {
      const shown = shownFormula(text);
      this.#masters.set(group, { row, column, copy: shiftedCopies(shown) });
      return shown;
    }
    const master = this.#masters.get(group);
    return master?.copy(row - master.row, column - master.column);
  }
}

/** A row while its cells come in. */
type GrowingRow = { -readonly [Key in keyof ViewRow]: ViewRow[Key] } & { cells: ViewCell[] };

/** Keeps what a grid shows of a sheet. */
export class SheetRows implements SheetKeeper {
  readonly frame = new SheetFrame();
  readonly around: XmlHandler;
  readonly #rules: RuleList;
  readonly #rows = new Map<number, GrowingRow>();
  readonly #formulas = new SharedFormulas();
  readonly #date1904: boolean;
  readonly #styleCount: number;
  #row: GrowingRow = { row: 0, cells: [] };
  readonly #styleOf = (stored: string | undefined): number => {
    const style = Number(stored ?? 0);
    return Number.isInteger(style) && style > 0 && style < this.#styleCount ? style : 0;
  };

  constructor({ styles, shades }: ViewStyles, date1904: boolean) {
    this.#styleCount = styles.length;
    this.#date1904 = date1904;
    const rules = new RuleList(shades);
    this.#rules = rules;
    this.around = {
      open: (name, attributes, parents) => {
        rules.open(name, attributes, parents);
        if (parents.length <= 3) this.frame.hear(name, attributes, this.#styleOf);
      },
      close: (name) => {
        rules.close(name);
      },
      text: (text) => {
        rules.text(text);
      },
    };
  }

  /** The rows that say something, in order, once the part has been read to its end. */
  rows(): ViewRow[] {
    return [...this.#rows.values()]
      .filter((row) => row.cells.length > 0 || Object.keys(row).length > 2)
      .sort((a, b) => a.row - b.row);
  }

  /** The rules that colour cells, in the order in which they apply. */
  rules(): readonly ViewRule[] {
    return this.#rules.ordered();
  }

  row(row: number, attributes: Attributes | undefined): void {
    this.#row = this.#rows.get(row) ?? { row, cells: [] };
    this.#rows.set(row, this.#row);
    if (attributes === undefined) return;
    const height = Number(attributes['ht']);
    const hidden = booleanAttribute(attributes['hidden']) === true || height === 0;
    const style = booleanAttribute(attributes['customFormat']) === true ? this.#styleOf(attributes['s']) : 0;
    if (height > 0 && height < 410) this.#row.height = height;
    if (hidden) this.#row.hidden = true;
    if (style > 0) this.#row.style = style;
  }

  cell(heard: ParsedCell): boolean {
    const { cells } = this.#row;
    const at = placeIn(cells, heard.column);
    const present = cells[at];
    if (present?.column !== heard.column) {
      // A plain cell may be there to undo the look of its row or column.
      cells.splice(at, 0, this.#viewCell(heard));
      return true;
    }
    const isBlank = present.value === null && present.uncalculated !== true;
    if (heard.value !== null && !isBlank) return false;
    if (isBlank) cells[at] = this.#viewCell(heard);
    return true;
  }

  merge(area: Area): void {
    this.frame.merges.push(area);
  }

  #viewCell({ row, column, attributes, value, stored, formula, formulaAttributes }: ParsedCell): ViewCell {
    const shown = stored.hasFormula
      ? this.#formulas.formulaAt(row, column, formulaAttributes, formula)
      : undefined;
    const isArray = stored.hasFormula && formulaAttributes['t'] === 'array';
    const array = isArray ? parseArea(formulaAttributes['ref'] ?? '') : undefined;
    return {
      column,
      ...viewValue(value, stored, this.#date1904),
      ...(shown === undefined ? {} : { formula: shown }),
      ...(array === undefined ? {} : { array }),
      style: this.#styleOf(attributes['s']),
    };
  }
}

/** Where a cell of a column stands or belongs among cells in ascending order; behind them all in nearly every file. */
function placeIn(cells: readonly ViewCell[], column: number): number {
  let low = 0;
  let high = cells.length;
  if (high === 0 || (cells[high - 1]?.column ?? 0) < column) return high;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((cells[middle]?.column ?? 0) < column) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** A cell's stored value as it is, whatever its number format; `cell` is what it stands for. */
function viewValue(
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
