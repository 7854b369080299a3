import type { Worksheet } from '@univerjs/core';
import type { Sheet, SheetTable } from '../../cells/sheet.ts';

/**
 * The tables that a file declares on a sheet. The grid has none of its own: they are kept beside the sheet, and given up
 * once rows or columns move, since they would then lie elsewhere; their cells are read as a plain range from there on.
 */
export function tablesOf(sheet: Worksheet): readonly SheetTable[] {
  const tables: unknown = sheet.getConfig().custom?.['tables'];
  return Array.isArray(tables) ? (tables as SheetTable[]) : [];
}

/** How texts that are numbers were meant, where the sheet came from a file of nothing but text. */
export function plainTextOf(sheet: Worksheet): Pick<Sheet, 'plainText'> {
  const plainText: unknown = sheet.getConfig().custom?.['plainText'];
  return plainText === undefined ? {} : { plainText: plainText as NonNullable<Sheet['plainText']> };
}

export function giveUpTables(sheet: Worksheet): void {
  const { custom } = sheet.getConfig();
  if (custom) delete custom['tables'];
}

/** Mutations of the grid after which rows or columns lie elsewhere. */
export const movingMutations: ReadonlySet<string> = new Set([
  'sheet.mutation.insert-row',
  'sheet.mutation.insert-col',
  'sheet.mutation.remove-rows',
  'sheet.mutation.remove-col',
  'sheet.mutation.move-rows',
  'sheet.mutation.move-columns',
]);
