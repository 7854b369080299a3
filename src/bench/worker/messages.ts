import type { SheetEdits } from '../../hosts/file/patch/types.ts';
import type { ModelRow, SheetModel } from '../../sheets/model.ts';
import type { NewSheet } from '../save/newSheets.ts';
import type { RowPiece } from './rowPieces.ts';

/** A model without its rows, which go ahead of it in pieces. */
export type ModelHead = Omit<SheetModel, 'rows'>;

/** A copy is asked for; rows of the sheets to be added came before, by their place in `added`. */
export interface CopyAsked {
  readonly ask: 'copy';
  /** `null` for a new workbook. */
  readonly original: Uint8Array | null;
  readonly edits: readonly SheetEdits[];
  readonly added: readonly { readonly head: ModelHead; readonly beyondModel: NewSheet['beyondModel'] }[];
}

export interface Copied {
  readonly bytes: Uint8Array;
  /** What a person should know about the copy; each is one sentence. */
  readonly notes: readonly string[];
}

/** What the page sends to the worker. */
export type ToWorker = RowPiece<ModelRow> | CopyAsked;

/** How the work ended. */
export type Outcome =
  | { readonly done: 'copied'; readonly copied: Copied }
  | { readonly done: 'refused'; readonly message: string }
  | { readonly done: 'failed'; readonly message: string };

/** What the worker sends to the page. */
export type FromWorker = Outcome;
