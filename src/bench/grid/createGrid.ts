import {
  IUndoRedoService,
  LifecycleService,
  LifecycleStages,
  type IWorkbookData,
  LocaleType,
  LogLevel,
  Univer,
} from '@univerjs/core';
import { FUniver } from '@univerjs/core/facade';
import { FormulaDataModel } from '@univerjs/engine-formula';
import { CalculationMode, UniverSheetsCorePreset } from '@univerjs/preset-sheets-core';
import english from '@univerjs/preset-sheets-core/locales/en-US';
import '@univerjs/preset-sheets-core/lib/index.css';
import type { Grid } from '../../hosts/grid/grid.ts';
import { closeBrackets } from './closeBrackets.ts';
import { addIteratorMethods } from './iteratorMethods.ts';
import { showRules } from '../rules/showRules.ts';
import { keepInPlace } from './keepInPlace.ts';
import { nameTables } from './tables/nameTables.ts';
import { showPlainNumbers } from './showPlainNumbers.ts';
import { functionHelp, type gridFunctions } from './functions.ts';

type GridFunctions = ReturnType<typeof gridFunctions>;

export interface ShownGrid extends Grid {
  /** Kept once the grid is drawn and can scroll. */
  readonly drawn: Promise<void>;
  dispose(): void;
}

/** What ends the grid that an element shows now. */
const shownIn = new WeakMap<HTMLElement, () => void>();

/** Shows a workbook in a grid of its own inside an element; only formulas without a stored result are calculated at
 * first. A grid that the element showed before is gone. */
export function createGrid(
  container: HTMLElement,
  workbook: Partial<IWorkbookData>,
  functions: GridFunctions,
): ShownGrid {
  addIteratorMethods();
  shownIn.get(container)?.();
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: english },
    logLevel: LogLevel.WARN,
  });
  const { plugins } = UniverSheetsCorePreset({
    container,
    ribbonType: 'simple',
    footer: { statisticBar: false },
    disableAutoFocus: true,
    disableTextFormatAlert: true,
    disableTextFormatMark: true,
    sheets: { disableForceStringAlert: true, disableForceStringMark: true },
    formula: {
      function: functions,
      description: functionHelp,
      initialFormulaComputing: CalculationMode.WHEN_EMPTY,
    },
  });
  for (const plugin of plugins) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
    else univer.registerPlugin(plugin);
  }
  const api = FUniver.newAPI(univer);
  const injector = univer.__getInjector();
  const undo = injector.get(IUndoRedoService);
  const formulas = injector.get(FormulaDataModel);
  api.createWorkbook(workbook);
  const drawn = injector.get(LifecycleService).onStage(LifecycleStages.Rendered);
  const dispose = (): void => {
    if (shownIn.get(container) !== dispose) return;
    shownIn.delete(container);
    stopRules();
    stopTables();
    univer.dispose();
    container.replaceChildren();
  };
  shownIn.set(container, dispose);
  const grid: ShownGrid = {
    api,
    drawn,
    // The library has no other way to make one step of several.
    // eslint-disable-next-line @typescript-eslint/no-deprecated
    oneStep: (unitId) => undo.__tempBatchingUndoRedo(unitId),
    spillAreas: (unitId, sheetId) => formulas.getArrayFormulaRange()[unitId]?.[sheetId] ?? {},
    spilled: (unitId, sheetId) => formulas.getArrayFormulaCellData()[unitId]?.[sheetId] ?? {},
    dispose,
  };
  closeBrackets(injector);
  keepInPlace(injector);
  const stopTables = nameTables(injector, grid);
  showPlainNumbers(injector);
  const stopRules = showRules(grid, injector);
  return grid;
}
