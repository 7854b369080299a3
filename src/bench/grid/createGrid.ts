import {
  IUndoRedoService,
  LifecycleService,
  LifecycleStages,
  type IWorkbookData,
  LocaleType,
  LogLevel,
  Univer,
  type Injector,
  CellValueType,
} from '@univerjs/core';
import { FUniver } from '@univerjs/core/facade';
import { FormulaDataModel } from '@univerjs/engine-formula';
import { CalculationMode, ILayoutService, UniverSheetsCorePreset } from '@univerjs/preset-sheets-core';
import { IEditorBridgeService } from '@univerjs/sheets-ui';
import '@univerjs/preset-sheets-core/lib/index.css';
import type { Grid } from '../../hosts/grid/grid.ts';
import { sayReasons, type ReasonAt } from './errorCards.ts';
import { followLinks } from './followLinks.ts';
import { gridTexts } from './gridTexts.ts';
import { showRules } from '../rules/showRules.ts';
import { closeBrackets } from './closeBrackets.ts';
import { settleResults } from './settledResults.ts';
import { keepInPlace } from './keepInPlace.ts';
import { nameTables } from './tables/nameTables.ts';
import { functionHelp, type gridFunctions } from './functions.ts';
import { AFTER_CELL_EDIT, INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/sheets';
import { plainTextOf } from '../../hosts/grid/tables.ts';
import { writtenText } from '../../hosts/grid/read/cell.ts';
import { plainNumber } from './plainNumber.ts';

/** Runs before the grid's own reading of what is typed, which knows the decimal point alone. */
const first = 1_000;

type GridFunctions = ReturnType<typeof gridFunctions>;

export interface ShownGrid extends Grid {
  /** Kept once the grid is drawn and can scroll. */
  readonly drawn: Promise<void>;
  /** Gives the keyboard to the cells. */
  focus(): void;
  /** Whether a cell is being edited. */
  editing(): boolean;
  dispose(): void;
}

/** What ends the grid that an element shows now. */
const shownIn = new WeakMap<HTMLElement, () => void>();

/** Shows a workbook in a grid of its own inside an element; only formulas without a stored result are calculated at
 * first. A grid that the element showed before is gone.
 * `note` hears why a link can't be followed. */
export function createGrid(
  container: HTMLElement,
  workbook: Partial<IWorkbookData>,
  functions: GridFunctions,
  reasonAt: ReasonAt,
  note: (text: string) => void,
): ShownGrid {
  addIteratorMethods();
  shownIn.get(container)?.();
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: gridTexts },
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
    stopLinks();
    univer.dispose();
    container.replaceChildren();
  };
  shownIn.set(container, dispose);
  const grid: ShownGrid = {
    api,
    drawn,
    focus: () => {
      injector.get(ILayoutService).focus();
    },
    editing: () => injector.get(IEditorBridgeService).isVisible().visible,
    settled: settleResults(injector),
    // The library has no other way to make one step of several.
    // eslint-disable-next-line @typescript-eslint/no-deprecated
    oneStep: (unitId) => undo.__tempBatchingUndoRedo(unitId),
    spillAreas: (unitId, sheetId) => formulas.getArrayFormulaRange()[unitId]?.[sheetId] ?? {},
    spilled: (unitId, sheetId) => formulas.getArrayFormulaCellData()[unitId]?.[sheetId] ?? {},
    dispose,
  };
  closeBrackets(injector);
  sayReasons(injector, reasonAt);
  keepInPlace(injector);
  const stopTables = nameTables(injector, grid);
  showPlainNumbers(injector);
  const stopRules = showRules(grid, injector);
  const stopLinks = followLinks({ grid, injector, editing: () => grid.editing() }, note);
  return grid;
}

/** Shows and takes numbers of a file of plain text as the file writes them, decimal comma or point. */
function showPlainNumbers(injector: Injector): void {
  const interceptors = injector.get(SheetInterceptorService);
  interceptors.intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    handler: (cell, _place, next) => {
      const text = cell ? writtenText(cell) : undefined;
      return next(text === undefined ? cell : { ...cell, v: text, t: CellValueType.NUMBER });
    },
  });
  interceptors.writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: first,
    handler: (cell, { worksheet }, next) => {
      const { plainText } = plainTextOf(worksheet);
      const number = plainText && typeof cell?.v === 'string' && plainNumber(cell.v, plainText);
      return number ? { ...cell, ...number } : next(cell);
    },
  });
}

/**
 * Adds the methods of iterators that the grid calls, where an older browser or Node 20 lacks them (ECMA-262, 16th edition, section
 * 27.1.4).
 */
export function addIteratorMethods(): void {
  const iterator = Object.getPrototypeOf(Object.getPrototypeOf([][Symbol.iterator]())) as object;
  const add = (
    name: string,
    method: (this: Iterable<unknown>, judge: (value: unknown) => unknown) => unknown,
  ) => {
    if (!(name in iterator)) {
      Object.defineProperty(iterator, name, { value: method, writable: true, configurable: true });
    }
  };
  add('some', function (judge) {
    return [...this].some(judge);
  });
  add('every', function (judge) {
    return [...this].every(judge);
  });
  add('find', function (judge) {
    return [...this].find(judge);
  });
  add('forEach', function (judge) {
    [...this].forEach(judge);
  });
  add('map', function (judge) {
    return [...this].map(judge).values();
  });
  add('filter', function (judge) {
    return [...this].filter(judge).values();
  });
  add('toArray', function () {
    return [...this];
  });
}
