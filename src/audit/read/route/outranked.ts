import { cellText, isBlank, type Cell } from '../../../cells/cell.ts';
import { cellAt, type Area, type Sheet } from '../../../cells/sheet.ts';
import type { FoundTable, Tables } from '../tables/found.ts';
import { isSameTable } from '../tables/found.ts';
import { tagKey } from '../tables/tagKey.ts';
import { specOf } from '../tables/vocabulary.ts';
import { isNumbering } from '../understand/blocks/unitRows.ts';
import { statedZeroToPeak } from '../understand/fields/otherDetection.ts';
import { isSignature, isSpare, isTotal } from '../understand/readings/cellValue.ts';
import { kindIn } from '../understand/readings/kinds.ts';
import { conceptsIn } from '../understand/vocabulary/lexicon.ts';
import type { Concept } from '../understand/vocabulary/wordList.ts';

/** Rows above a header in which a title or a group of columns may stand. */
const titleRows = 6;
/** Words around a list or a column by which a standard header means something else. */
const aside: readonly Concept[] = ['as left', 'old', 'proposed'];
/** Longest text that is looked at for a word. */
const longest = 80;

/**
 * Whether something in two tables that were found by their standard headers may outrank those headers: a hidden column, a
 * header merged over several columns, a word around it, running numbers for tags, rows that are no channels, a word for
 * another kind of channel. Then all the evidence has to be weighed.
 */
export function isOutranked({ channels, settings }: Tables): boolean {
  const both = isSameTable(channels, settings) ? [channels] : [channels, settings];
  return (
    [channels, settings].some(
      (table) => hasHiddenColumn(table) || hasWideHeader(table) || isCommented(table),
    ) ||
    isSaidAside(channels, settings) ||
    isSaidAside(settings, channels) ||
    both.some((table) => hasOtherRows(table) || hasHiddenTwin(table)) ||
    both.every((table) => countsOnly(table)) ||
    hasOtherKinds(channels)
  );
}

function numberColumns({ kind, columns }: FoundTable): number[] {
  return [...columns.values()].flatMap(({ id, column }) =>
    specOf(kind, id)?.holds === 'number' ? [column] : [],
  );
}

function hasHiddenColumn(table: FoundTable): boolean {
  const { hiddenColumns } = table.sheet;
  if (!hiddenColumns || hiddenColumns.size === 0) return false;
  return [...table.columns.values()].some(({ column }) => hiddenColumns.has(column));
}

function hasWideHeader(table: FoundTable): boolean {
  const { sheet, headerRow } = table;
  const wide = (sheet.merged ?? []).filter(
    ({ top, bottom, left, right }) => top <= headerRow && bottom >= headerRow && right > left,
  );
  return wide.length > 0 && numberColumns(table).some((column) => wide.some((area) => covers(area, column)));
}

function covers({ left, right }: Area, column: number): boolean {
  return column >= left && column <= right;
}

/**
 * A word for another time or for what is not in force: in the name of the sheet, a title, or a group above the columns. The
 * name of a text table is its file's, which says nothing against its headers; where two lists rival, none is found by them.
 */
function isSaidAside({ sheet, headerRow, columns }: FoundTable, other: FoundTable): boolean {
  const isNamed = sheet.plainText === undefined;
  if (isNamed && (saysAside(sheet.name) || conceptsIn(sheet.name).has('as left'))) return true;
  for (let row = Math.max(1, headerRow - titleRows); row < headerRow; row++) {
    if (other.sheet === sheet && row >= other.headerRow && row <= other.lastRow) continue;
    for (const cell of sheet.rows[row - 1] ?? [])
      if (typeof cell === 'string' && saysAside(cell)) return true;
  }
  return [...columns.values()].some(
    ({ id, remarks }) => core.has(id) && remarks.some((remark) => saysAside(remark)),
  );
}

const core: ReadonlySet<string> = new Set(['measured', 'configured', 'alert', 'danger']);

function saysAside(text: string): boolean {
  if (text.length > longest) return false;
  const concepts = conceptsIn(text);
  return aside.some((concept) => concepts.get(concept) === 'strong');
}

