import type { Sheet, Workbook } from '../../../src/cells/sheet.ts';
import type { Draft, Table } from '../draft.ts';
import { renderColumns, renderForms, renderPairs } from './aside.ts';
import { type Canvas, canvas, put, sheetOf } from './canvas.ts';
import type { Placed } from './places.ts';
import { renderRows } from './rows.ts';

export interface Rendered {
  readonly workbook: Workbook;
  /** Where each table of the draft came to stand. */
  readonly placed: ReadonlyMap<Table, Placed>;
}

const renderers = {
  rows: renderRows,
  columns: renderColumns,
  forms: renderForms,
  pairs: renderPairs,
} as const;

/** The draft as a workbook, as a reader of workbook files delivers it. */
export function renderBook(draft: Draft, name: string): Rendered {
  const placed = new Map<Table, Placed>();
  const canvases: Canvas[] = [];
  for (const sheetName of new Set(draft.tables.map(({ sheet }) => sheet))) {
    const tables = draft.tables.filter(({ sheet }) => sheet === sheetName);
    const on = canvas(
      sheetName,
      tables.every(({ hidden }) => hidden),
    );
    canvases.push(on);
    renderSheet(on, tables, draft, placed);
  }
  const plain = (first: boolean): Sheet[] =>
    draft.sheets
      .filter((sheet) => sheet.first === first)
      .map(({ name: own, rows, hidden }) => ({
        name: own,
        rows,
        hidden,
        hiddenRows: new Set(),
        tables: [],
        merged: [],
        hiddenColumns: new Set(),
      }));
  return { workbook: { name, sheets: [...plain(true), ...canvases.map(sheetOf), ...plain(false)] }, placed };
}

function renderSheet(on: Canvas, tables: readonly Table[], draft: Draft, placed: Map<Table, Placed>): void {
  const left = 1 + draft.indent;
  let top = 1;
  if (draft.titles) {
    put(on, 1, left, draft.words.title);
    top = 3;
  }
  let bottom = top - 1;
  let at = { top, left };
  let right = 0;
  tables.forEach((table, index) => {
    if (index > 0) at = table.beside ? { top: at.top, left: right + 2 } : { top: bottom + 3, left };
    const begin = at.top + table.above.length + (table.above.length > 0 && draft.titles ? 1 : 0);
    table.above.forEach((cells, line) => {
      cells.forEach((cell, place) => {
        put(on, at.top + line, at.left + place, cell);
      });
    });
    const one = renderers[table.lies](on, table, draft, begin, at.left);
    placed.set(table, one);
    bottom = Math.max(bottom, one.bottom);
    right = Math.max(table.beside ? right : 0, one.right);
  });
}
