import type { Edit } from '../write/xml/splice.ts';
import { withAttributes } from './attributes.ts';
import { grouped } from './groups.ts';
import type { EditedCell, EditedRow } from './types.ts';
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
  edits.push(...withAttributes(text, row, { spans: undefined }));
  const last = row.cells.at(-1);
  if (behind.length === 0) return edits;
  // Behind the last cell, and so before an extension list.
  if (last !== undefined) edits.push({ from: last.end, to: last.end, text: joined(behind) });
  else if (row.selfClosing) edits.push(opened(text, row, joined(behind)));
  else edits.push({ from: row.openEnd, to: row.openEnd, text: joined(behind) });
  return edits;
}

/** Gives rows that the file has their new heights (ECMA-376 part 1, section 18.3.1.73). */
export function changedRows(
  text: string,
  { rows }: Pick<SheetMap, 'rows'>,
  sizes: ReadonlyMap<number, EditedRow>,
): Edit[] {
  return rows.flatMap((place) => {
    const size = sizes.get(place.row);
    return size === undefined ? [] : withAttributes(text, place, sizeAttributes(size));
  });
}

function sizeAttributes({ height, hidden }: EditedRow): Record<string, string | undefined> {
  return {
    ...(height !== undefined && { ht: String(height), customHeight: '1' }),
    ...(hidden !== undefined && { hidden: hidden ? '1' : undefined }),
  };
}

/** Puts rows that the file has no element for between those it has, with cells or a height of their own; `namespace` as for cells. */
export function newRows(
  text: string,
  { rows, sheetData }: Pick<SheetMap, 'rows' | 'sheetData'>,
  cells: readonly PlacedCell[],
  sizes: ReadonlyMap<number, EditedRow>,
  namespace: string,
): Edit[] {
  const present = new Set(rows.map(({ row }) => row));
  const filled = grouped(cells, ({ edit }) => edit.row);
  const wanted = new Set([...filled.keys(), ...sizes.keys()]);
  const byRow = [...wanted]
    .filter((row) => !present.has(row))
    .sort((a, b) => a - b)
    .map((row) => [row, filled.get(row) ?? []] as const);
  const ordered = rows.toSorted((a, b) => a.row - b.row);
  let next = 0;
  const markups = byRow.map(([row, placed]) => {
    while ((ordered[next]?.row ?? Infinity) < row) next++;
    const inOrder = placed.toSorted((a, b) => a.edit.column - b.edit.column);
    const size = Object.entries(sizeAttributes(sizes.get(row) ?? { row }));
    const attributes = size.map(([name, value]) => (value === undefined ? '' : ` ${name}="${value}"`));
    return {
      before: ordered[next],
      markup: `<row r="${row}"${attributes.join('')}${namespace}>${joined(inOrder)}</row>`,
    };
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
