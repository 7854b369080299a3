import { cellText, isBlank } from '../../../../cells/cell.ts';
import { cellAt, type Sheet } from '../../../../cells/sheet.ts';
import type { HeaderPart } from './block.ts';
import { mergeAt } from './shownCells.ts';

/** Lines that a header stands in and the lines across which it runs, in rows or turned by a quarter. */
export interface HeaderLines {
  readonly sheet: Sheet;
  readonly first: number;
  readonly last: number;
  /** First line of the block across: groups do not reach beyond it. */
  readonly from: number;
  /** Rows head columns; otherwise columns of labels head rows. */
  readonly rows: boolean;
}

/** The texts over a column (or beside a row), outermost first; each merged text once. */
export function headerPath(lines: HeaderLines, across: number): HeaderPart[] {
  const parts: HeaderPart[] = [];
  const seen = new Set<string>();
  for (let line = lines.first; line <= lines.last; line++) {
    const part = partAt(lines, line, across);
    if (!part) continue;
    const key = `${part.row} ${part.column}`;
    if (!seen.has(key)) parts.push(part);
    seen.add(key);
  }
  return parts;
}

function partAt(lines: HeaderLines, line: number, across: number): HeaderPart | undefined {
  const { sheet, rows } = lines;
  const [row, column] = rows ? [line, across] : [across, line];
  const merge = mergeAt(sheet, row, column);
  if (merge) {
    const cell = cellAt(sheet, merge.top, merge.left);
    if (isBlank(cell)) return undefined;
    const wide = rows ? merge.right > merge.left : merge.bottom > merge.top;
    return { text: cellText(cell), row: merge.top, column: merge.left, covers: wide ? 'merged' : 'own' };
  }
  const cell = cellAt(sheet, row, column);
  if (!isBlank(cell)) return { text: cellText(cell), row, column, covers: 'own' };
  return line < lines.last ? assumedGroup(lines, line, across) : undefined;
}

/** A group's text to the left, over a gap without texts: typed over its first column alone, and not merged. */
function assumedGroup(lines: HeaderLines, line: number, across: number): HeaderPart | undefined {
  const { sheet, rows, from, last } = lines;
  for (let at = across - 1; at >= from; at--) {
    const [row, column] = rows ? [line, at] : [at, line];
    const cell = cellAt(sheet, row, column);
    if (mergeAt(sheet, row, column)) return undefined;
    if (isBlank(cell)) continue;
    const [belowRow, belowColumn] = rows ? [last, at] : [at, last];
    const isGroup = line < last && !isBlank(cellAt(sheet, belowRow, belowColumn));
    return isGroup ? { text: cellText(cell), row, column, covers: 'assumed' } : undefined;
  }
  return undefined;
}
