import type { SheetEdits } from '../../hosts/file/patch/types.ts';
import type { SheetView, ViewRow, WorkbookView } from '../../hosts/file/view/types.ts';
import type { ModelRow, SheetModel } from '../../sheets/model.ts';
import type { ShareOptions } from '../../share/types.ts';
import type { OpenedFile } from '../open/openFile.ts';
import type { NewSheet } from '../save/newSheets.ts';
import type { RowPiece } from './rowPieces.ts';

/** What a person is told where a message between the page and its worker did not come. */
export const lost = 'a part of the rows was lost on the way. Nothing was changed: try again';

/** A file is to be opened. */
export interface OpenAsked {
  readonly kind: 'open';
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** A model without its rows, which go ahead of it in pieces. */
export type ModelHead = Omit<SheetModel, 'rows'>;

/** A copy is to be made; rows of the sheets to be added came before, by their place in `added`. */
export interface CopyAsked {
  readonly kind: 'copy';
  /** `null` for a new workbook. */
  readonly original: Uint8Array | null;
  readonly edits: readonly SheetEdits[];
  readonly share?: ShareOptions;
  readonly added: readonly { readonly head: ModelHead; readonly beyondModel: NewSheet['beyondModel'] }[];
}

export interface Copied {
  readonly bytes: Uint8Array;
  /** What a person should know about the copy; each is one sentence. */
  readonly notes: readonly string[];
}

/** An opened file without its bytes, which the page has, and without rows, which came before by their sheet's place. */
interface OpenedHead extends Omit<OpenedFile, 'view' | 'original'> {
  readonly view: Omit<WorkbookView, 'sheets'> & { readonly sheets: readonly Omit<SheetView, 'rows'>[] };
  readonly isWorkbook: boolean;
}

/** How many pieces of rows went ahead of the message that needs them: one that was lost must not go unnoticed. */
export interface AfterPieces {
  readonly pieces: number;
}

/** What the page sends to the worker. */
export type ToWorker = RowPiece<ModelRow> | OpenAsked | (CopyAsked & AfterPieces);

/** What comes of work that succeeds. */
export interface Results {
  readonly opened: OpenedHead;
  readonly copied: Copied;
}

/** What the worker sends to the page: results, after their rows, or why there are none. */
export type FromWorker =
  | RowPiece<ViewRow>
  | ({ readonly kind: 'done'; readonly results: Partial<Results> } & AfterPieces)
  | { readonly kind: 'refused'; readonly message: string }
  | { readonly kind: 'failed'; readonly message: string };
