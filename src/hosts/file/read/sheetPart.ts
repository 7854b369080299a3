import { cellAddress } from '../../../cells/address.ts';
import type { Cell } from '../../../cells/cell.ts';
import type { Area } from '../../../cells/sheet.ts';
import { FileRefused, oneLine } from '../zip/refused.ts';
import { lastColumn, lastRow, parseAddress, parseArea } from './area.ts';
import type { SpendCells } from './cellBudget.ts';
import { BadValue, type CellContext, cellValue } from './cellValue.ts';
import { Grid } from './grid.ts';
import type { NumberKind } from '../../formats/numberFormat.ts';
import { RichText } from './richText.ts';
import { type Attributes, booleanAttribute, type XmlHandler } from './xml.ts';

/** Hears a worksheet part (ECMA-376 part 1, section 18.3.1) and holds what it says; refuses cells off the sheet or stored twice. */
export class SheetPart implements XmlHandler {
  readonly hiddenRows = new Set<number>();
  readonly merges: Area[] = [];
  readonly #grid: Grid;
  readonly #inline: RichText;
  #row = 0;
  #rowIsStated = false;
  #column = 0;
  #type = 'n';
  #kind: NumberKind = 'number';
  #text = '';
  #inValue = false;
  #hasValue = false;
  #hasFormula = false;

  constructor(
    readonly sheetName: string,
    readonly numberKinds: readonly NumberKind[],
    readonly context: CellContext,
    textLength: number,
    spend: SpendCells,
  ) {
    this.#grid = new Grid(spend);
    this.#inline = new RichText(textLength);
  }

  /** The rows, once the part has been read to its end. */
  finish(): (readonly Cell[])[] {
    return this.#grid.finish();
  }

  open(name: string, attributes: Attributes, parents: readonly string[]): void {
    switch (parents.length) {
      case 0:
        if (name !== 'worksheet')
          throw this.#refusal('', `is stored as “${oneLine(name)}” and not as a worksheet`);
        return;
      case 2:
        if (name === 'row' && parents[1] === 'sheetData') this.#startRow(attributes);
        else if (name === 'mergeCell' && parents[1] === 'mergeCells') this.#addMerge(attributes['ref'] ?? '');
        return;
      case 3:
        if (name === 'c' && parents[2] === 'row') this.#startCell(attributes);
        return;
      case 4:
        if (parents[3] === 'c') this.#startPartOfCell(name);
        return;
      default:
        if (parents[4] === 'is') this.#inline.open(name);
    }
  }

  close(name: string, parents: readonly string[]): void {
    if (parents.length === 4) this.#inValue = false;
    else if (parents.length === 3 && name === 'c' && parents[2] === 'row') this.#endCell();
    else if (parents.length > 4 && parents[4] === 'is') this.#inline.close(name);
  }

  text(text: string): void {
    if (this.#inValue) this.#text += text;
    else this.#inline.add(text);
  }

  #startRow(attributes: Attributes): void {
    const stated = attributes['r'];
    this.#rowIsStated = stated !== undefined;
    const row = stated === undefined ? this.#row + 1 : Number(stated);
    if (!Number.isInteger(row) || row < 1 || row > lastRow) {
      throw this.#refusal(
        '',
        `has a row “${oneLine(stated ?? String(row), 20)}”; rows go from 1 to ${lastRow}`,
      );
    }
    this.#turnToRow(row);
    if (booleanAttribute(attributes['hidden']) === true || Number(attributes['ht'] ?? 1) === 0) {
      this.hiddenRows.add(row);
    }
  }

  #turnToRow(row: number): void {
    this.#row = row;
    this.#column = 0;
    this.#grid.startRow(row);
  }

  #startCell(attributes: Attributes): void {
    const address = attributes['r'];
    if (address === undefined) this.#column++;
    else this.#moveTo(address);
    if (this.#column > lastColumn)
      throw this.#refusal(`row ${this.#row}`, `has more than ${lastColumn} columns`);
    this.#type = attributes['t'] ?? 'n';
    const style = attributes['s'];
    this.#kind = style === undefined ? 'number' : (this.numberKinds[Number(style)] ?? 'number');
    this.#text = '';
    this.#hasValue = false;
    this.#hasFormula = false;
  }

  #moveTo(address: string): void {
    const position = parseAddress(address);
    if (position === undefined) throw this.#refusal(`cell “${oneLine(address, 20)}”`, 'lies off the sheet');
    if (position.row !== this.#row) {
      if (this.#rowIsStated)
        throw this.#refusal(`cell ${oneLine(address, 20)}`, `is stored in row ${this.#row}`);
      this.#rowIsStated = true;
      this.#turnToRow(position.row);
    }
    this.#column = position.column;
  }

  #startPartOfCell(name: string): void {
    if (name === 'v') {
      this.#inValue = true;
      this.#hasValue = true;
    } else if (name === 'f') this.#hasFormula = true;
    else if (name === 'is') this.#hasValue = true;
  }

  #endCell(): void {
    if (!this.#hasValue && !this.#hasFormula) return;
    const text = this.#type === 'inlineStr' ? this.#inline.take() : this.#text;
    const where = `cell ${cellAddress(this.#row, this.#column)}`;
    let cell: Cell;
    try {
      cell = cellValue(
        { type: this.#type, text, hasValue: this.#hasValue, hasFormula: this.#hasFormula, kind: this.#kind },
        this.context,
      );
    } catch (error) {
      throw error instanceof BadValue ? this.#refusal(where, oneLine(error.message, 90)) : error;
    }
    if (!this.#grid.put(this.#column, cell)) throw this.#refusal(where, 'is stored twice');
  }

  #addMerge(reference: string): void {
    const merge = parseArea(reference);
    if (merge === undefined) throw this.#refusal(`merge “${oneLine(reference, 30)}”`, 'lies off the sheet');
    this.merges.push(merge);
  }

  #refusal(where: string, what: string): FileRefused {
    const place = where === '' ? '' : `, ${where}`;
    return new FileRefused(
      `Sheet “${oneLine(this.sheetName)}”${place} ${what}. Open the file in a spreadsheet program and save it again.`,
    );
  }
}
