import type { Area } from '../cells/sheet.ts';
import { addNotes } from '../hosts/file/notes/addNotes.ts';
import { patchWorkbook } from '../hosts/file/patch/patchWorkbook.ts';
import { viewWorkbook } from '../hosts/file/view/viewWorkbook.ts';
import { readWorkbookPart } from '../hosts/file/read/workbookPart.ts';
import { openWorkbook } from '../hosts/file/write/package/openWorkbook.ts';
import { PackageEdits } from '../hosts/file/write/package/packageEdits.ts';
import { collect } from '../hosts/file/zip/collect.ts';
import { defaultLimits } from '../hosts/file/zip/limits.ts';
import { BookCells } from './bookCells.ts';
import { bookNames } from './bookNames.ts';
import { aroundCells } from './aroundCells.ts';
import { usesOfFunctions } from './usesOfFunctions.ts';
import { replacedCells } from './replacedCells.ts';
import { Results } from './results.ts';
import type { ShareOptions, SharedCopy } from './types.ts';
import { countNote, unknownNotes, threadNote } from './words.ts';
import { cellAddress } from '../cells/address.ts';
import type { CellNote } from '../hosts/file/notes/commentTexts.ts';
import { readRelationships } from '../hosts/file/read/relationships.ts';
import { readXml } from '../hosts/file/read/xml.ts';
import type { Archive } from '../hosts/file/zip/archive.ts';
import type { EditedCell } from '../hosts/file/patch/types.ts';
import type { ViewRow } from '../hosts/file/view/types.ts';
import { withoutSpillSigns } from './spillSigns.ts';

/**
 * A copy of an .xlsx or .xlsm workbook for people without our functions: where a cell's formula calls one, the cell has
 * its value with the formula in a note, or a native formula (`options.formulas`). Conditional formats, rules for input
 * and names that call one can't hold a value and are left out, which `notes` says. What is not touched is taken over byte for byte.
 * A cell whose result is neither in the file nor can be worked out keeps what the file has, and is told by sheet and address.
 */
export function shareWorkbook(original: Uint8Array, options: ShareOptions): SharedCopy {
  const view = viewWorkbook('', original);
  const source = openWorkbook(original, false);
  const use = usesOfFunctions(bookNames(source.workbook.text, source.workbook.root));
  const results = new Results(new BookCells(view), use.uses);
  const replaced = view.sheets.map((sheet) => ({
    sheet: sheet.name,
    ...replacedCells(sheet, use, results, options),
  }));
  const unknown = replaced.flatMap((one) => one.unknown);

  const filledFrom = (sheet: string, row: number, column: number): Area | undefined =>
    replaced
      .find((one) => one.sheet.toLowerCase() === sheet.toLowerCase())
      ?.filled.find(({ top, left }) => top === row && left === column);
  const edits = replaced.map(({ sheet, cells }, index) => {
    const own = new Set(cells.map(({ row, column }) => `${row} ${column}`));
    const spilled = spillCells(view.sheets[index]?.rows ?? [], sheet, filledFrom);
    return { sheet, cells: [...cells, ...spilled.filter(({ row, column }) => !own.has(`${row} ${column}`))] };
  });
  const patched = collect();
  const { notes } = patchWorkbook(
    original,
    edits.filter(({ cells }) => cells.length > 0),
    [],
    patched.sink,
  );

  const book = openWorkbook(patched.bytes(), false);
  const changes = new PackageEdits(book);
  const { sheets } = readWorkbookPart(book.archive, defaultLimits);
  const threads = replaced.flatMap(({ sheet, notes: own }) => {
    const part = sheets.find(({ name }) => name === sheet)?.part.name;
    if (part === undefined) return [];
    addNotes(book, changes, { part, name: sheet }, own);
    return threadNotes(book.archive, part, sheet, own);
  });
  const count = {
    values: replaced.reduce((sum, one) => sum + one.values, 0),
    native: replaced.reduce((sum, one) => sum + one.native, 0),
  };
  const around = aroundCells(book, changes, {
    use,
    filledFrom,
    frozen: count.values + unknown.length > 0,
    calculate: results.workedOut,
  });
  return {
    bytes: changes.bytes(options.deflater),
    replaced: count,
    unknown,
    notes: [countNote(count, unknown.length), ...unknownNotes(unknown), ...threads, ...around, ...notes],
  };
}

/** What to tell of cells with a thread of comments, beside which a note may not be shown. */
function threadNotes(archive: Archive, part: string, sheet: string, notes: readonly CellNote[]): string[] {
  const threads = new Set<string>();
  for (const { kind, target } of readRelationships(archive, part, defaultLimits)) {
    const entry = kind === 'threadedComment' ? archive.get(target) : undefined;
    if (!entry) continue;
    readXml(archive, entry, defaultLimits, {
      open(name, attributes) {
        if (name === 'threadedComment') threads.add(attributes['ref'] ?? '');
      },
    });
  }
  return notes.flatMap(({ row, column, text }) => {
    const address = cellAddress(row, column);
    return threads.has(address) ? [threadNote(sheet, address, text)] : [];
  });
}

/** The cells of a sheet whose formulas name with `#` what a replaced formula filled, with the area in its place. */
function spillCells(
  rows: readonly ViewRow[],
  sheet: string,
  filledFrom: (sheet: string, row: number, column: number) => Area | undefined,
): EditedCell[] {
  return rows.flatMap(({ row, cells }) =>
    cells.flatMap(({ column, formula, value, error, array }): EditedCell[] => {
      const now = formula === undefined ? undefined : withoutSpillSigns(formula, sheet, filledFrom);
      if (now === undefined || now === formula) return [];
      return [
        { row, column, value, formula: now, ...(error && { error }), ...(array && { array }) },
        ...restOf(rows, row, column, array),
      ];
    }),
  );
}

/** An array formula is given with the values of all the cells it fills. */
function restOf(
  rows: readonly ViewRow[],
  row: number,
  column: number,
  array: Area | undefined,
): EditedCell[] {
  if (!array) return [];
  const rest: EditedCell[] = [];
  for (let down = array.top; down <= array.bottom; down++) {
    for (let right = array.left; right <= array.right; right++) {
      if (down === row && right === column) continue;
      const cell = rows.find((one) => one.row === down)?.cells.find((one) => one.column === right);
      rest.push({
        row: down,
        column: right,
        value: cell?.value ?? null,
        ...(cell?.error && { error: cell.error }),
      });
    }
  }
  return rest;
}
