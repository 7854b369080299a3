import type { ICommandInfo, IExecutionOptions } from '@univerjs/core';
import { type Grid, storedBook } from './grid.ts';
import { giveUpTables, movingMutations } from './tables.ts';

/** Mutations of the grid that change what stands in cells. */
const changing: ReadonlySet<string> = new Set([
  ...movingMutations,
  'sheet.mutation.set-range-values',
  'sheet.mutation.move-range',
  'sheet.mutation.reorder-range',
  'sheet.mutation.add-worksheet-merge',
  'sheet.mutation.remove-worksheet-merge',
  'sheet.mutation.remove-sheet',
]);

/**
 * Calls back with the sheet's name after cells change: by the user, by a calculation, or by Undo, but not where `own`
 * names the sheet. The returned function stops it.
 */
export function onCellsChanged(
  grid: Grid,
  own: Pick<ReadonlySet<string>, 'has'>,
  listener: (sheet: string) => void,
): () => void {
  const heard = grid.api.addEvent(grid.api.Event.CommandExecuted, (event) => {
    const { id, params } = event as unknown as ICommandInfo<{ subUnitId?: string; subUnitName?: string }>;
    const { options } = event as unknown as { options?: IExecutionOptions };
    if (!changing.has(id) || options?.fromCollab === true) return;
    const sheet = storedBook(grid).getSheetBySheetId(params?.subUnitId ?? '');
    if (sheet && movingMutations.has(id)) giveUpTables(sheet);
    if (!own.has(params?.subUnitId ?? '')) listener(sheet?.getName() ?? params?.subUnitName ?? '');
  });
  return () => {
    heard.dispose();
  };
}

/** Mutations beside those of cells that make the workbook another than its file. */
const bookKeeping = /^sheet\.mutation\.(insert-sheet|remove-sheet|set-worksheet-(name|order|hidden))$/;

/** Calls back after anything changes that a saved copy would show. */
export function onBookChanged(grid: Grid, listener: () => void): void {
  grid.api.addEvent(grid.api.Event.CommandExecuted, ({ id }) => {
    if (changing.has(id) || bookKeeping.test(id)) listener();
  });
}
