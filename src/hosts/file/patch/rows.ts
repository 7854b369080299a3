import type { Edit } from '../write/xml/splice.ts';
import type { EditedCell } from './types.ts';
import type { CellPlace, RowPlace, SheetMap, Span } from './sheetMap.ts';

/** A cell to be put where the file has none. */
export interface PlacedCell {
  readonly edit: EditedCell;
  readonly markup: string;
}

/** Puts new cells into a row that the file has, each before the first cell to its right. */
export function cellsIntoRow(text: string, row: RowPlace, cells: readonly PlacedCell[]): Edit[] {
  const before = new Map<CellPlace, PlacedCell[]>();
  const behind: PlacedCell[] = [];
  for (const cell of [...cells].sort((a, b) => a.edit.column - b.edit.column)) {
    const next = row.cells.find(({ column }) => column > cell.edit.column);
    if (next === undefined) behind.push(cell);
    else before.set(next, [...(before.get(next) ?? []), cell]);
  }
  const edits = [...before].map(([next, placed]): Edit => ({
    from: next.start,
    to: next.start,
    text: joined(placed),
  }));
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
  const byRow = new Map<number, PlacedCell[]>();
  for (const cell of cells) byRow.set(cell.edit.row, [...(byRow.get(cell.edit.row) ?? []), cell]);
  const byPlace = new Map<RowPlace | undefined, string[]>();
  const ordered = rows.toSorted((a, b) => a.row - b.row);
  let next = 0;
  for (const [row, placed] of [...byRow].sort(([a], [b]) => a - b)) {
    while ((ordered[next]?.row ?? Infinity) < row) next++;
    const inOrder = placed.toSorted((a, b) => a.edit.column - b.edit.column);
    const markup = `<row r="${row}"${namespace}>${joined(inOrder)}</row>`;
    byPlace.set(ordered[next], [...(byPlace.get(ordered[next]) ?? []), markup]);
  }
  return [...byPlace].map(([row, markup]): Edit => {
    if (row !== undefined) return { from: row.start, to: row.start, text: markup.join('') };
    if (sheetData.selfClosing) return opened(text, sheetData, markup.join(''));
    return { from: sheetData.closeStart, to: sheetData.closeStart, text: markup.join('') };
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
