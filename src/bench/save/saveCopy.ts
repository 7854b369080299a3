import { dayOf } from '../../share/dayOf.ts';
import type { ShareFormulas, ShareOptions } from '../../share/types.ts';
import type { Bench } from '../bench.ts';
import { copyInWorker } from '../worker/copyInWorker.ts';
import { removeSheets } from '../../hosts/file/remove/removeSheets.ts';
import { FileRefused } from '../../hosts/file/zip/refused.ts';
import { withSettings } from '../../hosts/file/patch/settings/writeSettings.ts';
import { calculated } from '../../hosts/grid/formulas.ts';
import { storedBook, type Grid } from '../../hosts/grid/grid.ts';
import { sheetId } from '../open/gridWorkbook.ts';
import type { Copied } from '../worker/messages.ts';
import type { CopyOrder } from '../worker/patchedCopy.ts';
import { editsOf } from './edits.ts';
import { newSheets } from './newSheets.ts';
import { movedWorkbook } from '../../hosts/file/patch/move/movedWorkbook.ts';
import type { SheetMove, Axis, Step } from '../../hosts/file/patch/move/axis.ts';
import { viewWorkbook } from '../../hosts/file/view/viewWorkbook.ts';
import type { OpenedFile } from '../open/openFile.ts';
import type { Worksheet } from '@univerjs/core';
import { markedColumns, markedRows, type Origin, originOf } from './origins.ts';

/** The rows and columns that were inserted and deleted since the file was opened, and what of it cannot be told, a sentence each. */
interface FileMoves {
  readonly moves: readonly SheetMove[];
  readonly notes: readonly string[];
}

/** Where a marked row or column stands and stood, both from 1. */
interface Placed {
  readonly now: number;
  readonly before: number;
}

interface MovedFile {
  readonly file: OpenedFile;
  readonly notes: readonly string[];
}

interface Copy {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** What a person should know about the copy; each is one sentence. */
  readonly notes: readonly string[];
}

const xlsx = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/**
 * Hands the user a copy of the workbook as a download, with `formulas` one to share; what to know about it, in one line.
 * Rejects with FileRefused as `copyOf`.
 */
