import type { SheetModel } from '../../sheets/model.ts';
import { type WorkbookPort, type SheetArea, type CellPlace, HostRefused } from '../port/port.ts';
import { onCellsChanged } from './changes.ts';
import { findBrokenFormulas, recalculate, repairFormulas } from './formulas.ts';
import { type Grid, storedBook, openBook, shownContent } from './grid.ts';
import { readWorkbook, areaOf } from './read/readWorkbook.ts';
import { readSelection, selectCell, selectRow, scrollTo, shownSheet } from './selection.ts';
import { referencesTo, removeSheets } from './write/removeSheets.ts';
import { writeSheets } from './write/writeSheets.ts';
import type { ICommandInfo, IRange, IDisposable } from '@univerjs/core';
import { cellAddress } from '../../cells/address.ts';
import { pause } from './pause.ts';
import { tones } from '../../sheets/style/palette.ts';

/** The colour of what is pointed at, its frame and what lies over its cells: told from the grid's own green selection. */
const pointedStyle = { stroke: `#${tones.pointed}`, strokeWidth: 2, fill: `#${tones.pointed}30` } as const;

/** Columns to the left of what is pointed at that stay in view. */
const seenBeside = 4;

/** A range that a grid on a screen can mark; a grid without one only brings the sheet to the front. */
interface Markable {
  readonly highlight?: (style: typeof pointedStyle) => IDisposable;
}

interface SelectedBy {
  readonly subUnitId?: string;
  readonly selections?: readonly { readonly range: IRange }[];
}

/** What the grid does when another area is selected, by mouse, keys or program. */
const selecting = 'sheet.operation.set-selections';

/** The port of a workbook in the grid, and what else the page around the grid asks of it. */
export interface GridPort extends WorkbookPort {
  /** Models of the result sheets that were written, by the id of their sheet in the grid. */
  readonly written: ReadonlyMap<string, SheetModel>;
  /** Ids of sheets that were taken away on request, Undo or not. */
  readonly removed: ReadonlySet<string>;
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
  const removed = new Set<string>();
  const own = { has: (id: string) => written.has(id) };
  const pointAt = pointer(grid);
  return {
    written,
    removed,
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
    writeSheets: (models, onProgress, cancel) => writeSheets(grid, models, { written, onProgress, cancel }),
    replaceSheets: (going, models, onProgress, cancel) =>
      writeSheets(grid, models, { written, removed, going, onProgress, cancel }),
    referencesTo: async (sheets) => Promise.resolve(referencesTo(grid, sheets)),
    removeSheets: async (sheets) => {
      await Promise.resolve();
      for (const id of removeSheets(grid, sheets)) removed.add(id);
    },
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
    // The grid is always light, and the pane stands beside it.
    theme: () => ({ dark: false, background: '#ffffff', text: '#1c2529' }),
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

/** Calls back after another area is selected, with the last one where there are several. The returned function stops it. */
function onSelect(grid: Grid, listener: (place: SheetArea) => void): () => void {
  const heard = grid.api.addEvent(grid.api.Event.CommandExecuted, (event) => {
    const { id, params } = event as ICommandInfo<SelectedBy>;
    const range = id === selecting ? params?.selections?.at(-1)?.range : undefined;
    const sheet = storedBook(grid).getSheetBySheetId(params?.subUnitId ?? '');
    if (range && sheet) listener({ sheet: sheet.getName(), area: areaOf(range) });
  });
  return () => {
    heard.dispose();
  };
}

/**
 * Puts a formula (with or without its `=`) into the first selected cell and says where that is. Refused where the cell is
 * filled and `overwrite` is not given.
 */
async function insertFormula(grid: Grid, formula: string, overwrite = false): Promise<CellPlace> {
  const { sheet, area } = readSelection(grid);
  const place = { sheet, row: area.top, column: area.left };
  const front = openBook(grid).getActiveSheet();
  const stored = shownContent(grid, front.getSheet())(area.top - 1, area.left - 1);
  const filled =
    (stored?.v !== undefined && stored.v !== null && stored.v !== '') ||
    Boolean(stored?.f ?? stored?.si ?? stored?.p);
  if (filled && !overwrite) {
    throw new HostRefused(
      `The formula was not inserted. Cell ${cellAddress(place.row, place.column)} on sheet “${sheet}” is filled. Choose an empty cell, or choose to overwrite it.`,
    );
  }
  front
    .getRange(area.top - 1, area.left - 1)
    .setValue({ f: formula.startsWith('=') ? formula : `=${formula}`, v: null, p: null, t: null, si: null });
  await pause();
  return place;
}

/** Points at one area of the grid at a time, with a frame that is no part of the workbook. */
function pointer(grid: Grid): (place: SheetArea | null) => void {
  let mark: IDisposable | undefined;
  return (place) => {
    mark?.dispose();
    mark = undefined;
    if (!place) return;
    const { top, left, bottom, right } = place.area;
    const sheet = shownSheet(grid, place.sheet, cellAddress(top, left));
    const front = openBook(grid).setActiveSheet(sheet.getSheetId());
    const range = front.getRange(top - 1, left - 1, bottom - top + 1, right - left + 1);
    mark = (range as Markable).highlight?.(pointedStyle);
    // What stands to the left of it, such as tags, stays in view where there is room.
    scrollTo(front, top, Math.max(1, left - seenBeside));
  };
}
