import type { Attributes } from './attributes.ts';
import type { Cell } from '../../../cells/cell.ts';
import type { Area, Sheet } from '../../../cells/sheet.ts';
import { applyMerges } from '../../formats/merges.ts';
import { Grid } from './grid.ts';
import type { HeardCell, SheetKeeper } from './worksheet.ts';
import { lastColumn } from './area.ts';
import { ShownRuns } from './shownRuns.ts';
import { booleanAttribute, type XmlHandler } from './xml.ts';

/** Keeps what an audit takes of a sheet: its cells as they look, what their formats show with them, what is merged and what is hidden. */
export class SheetCells implements SheetKeeper {
  readonly #hiddenRows = new Set<number>();
  readonly #hiddenColumns = new Set<number>();
  readonly #shown = new ShownRuns();
  readonly #merges: Area[] = [];
  readonly #grid = new Grid();

  row(row: number, attributes: Attributes | undefined): void {
    this.#grid.startRow(row);
    if (attributes === undefined) return;
    if (booleanAttribute(attributes['hidden']) === true || Number(attributes['ht'] ?? 1) === 0) {
      this.#hiddenRows.add(row);
    }
  }

  cell({ row, column, value, shown }: HeardCell): boolean {
    if (shown !== '' && typeof value === 'number') this.#shown.add(row, column, shown);
    return this.#grid.put(column, value);
  }

  merge(area: Area): void {
    this.#merges.push(area);
  }

  readonly around: XmlHandler = {
    open: (name, attributes, parents) => {
      if (name === 'col' && parents[1] === 'cols') this.#column(attributes);
    },
  };

  #column(attributes: Attributes): void {
    const hidden = booleanAttribute(attributes['hidden']) === true || Number(attributes['width'] ?? 1) === 0;
    if (!hidden) return;
    const last = Math.min(Number(attributes['max']), lastColumn);
    for (let column = Math.max(1, Number(attributes['min'])); column <= last; column++)
      this.#hiddenColumns.add(column);
  }

  /** What there is of the sheet, once the part has been read to its end. */
  finish(): Omit<Sheet, 'name' | 'hidden' | 'tables'> {
    const rows: (readonly Cell[])[] = this.#grid.finish();
    applyMerges(rows, this.#merges, () => undefined);
    const shownTexts = this.#shown.finish();
    return {
      rows,
      hiddenRows: this.#hiddenRows,
      ...(this.#merges.length > 0 ? { merged: this.#merges } : {}),
      ...(this.#hiddenColumns.size > 0 ? { hiddenColumns: this.#hiddenColumns } : {}),
      ...(shownTexts.length > 0 ? { shownTexts } : {}),
    };
  }
}
