import { isBlank, type Cell } from '../../../cells/cell.ts';
import { cellAt } from '../../../cells/sheet.ts';
import { readNumber } from '../../../cells/number.ts';
import { parseUnit } from '../../../units/parse.ts';
import type { NotRead } from '../../model/attention.ts';
import type { TagIndex } from '../join/tagIndex.ts';
import type { FoundTable, Tables } from '../tables/found.ts';
import { specOf } from '../tables/vocabulary.ts';
import { kindWords, meaningOf } from '../rows/words.ts';
import { isMarkedBlank } from '../understand/readings/cellValue.ts';
import { conceptsIn } from '../understand/vocabulary/lexicon.ts';
import { kindIn } from '../understand/readings/kinds.ts';

/** Rows above a header in which a label may stand. */
const labelRows = 8;
const longestLabel = 80;

/**
 * Whether two tables that were found by their standard headers leave something that a closer look may tell: another list,
 * a column of the audit that was not read, tags that stand twice, cells or units that are not understood.
 */
export function hasDoubts(
  { channels, settings }: Tables,
  index: Readonly<Record<'channels' | 'settings', TagIndex>>,
  notRead: readonly NotRead[],
): boolean {
  return (
    notRead.some(({ what, severity }) => what === 'sheet' || what === 'table' || severity === 'critical') ||
    hasTwins(index.channels) ||
    hasTwins(index.settings) ||
    [channels, settings].some(
      (table) => lacksUnit(table) || hasOddUnits(table) || hasOddCells(table) || hasMachineGaps(table),
    ) ||
    hasUnlistedKind(channels) ||
    hasMachineAbove(channels, settings)
  );
}

function hasTwins(index: TagIndex): boolean {
  return index.tagged.some((row) => index.rowsOf(index.keyOf(row)).length > 1);
}

/** A column that the table must have, of a quantity, and nothing that names its unit. */
function lacksUnit({ kind, columns, unitColumns }: FoundTable): boolean {
  if (unitColumns.length > 0) return false;
  return [...columns.values()].some(({ id, unit }) => {
    const spec = specOf(kind, id);
    return spec?.required === true && spec.dimensions !== undefined && unit === undefined;
  });
}

/** Cells of a column of units, such as `% FS`, that are no unit by themselves. */
function hasOddUnits({ sheet, unitColumns, firstRow, lastRow, skipped }: FoundTable): boolean {
  if (unitColumns.length === 0) return false;
  const known = new Set<Cell>();
  for (let row = firstRow; row <= lastRow; row++) {
    if (skipped.has(row)) continue;
    for (const { column } of unitColumns) {
      const cell = cellAt(sheet, row, column);
      if (isBlank(cell) || known.has(cell)) continue;
      if (typeof cell !== 'string' || (!parseUnit(cell) && !isMarkedBlank(cell))) return true;
      known.add(cell);
    }
  }
  return false;
}

/** Lines without the name of a machine among others that have one: it may be that of the line above. */
function hasMachineGaps({ sheet, columns, firstRow, lastRow, skipped }: FoundTable): boolean {
  const [machine, tag] = [columns.get('machine')?.column, columns.get('tag')?.column];
  if (machine === undefined || tag === undefined) return false;
  let [named, blank] = [false, false];
  for (let row = firstRow; row <= lastRow && !(named && blank); row++) {
    if (skipped.has(row) || isBlank(cellAt(sheet, row, tag))) continue;
    if (isBlank(cellAt(sheet, row, machine))) blank = true;
    else named = true;
  }
  return named && blank;
}

/** A label above a list without a column for its machine, as `Machine` with a name beside it. */
function hasMachineAbove({ sheet, headerRow, columns }: FoundTable, other: FoundTable): boolean {
  if (columns.has('machine')) return false;
  for (let row = Math.max(1, headerRow - labelRows); row < headerRow; row++) {
    if (other.sheet === sheet && row >= other.headerRow && row <= other.lastRow) continue;
    for (const cell of sheet.rows[row - 1] ?? [])
      if (typeof cell === 'string' && cell.length <= longestLabel && conceptsIn(cell).has('machine'))
        return true;
  }
  return false;
}

/** A word for a kind of channel that is known, though not one of those that the table may have. */
function hasUnlistedKind({ sheet, columns, firstRow, lastRow, skipped }: FoundTable): boolean {
  const kind = columns.get('kind')?.column;
  if (kind === undefined) return false;
  const seen = new Set<string>();
  for (let row = firstRow; row <= lastRow; row++) {
    const cell = cellAt(sheet, row, kind);
    if (typeof cell !== 'string' || seen.has(cell) || skipped.has(row)) continue;
    seen.add(cell);
    if (meaningOf(kindWords, cell) === undefined && kindIn(cell) !== undefined) return true;
  }
  return false;
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
  return 'why' in readNumber(cell, plainText) && !isMarkedBlank(cell);
}
