import { movedWorkbook } from '../../hosts/file/patch/move/movedWorkbook.ts';
import type { SheetMove } from '../../hosts/file/patch/move/types.ts';
import { viewWorkbook } from '../../hosts/file/view/viewWorkbook.ts';
import type { OpenedFile } from '../open/openFile.ts';

export interface MovedFile {
  readonly file: OpenedFile;
  readonly notes: readonly string[];
}

/** The opened file as it is after rows and columns were inserted and deleted. Throws FileRefused for what would damage it. */
export function movedFile(file: OpenedFile, moves: readonly SheetMove[]): MovedFile {
  const { original, view, added } = file;
  if (original === null || moves.length === 0) return { file, notes: [] };
  const { bytes, notes } = movedWorkbook(original, moves);
  const moved = viewWorkbook(view.name, bytes);
  const sheets = view.sheets.map((sheet, index) =>
    added.has(index) ? sheet : (moved.sheets.find(({ name }) => name === sheet.name) ?? sheet),
  );
  return { file: { ...file, original: bytes, view: { ...view, sheets } }, notes };
}
