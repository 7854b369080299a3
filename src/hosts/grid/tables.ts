import type { Worksheet } from '@univerjs/core';
import type { Sheet, SheetTable } from '../../cells/sheet.ts';

/**
 * The tables that a file declares on a sheet. The grid has none of its own: they are kept beside the sheet, and whoever
 * shows the grid moves them along with its rows and columns.
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
