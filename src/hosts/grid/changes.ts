import type { ICommandInfo } from '@univerjs/core';
import { type Grid, storedBook } from './grid.ts';

/** Mutations of the grid that change what stands in cells. */
const changing: ReadonlySet<string> = new Set([
  'sheet.mutation.insert-row',
  'sheet.mutation.insert-col',
  'sheet.mutation.remove-rows',
  'sheet.mutation.remove-col',
  'sheet.mutation.move-rows',
  'sheet.mutation.move-columns',
  'sheet.mutation.set-range-values',
  'sheet.mutation.move-range',
  'sheet.mutation.reorder-range',
  'sheet.mutation.add-worksheet-merge',
  'sheet.mutation.remove-worksheet-merge',
  'sheet.mutation.remove-sheet',
]);

/** Mutations beside those of cells that make the workbook another than its file. */
const bookKeeping =
  /^sheet\.mutation\.(insert-sheet|set-worksheet-(name|order|hidden|col-width|row-height)|set-(row|col)-(hidden|visible))$/;

/** A change to a sheet, by its id and its name. */
export interface SheetChange {
  readonly id: string;
  readonly sheet: string;
  /** What stands in cells changed, not only the order or size of something. */
  readonly cells: boolean;
}

/**
 * Calls back after the user, a program or Undo changes the workbook; what formulas show in consequence is no change of its
 * own. The returned function stops it.
 */
export function onBookChanged(grid: Grid, listener: (change: SheetChange) => void): () => void {
  const heard = grid.api.addEvent(grid.api.Event.CommandExecuted, (event) => {
    const { id, params } = event as ICommandInfo<{ subUnitId?: string; subUnitName?: string }>;
    const { options } = event as { readonly options?: { readonly applyFormulaCalculationResult?: boolean } };
    const cells = changing.has(id);
    if ((!cells && !bookKeeping.test(id)) || options?.applyFormulaCalculationResult === true) return;
    const sheetId = params?.subUnitId ?? '';
    const sheet = storedBook(grid).getSheetBySheetId(sheetId);
    listener({ id: sheetId, sheet: sheet?.getName() ?? params?.subUnitName ?? '', cells });
  });
  return () => {
    heard.dispose();
  };
}

/** Calls back with the sheet's name after cells change, but not where `own` names the sheet's id. */
export function onCellsChanged(
  grid: Grid,
  own: Pick<ReadonlySet<string>, 'has'>,
  listener: (sheet: string) => void,
): () => void {
  return onBookChanged(grid, ({ id, sheet, cells }) => {
    if (cells && !own.has(id)) listener(sheet);
  });
}
