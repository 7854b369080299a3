import type { SheetModel } from '../../sheets/model.ts';
import type { WorkbookPort } from '../port/port.ts';
import { onCellsChanged } from './changes.ts';
import { findBrokenFormulas, recalculate, repairFormulas } from './formulas.ts';
import type { Grid } from './grid.ts';
import { insertFormula } from './insertFormula.ts';
import { readWorkbook } from './read/readWorkbook.ts';
import { onSelect } from './onSelect.ts';
import { pointer } from './pointer.ts';
import { readSelection, selectCell, selectRow } from './selection.ts';
import { writeSheets } from './write/writeSheets.ts';

/** The port of a workbook in the grid, and what else the page around the grid asks of it. */
export interface GridPort extends WorkbookPort {
  /** Models of the result sheets that were written, by the id of their sheet in the grid. */
  readonly written: ReadonlyMap<string, SheetModel>;
  /** What the pane keeps, as JSON by key, to be saved with the workbook. */
  readonly settings: ReadonlyMap<string, string>;
  /** Calls back after a setting becomes another than it was. */
  readonly onSetting: (listener: () => void) => void;
}

/** The workbook that is open in the grid, with the settings it brought along. */
export function gridPort(grid: Grid, brought: ReadonlyMap<string, string> = new Map()): GridPort {
  const settings = new Map(brought);
  const settingListeners: (() => void)[] = [];
  const written = new Map<string, SheetModel>();
  const own = { has: (id: string) => written.has(id) };
  const pointAt = pointer(grid);
  return {
    written,
    settings,
    onSetting: (listener) => {
      settingListeners.push(listener);
    },
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
    pointAt: async (place) => {
      await Promise.resolve();
      pointAt(place);
    },
    onSelect: (listener) => Promise.resolve(onSelect(grid, listener)),
    insertFormula: (formula, overwrite) => insertFormula(grid, formula, overwrite),
    writeSheets: (models, onProgress, cancel) => writeSheets(grid, models, written, onProgress, cancel),
    readSetting: (key) => {
      const text = settings.get(key);
      return Promise.resolve(text === undefined ? null : parsed(text));
    },
    writeSetting: (key, value) => {
      const before = settings.get(key);
      if (value === null) settings.delete(key);
      else settings.set(key, JSON.stringify(value));
      if (settings.get(key) !== before) for (const listener of settingListeners) listener();
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

/** A document out of a file; its bare text where somebody made it no JSON, for whoever reads it to refuse. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}
