import type { Area, SheetTable } from '../../../cells/sheet.ts';
import { reference } from '../../formats/reference.ts';
import { splice, type Edit } from '../write/xml/splice.ts';
import { editsByRow, refuseUnfit } from './admit.ts';
import { newCell, rewrittenCell, type CellContext } from './cells.ts';
import { grouped } from './grouped.ts';
import { formulaGroups } from './groups.ts';
import { cellsIntoRow, newRows, type PlacedCell } from './rows.ts';
import { mapSheet, type SheetMap } from './sheetMap.ts';
import type { EditedCell, SheetEdits } from './types.ts';

/** A worksheet part to be patched. */
export interface SheetText {
  readonly text: string;
  /** Name of the part. */
  readonly part: string;
  /** Namespace of spreadsheet markup in the workbook's dialect. */
  readonly main: string;
  readonly tables: readonly SheetTable[];
}

export interface PatchedSheet {
  readonly text: string;
  /** A formula came or went. */
  readonly formulasChanged: boolean;
}

/** The text of a worksheet part with the edited cells in it and all else as it was. Throws FileRefused for what cannot be patched safely. */
export function patchSheet(source: SheetText, { sheet, cells }: SheetEdits): PatchedSheet {
  const { text, part, main, tables } = source;
  const edits = editsByRow(cells, sheet);
  const map = mapSheet(text, part, sheet, (row) => edits.has(row));
  const groups = formulaGroups(map);
  refuseUnfit(edits, groups.filled, tables, sheet);
  const isPrefixed = map.sheetData.name.includes(':');
  const context: CellContext = {
    sheet,
    text,
    groups,
    namespace: isPrefixed ? ` xmlns="${main}"` : '',
    editOf: (row, column) => edits.get(row)?.get(column),
  };
  const changes: (readonly Edit[])[] = [];
  const missing = new Set([...edits.values()].flatMap((row) => [...row.values()]));
  let formulasChanged = false;
  for (const place of map.rows.flatMap((row) => row.cells)) {
    const edit = context.editOf(place.row, place.column);
    if (edit === undefined) continue;
    missing.delete(edit);
    const change = rewrittenCell(place, edit, context);
    changes.push(change.edits);
    formulasChanged ||= change.formulasChanged;
  }
  const added = [...missing].filter(({ value, formula }) => (value ?? '') !== '' || formula !== undefined);
  formulasChanged ||= added.some(({ formula }) => formula !== undefined);
  // New cells come first: one may stand where the cell behind it, rewritten, begins.
  changes.unshift(placedCells(map, added, context), stretched(text, map, added));
  return { text: splice(text, changes.flat()), formulasChanged };
}

function placedCells(map: SheetMap, added: readonly EditedCell[], context: CellContext): Edit[] {
  const rows = new Map(map.rows.map((row) => [row.row, row]));
  const placed = added.map((edit): PlacedCell => {
    const column = map.columns.find(({ first, last }) => first <= edit.column && edit.column <= last);
    const style = rows.get(edit.row)?.style ?? column?.style;
    return { edit, markup: newCell(edit, style, context) };
  });
  const edits: Edit[] = [];
  let elsewhere: readonly PlacedCell[] = [];
  for (const [row, cells] of grouped(placed, ({ edit }) => rows.get(edit.row))) {
    if (row === undefined) elsewhere = cells;
    else edits.push(...cellsIntoRow(context.text, row, cells));
  }
  return [...edits, ...newRows(context.text, map, elsewhere, context.namespace)];
}

/** The sheet's stated extent, where new cells lie outside it. */
function stretched(text: string, { dimension }: SheetMap, added: readonly EditedCell[]): Edit[] {
  if (dimension?.area === undefined || added.length === 0) return [];
  const area = added.reduce<Area>(
    ({ top, left, bottom, right }, { row, column }) => ({
      top: Math.min(top, row),
      left: Math.min(left, column),
      bottom: Math.max(bottom, row),
      right: Math.max(right, column),
    }),
    dimension.area,
  );
  const tag = text.slice(dimension.start, dimension.openEnd);
  const stated = /(\sref\s*=\s*["'])([^"']*)/.exec(tag);
  if (stated === null || reference(area) === reference(dimension.area)) return [];
  const from = dimension.start + stated.index + (stated[1] ?? '').length;
  return [{ from, to: from + (stated[2] ?? '').length, text: reference(area) }];
}
