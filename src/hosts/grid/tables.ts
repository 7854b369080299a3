import type { Worksheet } from '@univerjs/core';
import type { Sheet, SheetTable } from '../../cells/sheet.ts';
import type { ViewRule } from '../file/view/types.ts';

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

/** The conditional formats that are kept beside a sheet, in the order in which they apply. */
export function rulesOf(sheet: Worksheet): readonly ViewRule[] {
  const rules: unknown = sheet.getConfig().custom?.['rules'];
  return Array.isArray(rules) ? (rules as readonly ViewRule[]) : none;
}

/** One and the same, so that a sheet without rules is known again. */
const none: readonly ViewRule[] = [];
