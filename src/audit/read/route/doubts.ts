import type { Cell } from '../../../cells/cell.ts';
import { readNumber } from '../../../cells/number.ts';
import type { NotRead } from '../../model/attention.ts';
import type { TagIndex } from '../join/tagIndex.ts';
import { isSameTable, type FoundTable, type Tables } from '../tables/found.ts';
import { specOf } from '../tables/vocabulary.ts';
import { isSaidBlank } from '../understand/readings/blanks.ts';

/**
 * Whether two tables that were found by their standard headers leave something that a closer look may tell: another list,
 * a column of the audit that was not read, tags that stand twice, cells or units that are not understood.
 */
export function leavesDoubts(
  { channels, settings }: Tables,
  index: Readonly<Record<'channels' | 'settings', TagIndex>>,
  notRead: readonly NotRead[],
): boolean {
  const both = isSameTable(channels, settings) ? [channels] : [channels, settings];
  return (
    notRead.some(({ what, severity }) => what === 'sheet' || what === 'table' || severity === 'critical') ||
    (both.every((table) => table.columns.has('machine')) && hasTwins(index.channels)) ||
    [channels, settings].some((table) => lacksUnit(table) || hasOddCells(table))
  );
}

function hasTwins({ tagged, keyOf, rowsOf }: TagIndex): boolean {
  return tagged.some((row) => rowsOf(keyOf(row)).length > 1);
}

/** A column that the table must have, of a quantity, and nothing that names its unit. */
function lacksUnit({ kind, columns, unitColumns }: FoundTable): boolean {
  if (unitColumns.length > 0) return false;
  return [...columns.values()].some(({ id, unit }) => {
    const spec = specOf(kind, id);
    return spec?.required === true && spec.dimensions !== undefined && unit === undefined;
  });
}

/** A text in a column of numbers that is none. */
function hasOddCells({ kind, sheet, columns, firstRow, lastRow, skipped }: FoundTable): boolean {
  const numbers = [...columns.values()].filter(({ id }) => specOf(kind, id)?.holds === 'number');
  for (let row = firstRow; row <= lastRow; row++) {
    const cells = sheet.rows[row - 1];
    if (!cells || skipped.has(row)) continue;
    for (const { column } of numbers) if (isOdd(cells[column - 1], sheet.plainText)) return true;
  }
  return false;
}

function isOdd(cell: Cell | undefined, plainText: FoundTable['sheet']['plainText']): boolean {
  if (typeof cell !== 'string' || cell.trim() === '') return false;
  return 'why' in readNumber(cell, plainText) && !isSaidBlank(cell);
}