/** A row whose tag is the word for a sum or a spare place, and no tag with a digit. */
function hasOtherRows({ sheet, columns, firstRow, lastRow, skipped }: FoundTable): boolean {
  const tag = columns.get('tag')?.column ?? 0;
  for (let row = firstRow; row <= lastRow; row++) {
    const cell = cellAt(sheet, row, tag);
    if (typeof cell !== 'string' || cell.length > longest || /\d/u.test(cell) || skipped.has(row)) continue;
    const text = cell.trim();
    if (text !== '' && (isTotal(text) || isSpare(text) || (isSignature(text) && !hasNumbers(sheet, row))))
      return true;
  }
  return false;
}

function hasNumbers({ rows }: Sheet, row: number): boolean {
  return (rows[row - 1] ?? []).some((cell) => typeof cell === 'number');
}

/** A first row that only numbers the columns, or a text around the list that says zero to peak where its units say nothing of it. */
function isCommented({ sheet, columns, firstRow }: FoundTable): boolean {
  const all = [...columns.values()];
  const ats = all.map(({ column }) => column);
  if (isNumbering(sheet, firstRow, { left: Math.min(...ats), right: Math.max(...ats) })) return true;
  return (
    all.some(({ id, unit }) => setpoints.has(id) && unit?.dimension === 'displacement' && !unit.detection) &&
    statedZeroToPeak(sheet).length > 0
  );
}

const setpoints: ReadonlySet<string> = new Set(['alert', 'danger']);

/** A hidden row whose tag stands in another row too. */
function hasHiddenTwin({ sheet, columns, firstRow, lastRow }: FoundTable): boolean {
  const hidden = [...sheet.hiddenRows].filter((row) => row >= firstRow && row <= lastRow);
  if (hidden.length === 0) return false;
  const tag = columns.get('tag')?.column ?? 0;
  const rows = new Map<string, number>();
  for (let row = firstRow; row <= lastRow; row++) {
    const key = tagKey(cellText(cellAt(sheet, row, tag)));
    if (key !== '') rows.set(key, (rows.get(key) ?? 0) + 1);
  }
  return hidden.some((row) => (rows.get(tagKey(cellText(cellAt(sheet, row, tag)))) ?? 0) > 1);
}

/** Tags that only count the rows, beside a column of texts of which each is another. */
function countsOnly({ sheet, columns, firstRow, lastRow, skipped, unread }: FoundTable): boolean {
  const tag = columns.get('tag')?.column ?? 0;
  let rows = 0;
  for (let row = firstRow; row <= lastRow; row++) {
    const cell = cellAt(sheet, row, tag);
    if (isBlank(cell) || skipped.has(row)) continue;
    if (!/^\d{1,5}$/u.test(cellText(cell))) return false;
    rows++;
  }
  const texts = [
    ...unread.map(({ column }) => column),
    ...(['machine', 'location'] as const).flatMap((id) => columns.get(id)?.column ?? []),
  ];
  return rows > 0 && texts.some((column) => areNames(sheet, column, firstRow, lastRow, rows));
}

function areNames(sheet: Sheet, column: number, firstRow: number, lastRow: number, rows: number): boolean {
  const seen = new Set<string>();
  for (let row = firstRow; row <= lastRow; row++) {
    const cell = cellAt(sheet, row, column);
    if (isBlank(cell)) continue;
    if (typeof cell !== 'string') return false;
    const key = tagKey(cell);
    if (seen.has(key)) return false;
    seen.add(key);
  }
  return seen.size * 10 >= rows * 8;
}

/** A word for another kind of channel in a list without a column for it. */
function hasOtherKinds({ sheet, columns, firstRow, lastRow, skipped, unread }: FoundTable): boolean {
  // In a column for the kind a blank means radial.
  if (columns.has('kind')) return false;
  const texts = [
    ...unread.filter(({ name }) => !conceptsIn(name).has('remark')).map(({ column }) => column),
    ...(columns.get('location') ? [columns.get('location')?.column ?? 0] : []),
  ];
  const known = new Map<string, boolean>();
  const tells = (cell: Cell, how: (text: string) => boolean): boolean => {
    if (typeof cell !== 'string' || cell.length > longest) return false;
    const before = known.get(cell);
    if (before !== undefined) return before;
    const found = how(cell);
    known.set(cell, found);
    return found;
  };
  for (let row = firstRow; row <= lastRow; row++) {
    if (skipped.has(row)) continue;
    if (texts.some((column) => tells(cellAt(sheet, row, column), isOtherKind))) return true;
  }
  return false;
}

function isOtherKind(text: string): boolean {
  const kind = kindIn(text);
  return kind !== undefined && kind !== 'radial';
}
