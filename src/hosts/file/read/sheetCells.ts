import type { Attributes } from './attributes.ts';
import type { Cell } from '../../../cells/cell.ts';
import type { Area } from '../../../cells/sheet.ts';
import { applyMerges } from '../../formats/merges.ts';
import { Grid } from './grid.ts';
import type { HeardCell, SheetKeeper } from './worksheet.ts';
import { booleanAttribute } from './xml.ts';

/** Keeps what an audit takes of a sheet: its cells as they look, and which rows are hidden. */
export class SheetCells implements SheetKeeper {
  readonly hiddenRows = new Set<number>();
  readonly #merges: Area[] = [];
  readonly #grid = new Grid();

  row(row: number, attributes: Attributes | undefined): void {
    this.#grid.startRow(row);
    if (attributes === undefined) return;
    if (booleanAttribute(attributes['hidden']) === true || Number(attributes['ht'] ?? 1) === 0) {
      this.hiddenRows.add(row);
    }
  }

  cell({ column, value }: HeardCell): boolean {
    return this.#grid.put(column, value);
  }

  merge(area: Area): void {
    this.#merges.push(area);
  }

  /** The rows, once the part has been read to its end. */
  finish(): (readonly Cell[])[] {
    const rows = this.#grid.finish();
    applyMerges(rows, this.#merges, () => undefined);
    return rows;
  }
}
