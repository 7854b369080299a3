import { cellAddress } from '../../../cells/address.ts';
import { oneLine } from '../zip/refused.ts';
import { parseArea } from '../read/area.ts';
import type { SpendCells } from '../read/cellBudget.ts';
import { CellContent } from '../read/cellContent.ts';
import { BadValue, type CellContext } from '../read/cellValue.ts';
import { SheetPlace } from '../read/sheetPlace.ts';
import { type Attributes, booleanAttribute, type XmlHandler } from '../read/xml.ts';
import { viewValue } from './cells.ts';
import { SharedFormulas } from './formulas.ts';
import { RuleList } from './rules.ts';
import { SheetFrame } from './sheetFrame.ts';
import type { ViewLooks } from './styles.ts';
import type { ViewCell, ViewRow, ViewRule } from './types.ts';

/** A row while its cells come in. */
type GrowingRow = { -readonly [Key in keyof ViewRow]: ViewRow[Key] } & { cells: ViewCell[] };

/** Hears a worksheet part and holds what a grid shows of it. Throws FileRefused as the reader of workbooks does. */
export class ViewPart implements XmlHandler {
  readonly frame = new SheetFrame();
  readonly #rules: RuleList;
  readonly #rows = new Map<number, GrowingRow>();
  readonly #formulas = new SharedFormulas();
  readonly #place: SheetPlace;
  readonly #content: CellContent;
  #row: GrowingRow = { row: 0, cells: [] };
  #style = 0;
  readonly #turnToRow = (row: number): void => {
    this.#spend(1);
    this.#row = this.#rows.get(row) ?? { row, cells: [] };
    this.#rows.set(row, this.#row);
  };
  readonly #styleOf = (stored: string | undefined): number => {
    const style = Number(stored ?? 0);
    return Number.isInteger(style) && style > 0 && style < this.#styleCount ? style : 0;
  };
  readonly #context: CellContext;
  readonly #styleCount: number;
  readonly #spend: SpendCells;

  /** `spend` hears of every row and every cell that is kept. */
  constructor(
    sheetName: string,
    context: CellContext,
    { styles, shades }: ViewLooks,
    textLength: number,
    spend: SpendCells,
  ) {
    this.#place = new SheetPlace(sheetName);
    this.#content = new CellContent(textLength);
    this.#context = context;
    this.#styleCount = styles.length;
    this.#rules = new RuleList(shades);
    this.#spend = spend;
  }

  /** The rows that say something, in order, once the part has been read to its end. */
  rows(): ViewRow[] {
    const told = [...this.#rows.values()].filter(
      (row) => row.cells.length > 0 || Object.keys(row).length > 2,
    );
    for (const row of told) {
      row.cells.sort((a, b) => a.column - b.column);
      row.cells.forEach(({ column }, index) => {
        if (row.cells[index + 1]?.column === column) {
          throw this.#place.refusal(`cell ${cellAddress(row.row, column)}`, 'is stored twice');
        }
      });
    }
    return told.sort((a, b) => a.row - b.row);
  }

  /** The rules that colour cells, in the order in which they apply. */
  rules(): readonly ViewRule[] {
    return this.#rules.ordered();
  }

  open(name: string, attributes: Attributes, parents: readonly string[]): void {
    if (parents.length === 0) {
      if (name !== 'worksheet') {
        throw this.#place.refusal('', `is stored as “${oneLine(name)}” and not as a worksheet`);
      }
    } else if (parents[1] !== 'sheetData') {
      this.#rules.open(name, attributes, parents);
      if (parents.length <= 3) this.frame.hear(name, attributes, this.#styleOf);
    } else if (parents.length === 2) {
      if (name === 'row') this.#startRow(attributes);
    } else if (parents.length === 3) {
      if (name === 'c' && parents[2] === 'row') this.#startCell(attributes);
    } else if (parents[3] === 'c') this.#content.open(name, attributes, parents.length - 4, parents);
  }

  close(name: string, parents: readonly string[]): void {
    if (parents[1] !== 'sheetData') {
      this.#rules.close(name);
      return;
    }
    if (parents.length >= 4) this.#content.close(name, parents.length - 4, parents);
    else if (parents.length === 3 && name === 'c' && parents[2] === 'row') this.#endCell();
  }

  text(text: string): void {
    this.#content.add(text);
    this.#rules.text(text);
  }

  #startRow(attributes: Attributes): void {
    this.#place.startRow(attributes);
    this.#turnToRow(this.#place.row);
    const height = Number(attributes['ht']);
    const hidden = booleanAttribute(attributes['hidden']) === true || height === 0;
    const style = booleanAttribute(attributes['customFormat']) === true ? this.#styleOf(attributes['s']) : 0;
    if (height > 0 && height < 410) this.#row.height = height;
    if (hidden) this.#row.hidden = true;
    if (style > 0) this.#row.style = style;
  }

  #startCell(attributes: Attributes): void {
    this.#place.startCell(attributes, this.#turnToRow);
    this.#style = this.#styleOf(attributes['s']);
    this.#content.start(attributes);
  }

  #endCell(): void {
    const content = this.#content;
    const { row, column } = this.#place;
    const { hasFormula, formulaAttributes, formulaText } = content;
    // A plain cell may be there to undo the look of its row or column.
    this.#spend(1);
    let value: Pick<ViewCell, 'value' | 'error' | 'uncalculated'>;
    try {
      value = viewValue(content.take('number'), this.#context);
    } catch (error) {
      if (!(error instanceof BadValue)) throw error;
      throw this.#place.refusal(`cell ${cellAddress(row, column)}`, oneLine(error.message, 90));
    }
    const formula = hasFormula
      ? this.#formulas.formulaAt(row, column, formulaAttributes, formulaText)
      : undefined;
    const array =
      hasFormula && formulaAttributes['t'] === 'array'
        ? parseArea(formulaAttributes['ref'] ?? '')
        : undefined;
    this.#row.cells.push({
      column,
      ...value,
      ...(formula === undefined ? {} : { formula }),
      ...(array === undefined ? {} : { array }),
      style: this.#style,
    });
  }
}
