import { type GridPort, gridPort } from '../hosts/grid/gridPort.ts';
import { onBookChanged } from '../hosts/grid/changes.ts';
import { readSettings } from '../hosts/file/patch/settings/readSettings.ts';
import { openBook } from '../hosts/grid/grid.ts';
import { defineNames } from './grid/bookNames.ts';
import { type ShownGrid, createGrid } from './grid/createGrid.ts';
import { gridFunctions } from './grid/functions.ts';
import { onReason, rememberReasons } from './grid/reasons.ts';
import { gridWorkbook } from './open/gridWorkbook.ts';
import type { OpenedFile } from './open/openFile.ts';
import { markOrigins } from './save/origins.ts';
import { showPane } from './pane/showPane.ts';

/** The workbook that the page shows now. */
export interface Bench {
  readonly file: OpenedFile;
  readonly grid: ShownGrid;
  readonly port: GridPort;
  /** Ids of sheets that were changed since they came into the grid. */
  readonly touched: ReadonlySet<string>;
  /** Takes the grid and the pane away, with all that they hold. */
  readonly close: () => void;
}

/** Where on the page the bench stands, and what it asks of the page. */
export interface BenchPlaces {
  readonly grid: HTMLElement;
  readonly side: HTMLElement;
  /** What functions receive for a blank cell. */
  readonly blank: () => 0 | null;
  /** Shows one line of text to the user, or none. */
  readonly note: (text: string) => void;
}

/** Shows a file in the grid, and the pane over it. */
export async function showBench(places: BenchPlaces, file: OpenedFile): Promise<Bench> {
  const reasons = rememberReasons();
  const { view } = file;
  const grid = createGrid(
    places.grid,
    gridWorkbook(view, file.plainText),
    gridFunctions(places, reasons.heard),
    (...cell) => reasons.at(...cell),
    places.note,
  );
  markOrigins(grid, file);
  await grid.drawn;
  defineNames(grid, view);
  const front = view.sheets[view.activeSheet];
  const { start = { row: 1, column: 1 } } = file;
  if (front && !front.hidden) {
    // It is in view: bringing it there would scroll what stands beside it away.
    const shown = openBook(grid);
    shown.setActiveRange(shown.getActiveSheet().getRange(start.row - 1, start.column - 1));
  }
  onReason(grid, reasons, places.note);
  const port = gridPort(grid, file.original ? readSettings(file.original) : undefined);
  const touched = new Set<string>();
  onBookChanged(grid, ({ id }) => touched.add(id));
  const closePane = await showPane(places.side, port, file.start !== undefined);
  const close = (): void => {
    closePane();
    grid.dispose();
  };
  return { file, grid, port, touched, close };
}
