import { withSheetNames } from '../../../sheets/charts/cells.ts';
import { namesOfTargets } from '../../../sheets/links.ts';
import type { SheetModel } from '../../../sheets/model.ts';
import { tablesOf } from '../tables.ts';
import { freeTableNames } from '../../formats/tableNames.ts';
import { freeNames } from '../../formats/reference.ts';
import { type Cancel, HostRefused, type OnProgress, type WrittenSheet } from '../../port/port.ts';
import { type Grid, openBook } from '../grid.ts';
import { withLinkedNames, withRows } from '../links.ts';
import { pause } from '../pause.ts';
import { deleteSheets } from './removeSheets.ts';
import { sheetData } from './sheetData.ts';
import type { IWorksheetData } from '@univerjs/core';

/** The sheet in front, which only a grid on a screen draws. */
interface Screen {
  readonly getSheetId: () => string;
  readonly refreshCanvas?: () => unknown;
}

/** Rows of sheets with formulas up to which the grid calculates those of a run itself; beyond, its calculation takes minutes. */
const mostLiveRows = 1_000;
const rowsBetweenPauses = 500;

/** Which model a sheet of the grid was made from, by the sheet's id; its name and formulas name sheets as they are in the grid. */
type WrittenModels = Map<string, SheetModel>;

export interface WritingRun {
  /** Takes the models that sheets were made from. */
  readonly written: WrittenModels;
  /** Names of the sheets that the new ones replace: deleted once those are made; `removed` takes their ids. */
  readonly going?: readonly string[];
  readonly removed?: Set<string>;
  readonly onProgress?: OnProgress | undefined;
  readonly cancel?: Cancel | undefined;
}

/**
 * Adds result sheets behind the others, as one step for Undo. They are made in full before the first one is added, so all
 * are or none. Large ones show results without formulas; the file that is saved has the formulas all the same.
 */
export async function writeSheets(
  grid: Grid,
  models: readonly SheetModel[],
  { written, removed, going = [], onProgress, cancel }: WritingRun,
): Promise<readonly WrittenSheet[]> {
  const book = openBook(grid);
  const staying = book
    .getWorkbook()
    .getSheets()
    .filter((sheet) => !going.includes(sheet.getName()));
  const own = staying.map((sheet) => sheet.getName());
  const names = freeNames(
    models.map(({ name }) => name),
    own,
  );
  const nameOf = namesOfTargets(models, names, own);
  const given = new Map(models.map(({ name }, index): [string, string] => [name, names[index] ?? name]));
  const tables = freeTableNames(
    models.map(({ name, table }) => table?.name ?? name),
    staying.flatMap(tablesOf).map(({ name }) => name),
  );
  const total = models.reduce((sum, { rowCount }) => sum + rowCount, 0);
  let done = 0;
  const refuseIfCancelled = (): void => {
    if (cancel?.cancelled === true) throw new HostRefused('Cancelled. No sheet was added.');
  };
  const onRow = async (): Promise<void> => {
    if (++done % rowsBetweenPauses !== 0) return;
    onProgress?.(Math.min(1, done / total));
    await pause();
    refuseIfCancelled();
  };

  const live = models.filter((model) => model.formulas.length > 0);
  const formulas = live.reduce((sum, { rowCount }) => sum + rowCount, 0) <= mostLiveRows;
  const sheets = [];
  for (const [index, model] of models.entries()) {
    refuseIfCancelled();
    const id = `result-${crypto.randomUUID()}`;
    const tableName = tables[index] ?? '';
    const run = { given, formulas, tableName, nameOf, onRow };
    sheets.push({ id, model, data: await sheetData(model, id, run) });
    await pause();
  }
  refuseIfCancelled();
  const step = grid.oneStep(book.getId());
  const fill: (() => void)[] = [];
  try {
    if (going.length > 0) for (const id of deleteSheets(grid, going)) removed?.add(id);
    for (const { id, model, data } of sheets) {
      written.set(id, boundTo(given, model));
      fill.push(addSheet(grid, data, formulas));
      await pause();
    }
  } finally {
    for (const put of fill) put();
    const front = sheets.find(({ model }) => model.inFront === true);
    if (front) book.setActiveSheet(front.id);
    step.dispose();
  }
  onProgress?.(1);
  return models.map(({ name }, index) => ({ wanted: name, given: names[index] ?? name }));
}

/** The model under the names that the sheets of its run were given. */
function boundTo(given: ReadonlyMap<string, string>, model: SheetModel): SheetModel {
  const nameOf = (wanted: string): string => given.get(wanted) ?? wanted;
  return {
    ...withRows(model, (row) => withLinkedNames(row, nameOf)),
    name: nameOf(model.name),
    formulas: model.formulas.map((formula) =>
      formula.replace(/\{([^{}]+)\}!/g, (_, wanted: string) => `{${nameOf(wanted)}}!`),
    ),
    ...(model.charts && { charts: model.charts.map((chart) => withSheetNames(chart, nameOf)) }),
  };
}

/**
 * Adds a sheet behind the others; with formulas it comes with its cells, otherwise the returned function puts them in. The
 * grid copies and searches whatever it is handed as a new sheet, and searches all that stands beside it, which takes seconds
 * for tens of thousands of rows.
 */
function addSheet(grid: Grid, data: Partial<IWorksheetData>, formulas: boolean): () => void {
  const book = openBook(grid);
  const stored = book.getWorkbook();
  const { cellData = {} } = data;
  // The grid keeps this very object for Redo.
  const sheet = formulas ? data : { ...data, cellData: {} as typeof cellData };
  const params = { unitId: book.getId(), index: stored.getSheets().length, sheet };
  grid.api.syncExecuteCommand('sheet.command.insert-sheet', params);
  if (formulas) return () => undefined;
  return () => {
    sheet.cellData = cellData;
    const cells = stored.getSheetBySheetId(data.id ?? '')?.getCellMatrix();
    for (const row of Object.keys(cellData).map(Number)) cells?.setRow(row, cellData[row] ?? {});
    const front: Screen = book.getActiveSheet();
    front.refreshCanvas?.();
  };
}
