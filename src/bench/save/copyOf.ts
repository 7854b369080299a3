import { FileRefused } from '../../hosts/file/zip/refused.ts';
import { withSettings } from '../../hosts/file/patch/settings/writeSettings.ts';
import { calculated } from '../../hosts/grid/formulas.ts';
import { storedBook } from '../../hosts/grid/grid.ts';
import type { Bench } from '../bench.ts';
import type { ShareOptions } from '../../share/types.ts';
import { sheetId } from '../open/gridWorkbook.ts';
import { copyInWorker } from '../worker/copyInWorker.ts';
import type { Copied } from '../worker/messages.ts';
import type { CopyOrder } from '../worker/patchedCopy.ts';
import { editsOf } from './edits.ts';
import { movedFile } from './movedFile.ts';
import { movesOf } from './moves.ts';
import { newSheets } from './newSheets.ts';

export interface Copy {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** What a person should know about the copy; each is one sentence. */
  readonly notes: readonly string[];
}

/**
 * A copy of the opened file with what was changed in the grid; everything else of the file stays in it as it is. `patched`
 * makes its bytes, in the page by a worker; with `share` it is one for people without our functions. Rejects with FileRefused where a change cannot be kept.
 */
export async function copyOf(
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
  const order = { original: file.original, edits, added: newSheets(bench), ...(share && { share }) };
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
  const gone = ownSheets(bench).filter(({ id }) => !storedBook(bench.grid).getSheetBySheetId(id));
  return gone.map(({ name }) => `Sheet “${name}” was deleted here; the copy still has it.`);
}
