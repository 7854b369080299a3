import type { Attributes } from './branches.ts';
import { cellAddress } from '../../../cells/address.ts';
import type { Cell } from '../../../cells/cell.ts';
import type { Area } from '../../../cells/sheet.ts';
import { oneLine } from '../zip/refused.ts';
import { parseRange } from './area.ts';
import { CellContent } from './cellContent.ts';
import { BadValue, type CellContext, cellValue, type StoredCell } from './cellValue.ts';
import { SheetExtent } from './sheetExtent.ts';
import { SheetPlace } from './sheetPlace.ts';
import type { NumberStyle } from './styles.ts';
import type { XmlHandler } from './xml.ts';
import type { SpendCells } from './cellBudget.ts';

/** A cell as its part stores it, and what that stands for. */
export interface ParsedCell {
  readonly row: number;
  readonly column: number;
  readonly attributes: Attributes;
  readonly value: Cell;
  readonly stored: StoredCell;
  /** The text that its number format shows with a number; empty where there is none. */
  readonly shown: string;
  /** Its formula as the file stores it; empty where it has none, or shares that of another cell. */
  readonly formula: string;
  readonly formulaAttributes: Attributes;
}

/** What is made of a worksheet part: whoever keeps it decides no more what is accepted. */
export interface SheetKeeper {
  /** Cells of this row come next; `attributes` are those of its element, or undefined where a cell alone named the row. */
  row(row: number, attributes: Attributes | undefined): void;
  /** Keeps a cell, a blank one for its look at most; false where one that is not blank stands there and this one is not blank. */
  cell(cell: ParsedCell): boolean;
  merge(area: Area): void;
  /** Hears what stands around the rows. */
  readonly around?: XmlHandler;
}

/** Everything a sheet's cells are read by. */
export interface SheetContext extends CellContext {
  /** The number format of each cell style. */
  readonly numberStyles: readonly NumberStyle[];
  readonly textLength: number;
  readonly spend: SpendCells;
}

const plain: NumberStyle = { kind: 'number', shown: '' };

/**
 * Hears a worksheet part (ECMA-376 part 1, section 18.3.1) for its keeper. It alone decides what is refused: cells and
 * merges off the sheet, values that do not fit their type, cells with two values, more cells than there may be.
 */
export class WorksheetPart implements XmlHandler {
  readonly #place: SheetPlace;
  readonly #content: CellContent;
  readonly #extent: SheetExtent;
  readonly #turnToRow = (row: number): void => {
    this.#extent.turnTo(row);
    this.keeper.row(row, undefined);
  };
  #attributes: Attributes = {};

  constructor(
    sheetName: string,
    readonly context: SheetContext,
    readonly keeper: SheetKeeper,
  ) {
    this.#place = new SheetPlace(sheetName);
    this.#content = new CellContent(context.textLength);
    this.#extent = new SheetExtent(context.spend);
  }

  open(name: string, attributes: Attributes, parents: readonly string[]): void {
    const depth = parents.length;
    if (depth === 0) {
      if (name !== 'worksheet')
        throw this.#place.refusal('', `is stored as “${oneLine(name)}” and not as a worksheet`);
    } else if (parents[1] !== 'sheetData') {
      if (depth === 2 && name === 'mergeCell' && parents[1] === 'mergeCells') this.#addMerge(attributes);
      this.keeper.around?.open(name, attributes, parents);
    } else if (depth === 2) {
      if (name === 'row') this.#startRow(attributes);
    } else if (depth === 3) {
      if (name === 'c' && parents[2] === 'row') this.#startCell(attributes);
    } else if (parents[3] === 'c') this.#content.open(name, attributes, depth - 4, parents);
  }

  close(name: string, parents: readonly string[]): void {
    const depth = parents.length;
    if (parents[1] !== 'sheetData') this.keeper.around?.close?.(name, parents);
    else if (depth >= 4) this.#content.close(name, depth - 4, parents);
    else if (depth === 3 && name === 'c' && parents[2] === 'row') this.#endCell();
    if (depth === 0) this.#extent.finish();
  }

  text(text: string): void {
    this.#content.add(text);
    this.keeper.around?.text?.(text);
  }

  #startRow(attributes: Attributes): void {
    this.#place.startRow(attributes);
    this.#extent.turnTo(this.#place.row);
    this.keeper.row(this.#place.row, attributes);
  }

  #startCell(attributes: Attributes): void {
    this.#place.startCell(attributes, this.#turnToRow);
    this.#attributes = attributes;
    this.#content.start(attributes);
  }

  #endCell(): void {
    const { row, column } = this.#place;
    const attributes = this.#attributes;
    const content = this.#content;
    const { kind, shown } = this.context.numberStyles[Number(attributes['s'] ?? 0)] ?? plain;
    const stored = content.take(kind);
    let value: Cell;
    try {
      value = cellValue(stored, this.context);
    } catch (error) {
      throw error instanceof BadValue ? this.#refuseCell(oneLine(error.message, 90)) : error;
    }
    this.#extent.store(column, value !== null);
    const { formulaText: formula, formulaAttributes } = content;
    if (!this.keeper.cell({ row, column, attributes, value, stored, shown, formula, formulaAttributes })) {
      throw this.#refuseCell('is stored twice');
    }
  }

  #refuseCell(why: string): Error {
    const { row, column } = this.#place;
    return this.#place.refusal(`cell ${cellAddress(row, column)}`, why);
  }

  #addMerge({ ref = '' }: Attributes): void {
    const merge = parseRange(ref);
    if (merge === undefined) throw this.#place.refusal(`merge “${oneLine(ref, 30)}”`, 'lies off the sheet');
    this.#extent.cover(merge);
    this.keeper.merge(merge);
  }
}
