import { cellAddress } from '../../cells/address.ts';
import type { Cell } from '../../cells/cell.ts';
import type { Sheet, Workbook } from '../../cells/sheet.ts';
import type { SheetModel } from '../../sheets/model.ts';
import { HostRefused, type CellPlace, type SheetArea, type WorkbookPort } from '../../hosts/port/port.ts';

export interface MemoryWorkbook {
  readonly workbook: Workbook;
  /** What is selected at first. */
  readonly selection: SheetArea;
}

const noFormulas =
  'There is no spreadsheet program behind this page, so formulas are neither found, repaired nor calculated here. Open the workbook in Excel.';

/** A workbook held in memory, for a page without a spreadsheet program. What only such a program can do it refuses. */
export function memoryPort({ workbook, selection: first }: MemoryWorkbook): WorkbookPort {
  let sheets: readonly Sheet[] = workbook.sheets;
  let selection = first;
  const settings = new Map<string, string>();
  const listeners = new Set<(sheet: string) => void>();
  const followers = new Set<(place: SheetArea) => void>();

  const sheetNamed = (name: string): Sheet => {
    const sheet = sheets.find((one) => one.name === name);
    if (!sheet) throw new HostRefused(`There is no sheet “${name}” any more. Run the audit again.`);
    return sheet;
  };
  const select = async (place: SheetArea): Promise<void> => {
    await Promise.resolve(sheetNamed(place.sheet));
    selection = place;
    for (const follower of followers) follower(place);
  };
  const cellOf = (sheet: Sheet, row: number, column: number): Cell =>
    sheet.rows[row - 1]?.[column - 1] ?? null;

  const write: WorkbookPort['replaceSheets'] = async (going, models, onProgress, cancel) => {
    const staying = sheets.filter(({ name }) => !going.includes(name));
    const added: Sheet[] = [];
    const written = [];
    for (const [index, model] of models.entries()) {
      await Promise.resolve();
      if (cancel?.cancelled) throw new HostRefused('Cancelled. No sheet was added.');
      const given = freeName(model.name, [...staying, ...added]);
      added.push(sheetOf(model, given));
      written.push({ wanted: model.name, given });
      onProgress?.((index + 1) / models.length);
    }
    sheets = [...staying, ...added];
    return written;
  };

  return {
    readWorkbook: (onProgress) => {
      onProgress?.(1);
      return Promise.resolve({ ...workbook, sheets });
    },
    readSelection: async () => {
      const { sheet: name, area } = selection;
      const sheet = await Promise.resolve(sheetNamed(name));
      const cells = range(area.top, area.bottom).map((row) =>
        range(area.left, area.right).map((column) => cellOf(sheet, row, column)),
      );
      return { sheet: name, area, cells };
    },
    selectRow: (sheet, row, from, to) =>
      select({ sheet, area: { top: row, left: from, bottom: row, right: to } }),
    selectCell: ({ sheet, row, column }) =>
      select({ sheet, area: { top: row, left: column, bottom: row, right: column } }),
    pointAt: async (place) => {
      if (place) await select(place);
    },
    onSelect: (listener) => {
      followers.add(listener);
      return Promise.resolve(() => {
        followers.delete(listener);
      });
    },
    insertFormula: async (formula, overwrite = false) => {
      const { sheet: name, area } = selection;
      const place: CellPlace = { sheet: name, row: area.top, column: area.left };
      const sheet = await Promise.resolve(sheetNamed(name));
      if (cellOf(sheet, place.row, place.column) !== null && !overwrite) {
        throw new HostRefused(
          `Cell ${cellAddress(place.row, place.column)} is not empty. Select an empty cell.`,
        );
      }
      sheets = sheets.map((one) => (one === sheet ? withCell(one, place, formula) : one));
      for (const listener of listeners) listener(name);
      return place;
    },
    writeSheets: (models, onProgress, cancel) => write([], models, onProgress, cancel),
    replaceSheets: write,
    referencesTo: () => Promise.resolve([]),
    removeSheets: (names) => {
      sheets = sheets.filter(({ name }) => !names.includes(name));
      return Promise.resolve();
    },
    readSetting: (key) => {
      const text = settings.get(key);
      return Promise.resolve(text === undefined ? null : (JSON.parse(text) as unknown));
    },
    writeSetting: (key, value) => {
      settings.set(key, JSON.stringify(value));
      return Promise.resolve();
    },
    onChange: (listener) => {
      listeners.add(listener);
      return Promise.resolve(() => {
        listeners.delete(listener);
      });
    },
    findBrokenFormulas: () => Promise.reject(new HostRefused(noFormulas)),
    repairFormulas: () => Promise.reject(new HostRefused(noFormulas)),
    recalculate: () => Promise.reject(new HostRefused(noFormulas)),
    functionsReady: () => Promise.resolve(null),
    theme: () => null,
    onTheme: () => undefined,
  };
}

function range(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, index) => from + index);
}

function withCell(sheet: Sheet, { row, column }: CellPlace, value: Cell): Sheet {
  const rows = sheet.rows.map((cells) => [...cells]);
  while (rows.length < row) rows.push([]);
  const cells = rows[row - 1] ?? [];
  while (cells.length < column) cells.push(null);
  cells[column - 1] = value;
  return { ...sheet, rows };
}

function freeName(wanted: string, taken: readonly Sheet[]): string {
  const used = new Set(taken.map((sheet) => sheet.name.toLowerCase()));
  let name = wanted;
  for (let count = 2; used.has(name.toLowerCase()); count++) name = `${wanted} (${count})`;
  return name;
}

function sheetOf(model: SheetModel, name: string): Sheet {
  const rows = Array.from(model.rows(), ({ cells }) => Array.from(cells, (cell) => cell?.value ?? null));
  return { name, hidden: false, rows, hiddenRows: new Set(), tables: [] };
}
