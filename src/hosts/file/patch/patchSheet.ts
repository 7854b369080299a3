import type { SheetTable } from '../../../cells/sheet.ts';
import { splice, type Edit } from '../write/xml/splice.ts';
import { byPlace, refuseUnfit } from './admit.ts';
import { newCell, restyledCell, rewrittenCell, type CellContext } from './cells.ts';
import { changedColumns } from './frame/columns.ts';
import { stretched } from './frame/extent.ts';
import { changedMerges } from './frame/merges.ts';
import { formulaGroups, grouped } from './groups.ts';
import type { NewStyle } from './restyle.ts';
import { cellsIntoRow, changedRows, newRows, type PlacedCell } from './rows.ts';
import { type CellPlace, mapSheet, type SheetMap } from './sheetMap.ts';
import { alternativesRefused } from './alternatives.ts';
import type { EditedCell, SheetEdits } from './types.ts';

/** A worksheet part to be patched. */
export interface SheetText {
  readonly text: string;
  /** Name of the part. */
  readonly part: string;
  /** Namespace of spreadsheet markup in the workbook's dialect. */
  readonly main: string;
  readonly tables: readonly SheetTable[];
  readonly newStyle: NewStyle;
}

export interface PatchedSheet {
  readonly text: string;
  /** A formula came or went. */
  readonly formulasChanged: boolean;
}

/** The text of a worksheet part with what was edited in it and all else as it was. Throws FileRefused for what cannot be patched safely. */
export function patchSheet(source: SheetText, changed: SheetEdits): PatchedSheet {
  const { text, part, main, tables, newStyle } = source;
  const { sheet, merges } = changed;
  const edits = byPlace(changed.cells, sheet);
  const looks = byPlace(changed.looks ?? [], sheet);
  const map = mapSheet(text, part, sheet, (row) => edits.has(row) || looks.has(row));
  if (map.hasAlternatives && (edits.size > 0 || looks.size > 0 || (changed.rows ?? []).length > 0)) {
    throw alternativesRefused(sheet);
  }
  const groups = formulaGroups(map);
  refuseUnfit(edits, groups.filled, tables, sheet);
  const isPrefixed = map.sheetData.name.includes(':');
  const context: CellContext = {
    sheet,
    text,
    groups,
    namespace: isPrefixed ? ` xmlns="${main}"` : '',
    editOf: (row, column) => edits.get(row)?.get(column),
    styleOf: (row, column, style) => {
      const look = looks.get(row)?.get(column);
      return look === undefined ? style : newStyle(style, look);
    },
  };
  const changes: (readonly Edit[])[] = [];
  const there = placesOf(map);
  let formulasChanged = false;
  for (const place of map.rows.flatMap((row) => row.cells)) {
    const { row, column } = place;
    const edit = context.editOf(row, column);
    if (there.get(`${row} ${column}`) !== place) {
      if (edit !== undefined) changes.push([{ from: place.start, to: place.end, text: '' }]);
      continue;
    }
    if (edit === undefined) {
      changes.push(restyledCell(place, context));
      continue;
    }
    const change = rewrittenCell(place, edit, context);
    changes.push(change.edits);
    formulasChanged ||= change.formulasChanged;
  }
  const blank = (edit: EditedCell): boolean => (edit.value ?? '') === '' && edit.formula === undefined;
  const added = new Map<string, EditedCell>();
  for (const row of looks.values()) {
    for (const look of row.values()) added.set(`${look.row} ${look.column}`, { ...look, value: null });
  }
  for (const row of edits.values()) {
    for (const edit of row.values()) {
      if (!blank(edit)) added.set(`${edit.row} ${edit.column}`, edit);
    }
  }
  for (const place of there.keys()) added.delete(place);
  const news = [...added.values()];
  formulasChanged ||= news.some(({ formula }) => formula !== undefined);
  // New cells come first: one may stand where the cell behind it, rewritten, begins.
  changes.unshift(
    placedCells(map, news, changed.rows ?? [], context),
    stretched(text, map, news),
    changedColumns(map, changed.columns ?? []),
    merges === undefined ? [] : changedMerges(map, merges, tables, sheet),
  );
  return { text: splice(text, changes.flat()), formulasChanged };
}

/** The cells by row and column; of one that is stored twice, the place that holds something, as readers take it. */
function placesOf({ rows }: SheetMap): ReadonlyMap<string, CellPlace> {
  const places = new Map<string, CellPlace>();
  for (const place of rows.flatMap(({ cells }) => cells)) {
    const key = `${place.row} ${place.column}`;
    if (places.get(key)?.isFilled !== true) places.set(key, place);
  }
  return places;
}

function placedCells(
  map: SheetMap,
  added: readonly EditedCell[],
  changed: NonNullable<SheetEdits['rows']>,
  context: CellContext,
): Edit[] {
  const rows = new Map(map.rows.map((row) => [row.row, row]));
  const placed = added.map((edit): PlacedCell => {
    const column = map.columns.find(({ first, last }) => first <= edit.column && edit.column <= last);
    const inherited = rows.get(edit.row)?.style ?? column?.attributes['style'];
    return { edit, markup: newCell(edit, context.styleOf(edit.row, edit.column, inherited), context) };
  });
  const edits: Edit[] = [];
  let elsewhere: readonly PlacedCell[] = [];
  for (const [row, cells] of grouped(placed, ({ edit }) => rows.get(edit.row))) {
    if (row === undefined) elsewhere = cells;
    else edits.push(...cellsIntoRow(context.text, row, cells));
  }
  const sizes = new Map(changed.map((row) => [row.row, row]));
  return [
    ...edits,
    ...changedRows(context.text, map, sizes),
    ...newRows(context.text, map, elsewhere, sizes, context.namespace),
  ];
}
