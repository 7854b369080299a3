import type { SheetModel } from '../../sheets/model.ts';
import type { WorkbookPort } from '../port/port.ts';
import { onCellsChanged } from './changes.ts';
import { findBrokenFormulas, recalculate, repairFormulas } from './formulas.ts';
import type { Grid } from './grid.ts';
import { insertFormula } from './insertFormula.ts';
import { readWorkbook } from './read/readWorkbook.ts';
import { readSelection, selectCell, selectRow } from './selection.ts';
import { writeSheets } from './write/writeSheets.ts';

/** The port of a workbook in the grid, and what else the page around the grid asks of it. */
export interface GridPort extends WorkbookPort {
  /** Models of the result sheets that were written, by the id of their sheet in the grid. */
  readonly written: ReadonlyMap<string, SheetModel>;
}

/** The workbook that is open in the grid. Settings are kept for as long as the page is open. */
export function gridPort(grid: Grid): GridPort {
  const settings = new Map<string, string>();
  const written = new Map<string, SheetModel>();
  const own = { has: (id: string) => written.has(id) };
  return {
    written,
    readWorkbook: (onProgress, cancel) => readWorkbook(grid, onProgress, cancel),
    readSelection: async () => Promise.resolve(readSelection(grid)),
    selectRow: async (sheet, row, from, to) => {
      await Promise.resolve();
      selectRow(grid, sheet, row, from, to);
    },
    selectCell: async (place) => {
      await Promise.resolve();
      selectCell(grid, place);
    },
    insertFormula: (formula, overwrite) => insertFormula(grid, formula, overwrite),
    writeSheets: (models, onProgress, cancel) => writeSheets(grid, models, written, onProgress, cancel),
    readSetting: (key) => {
      const text = settings.get(key);
      return Promise.resolve(text === undefined ? null : (JSON.parse(text) as unknown));
    },
    writeSetting: (key, value) => {
      if (value === null) settings.delete(key);
      else settings.set(key, JSON.stringify(value));
      return Promise.resolve();
    },
    onChange: (listener) => Promise.resolve(onCellsChanged(grid, own, listener)),
    findBrokenFormulas: async () => Promise.resolve(findBrokenFormulas(grid)),
    repairFormulas: async (places) => Promise.resolve(repairFormulas(grid, places)),
    recalculate: () => recalculate(grid),
    functionsReady: () => Promise.resolve(true),
    theme: () => null,
    onTheme: () => undefined,
  };
}
