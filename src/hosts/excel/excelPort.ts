import { type WorkbookPort, type HostTheme, type CellPlace, HostRefused } from '../port/port.ts';
import { onChange } from './changes.ts';
import { findBrokenFormulas, functionsReady, recalculate } from './formulas/care.ts';
import { repairFormulas } from './formulas/repair.ts';
import { readWorkbook } from './read/readWorkbook.ts';
import { onSelect, readSelection, selectArea, selectCell, selectRow } from './selection.ts';
import { session, type OfficeLibrary, pageLibrary, type Session } from './session.ts';
import { replaceSheets } from './write/replaceSheets.ts';
import { referencesTo, removeSheets } from './write/removeSheets.ts';
import { writeSheets } from './write/writeSheets.ts';
import { cellAddress } from '../../cells/address.ts';
import { refusalOf } from './refusal.ts';

const failed = 'The formula was not inserted';

/** Before each key, so that the add-in's documents are told from those of other add-ins. */
const prefix = 'tripdrift.';

/** Every how many milliseconds the theme is looked at: Excel has no event for it. */
const interval = 5_000;

export interface ExcelPortOptions {
  /** Office.js; by default the page's own. */
  readonly library?: OfficeLibrary;
  /** Whether Excel has called one of the worksheet functions since the page was loaded. */
  readonly functionWasCalled?: () => boolean;
  /** How long an answer of Excel is waited for, in ms; three minutes by default. */
  readonly patience?: number;
}

/**
 * The workbook that is open in Excel. Needs ExcelApi 1.11; merged cells are read as they look from 1.13 on. Every operation
 * waits until the user has left a cell that is being edited. Nothing is ever unprotected, and no sheet of the user's is
 * written on but by `insertFormula` and `repairFormulas`.
 */
export function excelPort(options: ExcelPortOptions = {}): WorkbookPort {
  const library = options.library ?? pageLibrary();
  const excel = session(library, options.patience);
  return {
    readWorkbook: (onProgress, cancel) => readWorkbook(excel, onProgress, cancel),
    readSelection: () => readSelection(excel),
    selectRow: (sheet, row, fromColumn, toColumn) => selectRow(excel, sheet, row, fromColumn, toColumn),
    selectCell: (place) => selectCell(excel, place),
    pointAt: (place) => (place ? selectArea(excel, place) : Promise.resolve()),
    onSelect: (listener) => onSelect(excel, listener),
    insertFormula: (formula, overwrite) => insertFormula(excel, formula, overwrite),
    writeSheets: (sheets, onProgress, cancel) => writeSheets(excel, sheets, onProgress, cancel),
    replaceSheets: (going, sheets, onProgress, cancel) =>
      replaceSheets(excel, going, sheets, onProgress, cancel),
    referencesTo: (sheets) => referencesTo(excel, sheets),
    removeSheets: (sheets) => removeSheets(excel, sheets),
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

/** The colours of Office's theme; `null` where Excel does not tell them, as on some platforms. */
function theme({ Office }: OfficeLibrary): HostTheme | null {
  const colors = (Office.context as Partial<Office.Context>).officeTheme as
    Partial<Office.OfficeTheme> | undefined;
  const background = colors?.bodyBackgroundColor;
  const text = colors?.bodyForegroundColor;
  if (background === undefined || text === undefined) return null;
  return { dark: colors?.isDarkTheme ?? isDark(background), background, text };
}

/** Calls back when Office's theme has changed. */
function onTheme(library: OfficeLibrary, listener: (theme: HostTheme | null) => void): void {
  let last = JSON.stringify(theme(library));
  setInterval(() => {
    const now = theme(library);
    const text = JSON.stringify(now);
    if (text === last) return;
    last = text;
    listener(now);
  }, interval);
}

/** Whether a colour `#RRGGBB` is nearer to black than to white, by the weights of ITU-R BT.709 for red, green and blue. */
function isDark(color: string): boolean {
  const [red = 0, green = 0, blue = 0] = (/[\da-f]{6}/i.exec(color)?.[0].match(/../g) ?? []).map((part) =>
    Number.parseInt(part, 16),
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue < 128;
}

/** A document of the add-in's own out of the workbook's settings, as it was written; `null` where there is none, and its bare text where that is no JSON. */
function readSetting(session: Session, key: string): Promise<unknown> {
  return session.run('What the workbook remembers could not be read', async (context) => {
    const setting = context.workbook.settings.getItemOrNullObject(prefix + key);
    setting.load('value');
    await context.sync();
    if (setting.isNullObject) return null;
    const stored: unknown = setting.value;
    return typeof stored === 'string' ? parsed(stored) : stored;
  });
}

/** Writes such a document, anything that JSON can hold; `null` takes it away. It is kept once the user saves the workbook. */
function writeSetting(session: Session, key: string, value: unknown): Promise<void> {
  return session.run('The workbook could not remember it', async (context) => {
    const { settings } = context.workbook;
    if (value === null) {
      const setting = settings.getItemOrNullObject(prefix + key);
      await context.sync();
      if (setting.isNullObject) return;
      setting.delete();
    } else settings.add(prefix + key, JSON.stringify(value));
    await context.sync();
  });
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}

/**
 * Puts a formula (in English, with or without its `=`) into the first cell of the selection and says where that is. A cell
 * formatted as text gets the general format, for else it would show the formula instead of its result. Refused where the
 * cell is filled and `overwrite` is not given, and where it is locked.
 */
function insertFormula(session: Session, formula: string, overwrite = false): Promise<CellPlace> {
  return session.run(failed, async (context) => {
    const cell = context.workbook.getSelectedRange().getCell(0, 0);
    cell.load('rowIndex,columnIndex,formulas,numberFormat');
    cell.worksheet.load('name');
    cell.worksheet.protection.load('protected');
    cell.format.protection.load('locked');
    await context.sync();

    const place = { sheet: cell.worksheet.name, row: cell.rowIndex + 1, column: cell.columnIndex + 1 };
    const where = `Cell ${cellAddress(place.row, place.column)} on sheet “${place.sheet}”`;
    if (cell.worksheet.protection.protected && cell.format.protection.locked) {
      throw new HostRefused(
        `${failed}. ${where} is locked. Remove the sheet’s protection on the Review tab, or choose another cell.`,
      );
    }
    const content: unknown = cell.formulas[0]?.[0];
    if (content !== '' && !overwrite) {
      throw new HostRefused(
        `${failed}. ${where} is filled. Choose an empty cell, or choose to overwrite it.`,
      );
    }
    if (cell.numberFormat[0]?.[0] === '@') cell.numberFormat = [['General']];
    cell.formulas = [[formula.startsWith('=') ? formula : `=${formula}`]];
    try {
      await context.sync();
    } catch (error) {
      // Of several calls in a request those before the refused one stay done; an answer may be lost, too.
      const at = `cell ${cellAddress(place.row, place.column)} on sheet “${place.sheet}”`;
      throw refusalOf(error, failed, `Look at ${at}: it may have been changed.`);
    }
    return place;
  });
}
