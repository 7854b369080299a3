import { cellText, isBlank } from '../../../cells/cell.ts';
import { cellAt } from '../../../cells/sheet.ts';
import { isLabel, isText, type ListRows } from './listRows.ts';
import type { RecordBelow } from './recordBelow.ts';
import { isNumber } from './recordPoints.ts';
import { isProbeWord, isTagWord, labelledTag, longestTitle, namedTag, titleReach } from './titleWords.ts';

/** How a row above the headers of a record reads, from its title for sure to a row of the table for sure. */
type Reading = 'blank' | 'names a tag' | 'known tag' | 'line' | 'words' | 'numbers' | 'row of the table';

/** How much of a title must stand above a row for it to belong to the title too. */
const doubt: Readonly<Partial<Record<Reading, number>>> = { line: 1, words: 2, numbers: 3 };
/** The most doubtful rows that go with a row above them. */
const settles: Readonly<Partial<Record<Reading, number>>> = { blank: 1, 'known tag': 2, 'names a tag': 3 };

/**
 * The first row of the title above the headers of a record, or their own row. A row that may be one of the table is none
 * of the title: one line of text counts where a blank row or a line with a tag stands above it, more only below a line
 * with a tag. `isOpen` tells which rows may be a title at all, `isKnown` which tags stand in the table above a row.
 */
export function recordTop(
  list: ListRows,
  head: RecordBelow,
  isOpen: (row: number) => boolean,
  isKnown: (tag: string, row: number) => boolean,
): number {
  let top = head.row;
  let most = 0;
  let above = head.row;
  let apart = false;
  // One row further than a title reaches: a blank row may end it there.
  for (let row = head.row - 1; row >= head.row - titleReach - 1 && isOpen(row); row--) {
    const reading = readingOf(list, head, row, isKnown);
    const settled = settles[reading];
    if (settled === undefined) {
      const more = doubt[reading];
      if (more === undefined || apart) break;
      most = Math.max(most, more);
      above = row;
      continue;
    }
    if (reading !== 'blank' && row < head.row - titleReach) break;
    apart = reading === 'blank';
    if (most > settled) {
      if (apart) continue;
      break;
    }
    top = apart ? above : row;
    above = top;
    most = 0;
  }
  return top;
}

function readingOf(
  list: ListRows,
  head: RecordBelow,
  row: number,
  isKnown: (tag: string, row: number) => boolean,
): Reading {
  const { sheet, tag, numbers } = list;
  const filled: number[] = [];
  for (let column = Math.max(1, Math.min(list.left, head.left - 1)); ; column++) {
    if (column > Math.max(list.right, head.right + 1)) break;
    if (!isBlank(cellAt(sheet, row, column))) filled.push(column);
  }
  if (filled.length === 0) return 'blank';
  const text = (column: number): string => cellText(cellAt(sheet, row, column)).slice(0, longestTitle + 1);
  const ofHead = filled.filter((column) => column >= head.left - 1 && column <= head.right + 1);
  const amounts = numbers.some((column) => isNumber(sheet, row, column));
  if (amounts && isText(sheet, row, tag) && mayBeTag(text(tag))) return 'row of the table';
  const named = ofHead.some(
    (column) => namedTag(text(column)) !== undefined || (isTagWord(text(column)) && text(column + 1) !== ''),
  );
  if (named) return 'names a tag';
  const known = ofHead.find((column) => {
    const told = isProbeWord(text(column)) ? text(column + 1) : labelledTag(text(column));
    return isKnown(text(column), row) || (told !== undefined && isKnown(told, row));
  });
  const ofNumber = filled.filter((column) => column !== known && isNumber(sheet, row, column));
  if (known !== undefined && ofNumber.length === 0) return 'known tag';
  const [first] = filled;
  if (first !== undefined && isText(sheet, row, first) && isLabel(text(first))) return 'line';
  if (ofNumber.length > 1) return 'row of the table';
  if (ofNumber.length > 0) return 'numbers';
  return filled.length <= head.points.length ? 'line' : 'words';
}

function mayBeTag(text: string): boolean {
  return /\d/u.test(text) && !isLabel(text) && namedTag(text) === undefined;
}
