import { createRequire } from 'node:module';
import type { IWorkbookData } from '@univerjs/core';
import type * as univerCore from '@univerjs/core';
import type * as univerFacade from '@univerjs/core/facade';
import type * as engineFormula from '@univerjs/engine-formula';
import type * as nodePreset from '@univerjs/preset-sheets-node-core';
import type { FUniver } from '@univerjs/core/facade';
import { BooleanNumber, CellValueType, type ICellData } from '@univerjs/core';
import { type Cell, DateCell, ErrorCell, PercentCell } from '../../src/cells/cell.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import type { Grid } from '../../src/hosts/grid/grid.ts';
import { markOfText } from '../../src/hosts/grid/storedText.ts';
import { addIteratorMethods } from '../../src/bench/grid/createGrid.ts';

const require = createRequire(import.meta.url);

type Engine = typeof engineFormula;

export interface HeadlessGrid extends Grid {
  readonly engine: Engine;
  dispose(): void;
}

/** The grid's engine in Node, without a screen; its packages load as CommonJS alone. */
export function headlessGrid(
  functions: (engine: Engine) => [ReturnType<typeof Object>, string][] = () => [],
): HeadlessGrid {
  addIteratorMethods();
  const core = require('@univerjs/core') as typeof univerCore;
  const { FUniver: Facade } = require('@univerjs/core/facade') as typeof univerFacade;
  const node = require('@univerjs/preset-sheets-node-core') as typeof nodePreset;
  const engine = require('@univerjs/engine-formula') as Engine;
  const locales = require('@univerjs/preset-sheets-node-core/locales/en-US') as { default: object };
  const univer = new core.Univer({
    locale: core.LocaleType.EN_US,
    locales: { [core.LocaleType.EN_US]: locales.default as never },
    logLevel: core.LogLevel.SILENT,
  });
  const { plugins } = node.UniverSheetsNodeCorePreset({ formula: { function: functions(engine) as never } });
  for (const plugin of plugins) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
    else univer.registerPlugin(plugin);
  }
  const api: FUniver = Facade.newAPI(univer);
  const undo = univer.__getInjector().get(core.IUndoRedoService);
  const formulas = univer.__getInjector().get(engine.FormulaDataModel);
  return {
    api,
    engine,
    settled: () => true,
    // The library has no other way to make one step of several.
    // eslint-disable-next-line @typescript-eslint/no-deprecated
    oneStep: (unitId) => undo.__tempBatchingUndoRedo(unitId),
    spillAreas: (unitId, sheetId) => formulas.getArrayFormulaRange()[unitId]?.[sheetId] ?? {},
    spilled: (unitId, sheetId) => formulas.getArrayFormulaCellData()[unitId]?.[sheetId] ?? {},
    dispose: () => {
      univer.dispose();
    },
  };
}

/** A workbook as the grid stores it, for tests of the host alone. */
export function storedWorkbook({ name, sheets }: Workbook): Partial<IWorkbookData> {
  const ids = sheets.map((_, index) => `sheet-${index}`);
  return {
    id: 'book',
    name,
    sheetOrder: ids,
    sheets: Object.fromEntries(
      sheets.map(({ name: sheetName, rows, hidden, hiddenRows, hiddenColumns = [], tables }, index) => [
        ids[index]!,
        {
          id: ids[index]!,
          name: sheetName,
          hidden: hidden ? BooleanNumber.TRUE : BooleanNumber.FALSE,
          rowCount: 1_048_576,
          columnCount: 40,
          cellData: Object.fromEntries(
            rows.map((row, at) => [
              at,
              Object.fromEntries(row.map((cell, column) => [column, stored(cell)])),
            ]),
          ),
          rowData: Object.fromEntries([...hiddenRows].map((row) => [row - 1, { hd: BooleanNumber.TRUE }])),
          columnData: Object.fromEntries(
            [...hiddenColumns].map((column) => [column - 1, { hd: BooleanNumber.TRUE }]),
          ),
          custom: { tables },
        },
      ]),
    ),
  };
}

function stored(cell: Cell): ICellData {
  const format = (pattern: string) => ({ n: { pattern } });
  if (cell === null) return {};
  if (cell instanceof DateCell)
    return { v: cell.day + 25_569, t: CellValueType.NUMBER, s: format('yyyy-mm-dd hh:mm') };
  if (cell instanceof PercentCell)
    return { v: cell.percent / 100, t: CellValueType.NUMBER, s: format('0.0%') };
  if (cell instanceof ErrorCell) return { v: cell.code, t: CellValueType.STRING };
  if (typeof cell === 'boolean') return { v: cell ? 1 : 0, t: CellValueType.BOOLEAN };
  return typeof cell === 'number' ? { v: cell, t: CellValueType.NUMBER } : { v: cell, t: markOfText(cell) };
}
