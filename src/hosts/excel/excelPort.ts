import type { WorkbookPort } from '../port/port.ts';
import { onChange } from './changes.ts';
import { findBrokenFormulas, functionsReady, recalculate } from './formulas/care.ts';
import { repairFormulas } from './formulas/repair.ts';
import { insertFormula } from './insertFormula.ts';
import { type OfficeLibrary, pageLibrary } from './library.ts';
import { readWorkbook } from './read/readWorkbook.ts';
import { onSelect, readSelection, selectArea, selectCell, selectRow } from './selection.ts';
import { session } from './session.ts';
import { readSetting, writeSetting } from './settings.ts';
import { onTheme, theme } from './theme.ts';
import { writeSheets } from './write/writeSheets.ts';

export interface ExcelPortOptions {
  /** Office.js; by default the page's own. */
  readonly library?: OfficeLibrary;
  /** Whether Excel has called one of the worksheet functions since the page was loaded. */
  readonly functionWasCalled?: () => boolean;
}

/**
 * The workbook that is open in Excel. Needs ExcelApi 1.11; merged cells are read as they look from 1.13 on. Every operation
 * waits until the user has left a cell that is being edited. Nothing is ever unprotected, and no sheet of the user's is
 * written on but by `insertFormula` and `repairFormulas`.
 */
export function excelPort(options: ExcelPortOptions = {}): WorkbookPort {
  const library = options.library ?? pageLibrary();
  const excel = session(library);
  return {
    readWorkbook: (onProgress, cancel) => readWorkbook(excel, onProgress, cancel),
    readSelection: () => readSelection(excel),
    selectRow: (sheet, row, fromColumn, toColumn) => selectRow(excel, sheet, row, fromColumn, toColumn),
    selectCell: (place) => selectCell(excel, place),
    pointAt: (place) => (place ? selectArea(excel, place) : Promise.resolve()),
    onSelect: (listener) => onSelect(excel, listener),
    insertFormula: (formula, overwrite) => insertFormula(excel, formula, overwrite),
    writeSheets: (sheets, onProgress, cancel) => writeSheets(excel, sheets, onProgress, cancel),
    readSetting: (key) => readSetting(excel, key),
    writeSetting: (key, value) => writeSetting(excel, key, value),
    onChange: (listener) => onChange(excel, listener),
    findBrokenFormulas: () => findBrokenFormulas(excel),
    repairFormulas: (places) => repairFormulas(excel, places),
    recalculate: () => recalculate(excel),
    functionsReady: () => functionsReady(excel, options.functionWasCalled ?? (() => false)),
    theme: () => theme(library),
    onTheme: (listener) => {
      onTheme(library, listener);
    },
  };
}