export async function saveCopy(bench: Bench, formulas?: ShareFormulas): Promise<string> {
  const share = formulas && { formulas, date: dayOf(new Date()) };
  const { name, bytes, notes } = await copyOf(bench, copyInWorker, share);
  const address = URL.createObjectURL(new Blob([bytes.slice()], { type: xlsx }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser takes the bytes soon after the click.
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, 60_000);
  return [`A copy of ${name} went to your downloads.`, ...notes].join(' ');
}

/**
 * A copy of the opened file with what was changed in the grid; everything else of the file stays in it as it is. `patched`
 * makes its bytes, in the page by a worker; with `share` it is one for people without our functions. Rejects with FileRefused where a change cannot be kept.
 */
async function copyOf(
  bench: Bench,
  patched: (order: CopyOrder) => Copied | Promise<Copied> = copyInWorker,
  share?: ShareOptions,
): Promise<Copy> {
  const { grid, port } = bench;
  refuseRenamed(bench);
  await calculated(grid);
  const { moves, notes: reordered } = movesOf(grid, bench.file);
  const { file, notes: unmoved } = movedFile(bench.file, moves);
  const { edits, notes: unsaved } = file.original ? editsOf(grid, file) : { edits: [], notes: [] };
  const original = file.original && withoutRemoved(bench, file.original);
  const order = { original, edits, added: newSheets(bench), ...(share && { share }) };
  const { bytes, notes } = await patched(order);
  const own = file.original
    ? file.view.name.replace(/\.xlt([xm])$/i, '.xls$1')
    : file.view.name.replace(/(\.[^.]*)?$/, '.xlsx');
  const all = [...notes, ...(file.original ? reordered : []), ...unmoved, ...unsaved, ...deleted(bench)];
  return {
    name: share ? sharedName(own) : own,
    bytes: withSettings(bytes, port.settings),
    notes: [...new Set(all)],
  };
}

/** A name of its own, so that nobody takes the copy for the workbook. */
function sharedName(name: string): string {
  const dot = name.lastIndexOf('.');
  return dot < 0 ? name : `${name.slice(0, dot)} (to share)${name.slice(dot)}`;
}

function ownSheets({ file }: Bench): { readonly name: string; readonly id: string }[] {
  return file.view.sheets.flatMap(({ name }, index) =>
    file.added.has(index) ? [] : [{ name, id: sheetId(index) }],
  );
}

/** The file without the sheets that were taken away on request and are not back. */
function withoutRemoved(bench: Bench, original: Uint8Array): Uint8Array {
  const names = removedSheets(bench).map(({ name }) => name);
  return names.length === 0 ? original : removeSheets(original, names);
}

function removedSheets(bench: Bench) {
  const { port, grid } = bench;
  return ownSheets(bench).filter(({ id }) => port.removed.has(id) && !storedBook(grid).getSheetBySheetId(id));
}

function refuseRenamed(bench: Bench): void {
  for (const { name, id } of ownSheets(bench)) {
    const now = storedBook(bench.grid).getSheetBySheetId(id)?.getName();
    if (now !== undefined && now !== name) {
      throw new FileRefused(
        `Sheet “${name}” was renamed to “${now}”. A copy keeps the names of the file’s sheets: rename it back, then save.`,
      );
    }
  }
}

function deleted(bench: Bench): string[] {
  const removed = removedSheets(bench).map(({ id }) => id);
  const gone = ownSheets(bench).filter(
    ({ id }) => !removed.includes(id) && !storedBook(bench.grid).getSheetBySheetId(id),
  );
  return gone.map(({ name }) => `Sheet “${name}” was deleted here; the copy still has it.`);
}

/** The opened file as it is after rows and columns were inserted and deleted. Throws FileRefused for what would damage it. */
function movedFile(file: OpenedFile, moves: readonly SheetMove[]): MovedFile {
  const { original, view, added } = file;
  if (original === null || moves.length === 0) return { file, notes: [] };
  const { bytes, notes } = movedWorkbook(original, moves);
  const moved = viewWorkbook(view.name, bytes);
  const sheets = view.sheets.map((sheet, index) =>
    added.has(index) ? sheet : (moved.sheets.find(({ name }) => name === sheet.name) ?? sheet),
  );
  return { file: { ...file, original: bytes, view: { ...view, sheets } }, notes };
}

/** Reads off the marks of rows and columns which came, which went, and which changed their order. */
function movesOf(grid: Grid, { view, added }: OpenedFile): FileMoves {
  const notes: string[] = [];
  const moves = view.sheets.flatMap(({ name }, index): SheetMove[] => {
    const sheet = storedBook(grid).getSheetBySheetId(sheetId(index));
    if (!sheet || added.has(index)) return [];
    const rows = axisOf(rowOrigins(sheet));
    const columns = axisOf(columnOrigins(sheet));
    if (!rows || !columns) {
      notes.push(
        `Sheet “${name}”: ${rows ? 'columns' : 'rows'} were put into another order here; the copy has their cells in that order, while tables, rules, charts and names of the file stay at their places.`,
      );
    }
    const move = { sheet: name, rows: rows ?? [], columns: columns ?? [] };
    return move.rows.length + move.columns.length === 0 ? [] : [move];
  });
  return { moves, notes };
}

function rowOrigins(sheet: Worksheet): Placed[] {
  return markedRows(sheet).flatMap(([row, data]) => placed(row, originOf(data)));
}

function columnOrigins(sheet: Worksheet): Placed[] {
  return markedColumns(sheet).flatMap(([column, data]) => placed(column, originOf(data)));
}

function placed(at: number, origin: Origin | undefined): Placed[] {
  return origin ? [{ now: at + 1, before: origin.place }] : [];
}

/** The steps that lead from the places before to those now; `undefined` where the order changed. */
function axisOf(marks: readonly Placed[]): Axis | undefined {
  const steps: Step[] = [];
  let last: Placed = { now: 0, before: 0 };
  for (const mark of marks.toSorted((a, b) => a.now - b.now)) {
    if (mark.before <= last.before) return undefined;
    const more = mark.now - last.now - (mark.before - last.before);
    // New rows take after the row above them; between blank ones none can be told from another.
    if (more !== 0) {
      steps.push({ at: last.before + 1, removed: Math.max(0, -more), inserted: Math.max(0, more) });
    }
    last = mark;
  }
  return steps;
}
