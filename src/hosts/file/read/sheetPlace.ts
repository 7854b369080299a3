import type { Attributes } from './branches.ts';
import { FileRefused, oneLine } from '../zip/refused.ts';
import { lastColumn, lastRow, parseAddress } from './area.ts';

/**
 * Where a reader of a worksheet part is. Rows and cells say it themselves or follow the one before (ECMA-376 part 1,
 * sections 18.3.1.73 and 18.3.1.4). Throws FileRefused for a place off the sheet or in another row.
 */
export class SheetPlace {
  /** From 1; 0 before the first. */
  row = 0;
  column = 0;
  #rowIsStated = false;

  constructor(readonly sheetName: string) {}

  startRow(attributes: Attributes): void {
    const stated = attributes['r'];
    this.#rowIsStated = stated !== undefined;
    const row = stated === undefined ? this.row + 1 : Number(stated);
    if (!Number.isInteger(row) || row < 1 || row > lastRow) {
      throw this.refusal(
        '',
        `has a row “${oneLine(stated ?? String(row), 20)}”; rows go from 1 to ${lastRow}`,
      );
    }
    this.row = row;
    this.column = 0;
  }

  /** `turned` hears of another row, where a cell names one that its row did not. */
  startCell(attributes: Attributes, turned?: (row: number) => void): void {
    const address = attributes['r'];
    if (address === undefined) this.column++;
    else this.#moveTo(address, turned);
    if (this.column > lastColumn) {
      throw this.refusal(`row ${this.row}`, `has more than ${lastColumn} columns`);
    }
  }

  /** What is wrong at a place of the sheet, and what to do about it. */
  refusal(where: string, what: string): FileRefused {
    const place = where === '' ? '' : `, ${where}`;
    return new FileRefused(
      `Sheet “${oneLine(this.sheetName)}”${place} ${what}. Open the file in a spreadsheet program and save it again.`,
    );
  }

  #moveTo(address: string, turned?: (row: number) => void): void {
    const position = parseAddress(address);
    if (position === undefined) throw this.refusal(`cell “${oneLine(address, 20)}”`, 'lies off the sheet');
    if (position.row !== this.row) {
      if (this.#rowIsStated) {
        throw this.refusal(`cell ${oneLine(address, 20)}`, `is stored in row ${this.row}`);
      }
      this.#rowIsStated = true;
      this.row = position.row;
      turned?.(position.row);
    }
    this.column = position.column;
  }
}
