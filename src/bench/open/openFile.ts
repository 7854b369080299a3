import type { Sheet } from '../../cells/sheet.ts';
import { readCsv } from '../../hosts/file/read/csv.ts';
import type { WorkbookView } from '../../hosts/file/view/types.ts';
import { plainView } from './plainView.ts';
import { viewWorkbook } from '../../hosts/file/view/viewWorkbook.ts';

/** A file that was opened: what is shown of it, and its bytes, which a saved copy is made from. */
export interface OpenedFile {
  readonly view: WorkbookView;
  /** `null` where the file is no workbook but a table of plain text. */
  readonly original: Uint8Array | null;
  /** Sheets that are shown but stand in no file, by their place in `view`. */
  readonly added: ReadonlySet<number>;
  /** How texts that are numbers were meant, where the file holds nothing but text. */
  readonly plainText?: NonNullable<Sheet['plainText']>;
  /** Cell of the front sheet that the story begins with; the pane takes its row at once. */
  readonly start?: { readonly row: number; readonly column: number };
}

/** Opens a workbook or a table of plain text; throws FileRefused for anything else. */
export function openFile(name: string, bytes: Uint8Array): OpenedFile {
  if (/\.(csv|tsv|txt)$/i.test(name)) {
    const sheet = readCsv(name, bytes);
    const { plainText } = sheet;
    return {
      view: plainView(name, sheet),
      original: null,
      added: new Set([0]),
      ...(plainText && { plainText }),
    };
  }
  return { view: viewWorkbook(name, bytes), original: bytes, added: new Set() };
}
