import type { SheetTable } from '../cells/sheet.ts';
import { isInside } from '../hosts/file/patch/groups.ts';
import type { SheetView, ViewCell, WorkbookView } from '../hosts/file/view/types.ts';
import type { CellPlace } from './types.ts';

/** A workbook's cells, names and tables by what formulas call them. */
export class BookCells {
  readonly #sheets: ReadonlyMap<string, SheetView>;
  readonly #names: ReadonlyMap<string, string>;
  readonly #cells = new Map<SheetView, ReadonlyMap<number, ReadonlyMap<number, ViewCell>>>();
  readonly view: WorkbookView;

  constructor(view: WorkbookView) {
    this.view = view;
    this.#sheets = new Map(view.sheets.map((sheet) => [sheet.name.toLowerCase(), sheet]));
    this.#names = new Map(view.names.map(({ name, sheet, refersTo }) => [nameKey(name, sheet), refersTo]));
  }

  sheet(name: string): SheetView | undefined {
    return this.#sheets.get(name.toLowerCase());
  }

  cell({ sheet: name, row, column }: CellPlace): ViewCell | undefined {
    const sheet = this.sheet(name);
    if (!sheet) return undefined;
    const cells =
      this.#cells.get(sheet) ??
      new Map(sheet.rows.map((one) => [one.row, new Map(one.cells.map((cell) => [cell.column, cell]))]));
    this.#cells.set(sheet, cells);
    return cells.get(row)?.get(column);
  }

  /** What a name stands for as seen from a sheet, whose own names come first. */
  name(name: string, sheet: string): string | undefined {
    return this.#names.get(nameKey(name, sheet)) ?? this.#names.get(nameKey(name));
  }

  /** The table of a name; without one, the table that a cell stands in. */
  table(name: string, at: CellPlace): { readonly sheet: SheetView; readonly table: SheetTable } | undefined {
    for (const sheet of this.view.sheets) {
      const table = sheet.tables.find((one) =>
        name === ''
          ? sheet.name === at.sheet && isInside(one.area, at.row, at.column)
          : one.name.toLowerCase() === name.toLowerCase(),
      );
      if (table) return { sheet, table };
    }
    return undefined;
  }
}

function nameKey(name: string, sheet = ''): string {
  return `${sheet.toLowerCase()}!${name.toLowerCase()}`;
}
