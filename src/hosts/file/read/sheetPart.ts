import { cellAddress } from '../../../cells/address.ts';
import type { Cell } from '../../../cells/cell.ts';
import type { Area } from '../../../cells/sheet.ts';
import { oneLine } from '../zip/refused.ts';
import { lastColumn, parseArea } from './area.ts';
import type { SpendCells } from './cellBudget.ts';
import { CellContent } from './cellContent.ts';
import { BadValue, type CellContext, cellValue } from './cellValue.ts';
import { Grid } from './grid.ts';
import { SheetPlace } from './sheetPlace.ts';
import { ShownRuns } from './shownRuns.ts';
import type { NumberStyle } from './styles.ts';
import { type Attributes, booleanAttribute, type XmlHandler } from './xml.ts';

const plain: NumberStyle = { kind: 'number', shown: '' };

/** Hears a worksheet part (ECMA-376 part 1, section 18.3.1) and holds what it says; refuses cells off the sheet or stored twice. */
export class SheetPart implements XmlHandler {
  readonly hiddenRows = new Set<number>();
  readonly hiddenColumns = new Set<number>();
  readonly merges: Area[] = [];
  readonly shown = new ShownRuns();
  readonly #grid: Grid;
  readonly #place: SheetPlace;
  readonly #content: CellContent;
  readonly #turnToRow = (row: number): void => {
    this.#grid.startRow(row);
  };
  #style: NumberStyle = plain;

  constructor(
    sheetName: string,
    readonly numberStyles: readonly NumberStyle[],
    readonly context: CellContext,
    textLength: number,
    spend: SpendCells,
  ) {
    this.#grid = new Grid(spend);
    this.#place = new SheetPlace(sheetName);
    this.#content = new CellContent(textLength);
  }

  /** The rows, once the part has been read to its end. */
  finish(): (readonly Cell[])[] {
    return this.#grid.finish();
  }

  open(name: string, attributes: Attributes, parents: readonly string[]): void {
    switch (parents.length) {
      case 0:
        if (name !== 'worksheet')
          throw this.#place.refusal('', `is stored as “${oneLine(name)}” and not as a worksheet`);
        return;
      case 1:
        return;
      case 2:
        if (name === 'row' && parents[1] === 'sheetData') this.#startRow(attributes);
        else if (name === 'col' && parents[1] === 'cols') this.#addColumns(attributes);
        else if (name === 'mergeCell' && parents[1] === 'mergeCells') this.#addMerge(attributes['ref'] ?? '');
        return;
      case 3:
        if (name === 'c' && parents[2] === 'row') this.#startCell(attributes);
        return;
      default:
        if (parents[3] === 'c') this.#content.open(name, attributes, parents.length - 4, parents);
    }
  }

  close(name: string, parents: readonly string[]): void {
    if (parents.length >= 4) this.#content.close(name, parents.length - 4, parents);
    else if (parents.length === 3 && name === 'c' && parents[2] === 'row') this.#endCell();
  }

  text(text: string): void {
    this.#content.add(text);
  }

  #startRow(attributes: Attributes): void {
    this.#place.startRow(attributes);
    this.#turnToRow(this.#place.row);
    if (booleanAttribute(attributes['hidden']) === true || Number(attributes['ht'] ?? 1) === 0) {
      this.hiddenRows.add(this.#place.row);
    }
  }

  #startCell(attributes: Attributes): void {
    this.#place.startCell(attributes, this.#turnToRow);
    const style = attributes['s'];
    this.#style = style === undefined ? plain : (this.numberStyles[Number(style)] ?? plain);
    this.#content.start(attributes);
  }

  #endCell(): void {
    if (!this.#content.hasValue && !this.#content.hasFormula) return;
    let cell: Cell;
    try {
      cell = cellValue(this.#content.take(this.#style.kind), this.context);
    } catch (error) {
      throw error instanceof BadValue ? this.#refuseCell(oneLine(error.message, 90)) : error;
    }
    if (!this.#grid.put(this.#place.column, cell)) throw this.#refuseCell('is stored twice');
    if (this.#style.shown !== '' && typeof cell === 'number')
      this.shown.add(this.#place.row, this.#place.column, this.#style.shown);
  }

  #refuseCell(why: string): Error {
    const { row, column } = this.#place;
    return this.#place.refusal(`cell ${cellAddress(row, column)}`, why);
  }

  #addColumns(attributes: Attributes): void {
    const hidden = booleanAttribute(attributes['hidden']) === true || Number(attributes['width'] ?? 1) === 0;
    if (!hidden) return;
    const last = Math.min(Number(attributes['max']), lastColumn);
    for (let column = Math.max(1, Number(attributes['min'])); column <= last; column++)
      this.hiddenColumns.add(column);
  }

  #addMerge(reference: string): void {
    const merge = parseArea(reference);
    if (merge === undefined) {
      throw this.#place.refusal(`merge “${oneLine(reference, 30)}”`, 'lies off the sheet');
    }
    this.merges.push(merge);
  }
}
