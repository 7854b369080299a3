import type { Edit } from '../write/xml/splice.ts';
import { grouped } from './grouped.ts';
import type { EditedCell } from './types.ts';
import type { RowPlace, SheetMap, Span } from './sheetMap.ts';

/** A cell to be put where the file has none. */
export interface PlacedCell {
  readonly edit: EditedCell;
  readonly markup: string;
}

/** Puts new cells into a row that the file has, each before the first cell to its right. */
export function cellsIntoRow(text: string, row: RowPlace, cells: readonly PlacedCell[]): Edit[] {
  const inOrder = [...cells].sort((a, b) => a.edit.column - b.edit.column);
  const byNext = grouped(inOrder, ({ edit }) => row.cells.find(({ column }) => column > edit.column));
  const behind = byNext.get(undefined) ?? [];
  const edits: Edit[] = [];
  for (const [next, placed] of byNext) {
    if (next !== undefined) edits.push({ from: next.start, to: next.start, text: joined(placed) });
  }
  // `spans` only speeds programs up, but must not leave cells out (ECMA-376 part 1, section 18.3.1.73).
  const spans = /\s+spans\s*=\s*(?:"[^"]*"|'[^']*')/.exec(text.slice(row.start, row.openEnd));
  if (spans !== null) {
    const from = row.start + spans.index;
    edits.push({ from, to: from + spans[0].length, text: '' });
  }
  const last = row.cells.at(-1);
  if (behind.length === 0) return edits;
  // Behind the last cell, and so before an extension list.
  if (last !== undefined) edits.push({ from: last.end, to: last.end, text: joined(behind) });
  else if (row.selfClosing) edits.push(opened(text, row, joined(behind)));
  else edits.push({ from: row.openEnd, to: row.openEnd, text: joined(behind) });
  return edits;
}

/** Puts rows that the file has no element for between those it has; `namespace` as for cells. */
export function newRows(
  text: string,
  { rows, sheetData }: Pick<SheetMap, 'rows' | 'sheetData'>,
  cells: readonly PlacedCell[],
  namespace: string,
): Edit[] {
  const byRow = [...grouped(cells, ({ edit }) => edit.row)].sort(([a], [b]) => a - b);
  const ordered = rows.toSorted((a, b) => a.row - b.row);
  let next = 0;
  const markups = byRow.map(([row, placed]) => {
    while ((ordered[next]?.row ?? Infinity) < row) next++;
    const inOrder = placed.toSorted((a, b) => a.edit.column - b.edit.column);
    return { before: ordered[next], markup: `<row r="${row}"${namespace}>${joined(inOrder)}</row>` };
  });
  return [...grouped(markups, ({ before }) => before)].map(([before, placed]): Edit => {
    const markup = placed.map((row) => row.markup).join('');
    if (before !== undefined) return { from: before.start, to: before.start, text: markup };
    if (sheetData.selfClosing) return opened(text, sheetData, markup);
    return { from: sheetData.closeStart, to: sheetData.closeStart, text: markup };
  });
}

/** Opens an element that closed itself. */
function opened(text: string, span: Span, inside: string): Edit {
  const slash = text.lastIndexOf('/', span.openEnd - 1);
  return { from: slash, to: span.openEnd, text: `>${inside}</${span.name}>` };
}

function joined(cells: readonly PlacedCell[]): string {
  return cells.map(({ markup }) => markup).join('');
}
