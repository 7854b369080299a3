import type { ChartCells } from '../../../../sheets/charts/model.ts';
import { cellCount, drawnCells } from '../../../../sheets/charts/cells.ts';
import { checkChart } from '../../../../sheets/charts/check.ts';
import type { ModelCell, ModelRow, SheetModel } from '../../../../sheets/model.ts';
import { writable } from '../../../../sheets/cells.ts';
import { kindOfCode } from '../../../formats/numberFormat.ts';
import { reference } from '../../../formats/reference.ts';
import { daysTo1904 } from '../../../formats/dates.ts';

/** What stands in cells that a chart draws, in order; `undefined` is an empty cell. */
export interface DrawnValues {
  readonly values: (number | string | undefined)[];
  /** Number format of the first cell that has one. */
  numberFormat?: string;
}

interface Watched extends DrawnValues {
  readonly area: ChartCells['area'];
}

/** The values that the charts of a run draw, gathered while its sheets are written, so that no sheet stands in memory whole. */
export interface ValuesWatch {
  /** The same sheet; its rows are looked at as they are written. */
  watching(sheet: SheetModel): SheetModel;
  /** What the sheet's chart draws from; whole once all sheets are written. */
  valuesOf(cells: ChartCells, sheet: SheetModel): DrawnValues;
}

/**
 * Watches the cells that charts of the sheets draw. Dates are days of the 1900 system, or of 1904 where the workbook
 * counts so. Throws an Error where a chart contradicts itself or names a sheet that is not of this run.
 */
export function watchDrawn(sheets: readonly SheetModel[], from1904: boolean): ValuesWatch {
  const bySheet = new Map<SheetModel, Map<string, Watched>>();
  const areasOf = (sheet: SheetModel): Map<string, Watched> => {
    const known = bySheet.get(sheet) ?? new Map<string, Watched>();
    bySheet.set(sheet, known);
    return known;
  };
  const sheetOf = (cells: ChartCells, own: SheetModel): SheetModel => {
    const found = cells.sheet === undefined ? own : sheets.find(({ name }) => name === cells.sheet);
    if (!found) {
      throw new Error(
        `a chart of sheet "${own.name}" names the sheet "${cells.sheet ?? ''}", which is not written`,
      );
    }
    return found;
  };
  for (const sheet of sheets) {
    for (const chart of sheet.charts ?? []) checkChart(chart, sheet.name);
    for (const cells of (sheet.charts ?? []).flatMap(drawnCells).flat()) {
      const { area } = cells;
      const values = Array.from({ length: cellCount(area) }, () => undefined);
      areasOf(sheetOf(cells, sheet)).set(reference(area), { area, values });
    }
  }
  return {
    watching: (sheet) => {
      const areas = [...areasOf(sheet).values()].sort((one, other) => one.area.top - other.area.top);
      return areas.length === 0 ? sheet : { ...sheet, rows: () => watchedRows(sheet, areas, from1904) };
    },
    valuesOf: (cells, sheet) => {
      const watched = areasOf(sheetOf(cells, sheet)).get(reference(cells.area));
      if (!watched) throw new Error(`the cells ${reference(cells.area)} are not watched`);
      return watched;
    },
  };
}

/** `areas` come in the order of their first rows, so that each row meets only those that it lies in. */
function* watchedRows(sheet: SheetModel, areas: readonly Watched[], from1904: boolean): Generator<ModelRow> {
  let open: Watched[] = [];
  let next = 0;
  let number = 0;
  for (const row of sheet.rows()) {
    number++;
    for (let one = areas[next]; one && one.area.top <= number; one = areas[++next]) open.push(one);
    if (open.length > 0) {
      for (const watched of open) lookAt(row, number, watched, sheet, from1904);
      open = open.filter(({ area }) => area.bottom > number);
    }
    yield row;
  }
}

function lookAt(row: ModelRow, number: number, watched: Watched, sheet: SheetModel, from1904: boolean): void {
  const { top, left, right } = watched.area;
  for (let column = left; column <= right; column++) {
    const cell = row.cells[column - 1];
    if (!cell) continue;
    const format = sheet.styles[cell.style ?? '']?.numberFormat;
    watched.values[number - top + (column - left)] = drawnValue(cell, format, from1904);
    if (format !== undefined) watched.numberFormat ??= format;
  }
}

function drawnValue({ value }: ModelCell, format = '', from1904: boolean): number | string | undefined {
  if (value === null || value === '') return undefined;
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (typeof value === 'string') return value;
  return writable(from1904 && kindOfCode(format) === 'date' ? value - daysTo1904 : value);
}
