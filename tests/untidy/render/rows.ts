import type { Cell } from '../../../src/cells/cell.ts';
import { columnLetters } from '../../../src/cells/address.ts';
import type { Column, Draft, Line, Table } from '../draft.ts';
import { type Canvas, merge, put } from './canvas.ts';
import { groupText, headerText, written } from './texts.ts';
import { nothingPlaced, type Placed } from './places.ts';

interface Laid {
  readonly column: Column;
  readonly at: number;
  /** Column of its unit, where units have columns of their own. */
  readonly unitAt: number | null;
}

/** A table with a channel in each row, its headers at the top, from a cell on. */
export function renderRows(on: Canvas, table: Table, draft: Draft, top: number, left: number): Placed {
  const placed = nothingPlaced();
  const laid = layColumns(table, left);
  const depth = headerDepth(table);
  header(on, table, draft, laid, top, depth);
  let row = top + depth;
  const first = row;
  for (const line of table.lines) {
    if (line.is === 'header again') {
      header(on, table, draft, laid, row, depth);
      row += depth;
      continue;
    }
    renderLine(on, table, draft, laid, line, row);
    if (line.is === 'channel' && line.hidden !== true) {
      placed.channels.push({
        channel: line.channel,
        place: { sheet: table.sheet, row, headerRows: [top, first - 1] },
      });
    }
    row += 1;
  }
  for (const { column, at, unitAt } of laid) {
    if (column.hidden === true) {
      on.hiddenColumns.add(at);
      if (unitAt !== null) on.hiddenColumns.add(unitAt);
    }
    if (column.merged === true) mergeEquals(on, at, first, row - 1);
    if (column.stands) {
      placed.fields.push({
        meaning: column.meaning,
        sheet: table.sheet,
        column: columnLetters(at),
        header: column.header,
      });
    }
  }
  placed.bottom = row - 1;
  placed.right = Math.max(...laid.map(({ at, unitAt }) => unitAt ?? at));
  return placed;
}

function layColumns(table: Table, left: number): Laid[] {
  let at = left;
  return table.columns.map((column): Laid => {
    const unitAt = table.unitPlace === 'column' && column.unit !== null ? at + 1 : null;
    const laid = { column, at, unitAt };
    at = (unitAt ?? at) + 1;
    return laid;
  });
}

function headerDepth(table: Table): number {
  const groups = table.columns.some(({ group }) => group !== null) ? 1 : 0;
  return 1 + groups + (table.unitPlace === 'row' ? 1 : 0);
}

function header(
  on: Canvas,
  table: Table,
  draft: Draft,
  laid: readonly Laid[],
  top: number,
  depth: number,
): void {
  const grouped = table.columns.some(({ group }) => group !== null);
  const own = top + (grouped ? 1 : 0);
  laid.forEach(({ column, at, unitAt }, index) => {
    const text = headerText(column, table);
    const group = groupText(column, table);
    if (grouped && group === null) {
      put(on, top, at, text);
      merge(on, top, at, own, at);
    } else {
      put(on, own, at, text);
      const begins = laid[index - 1] === undefined || groupText(laid[index - 1]!.column, table) !== group;
      if (grouped && group !== null && begins) {
        let last = index;
        while (laid[last + 1] && groupText(laid[last + 1]!.column, table) === group) last += 1;
        put(on, top, at, group);
        merge(on, top, at, top, laid[last]!.unitAt ?? laid[last]!.at);
      }
    }
    if (unitAt !== null) put(on, own, unitAt, draft.words.unit);
    if (table.unitPlace === 'row' && column.unit !== null) put(on, top + depth - 1, at, column.unit);
  });
}

function renderLine(
  on: Canvas,
  table: Table,
  draft: Draft,
  laid: readonly Laid[],
  line: Line,
  row: number,
): void {
  switch (line.is) {
    case 'blank':
    case 'header again':
      return;
    case 'heading':
      put(on, row, laid[0]!.at, line.text);
      return;
    case 'summary':
      summary(on, table, laid, line, row);
      return;
    case 'channel': {
      for (const { column, at, unitAt } of laid) {
        const overwritten = column.stands ? line.cells?.get(column.meaning) : undefined;
        put(on, row, at, written(overwritten ?? column.cell(line.channel), column, table, draft));
        if (unitAt !== null) put(on, row, unitAt, column.unit);
      }
      if (line.hidden === true) on.hiddenRows.add(row);
    }
  }
}

/** A row that only sums up: its label below the tags, means of what are numbers, or how many there are. */
function summary(
  on: Canvas,
  table: Table,
  laid: readonly Laid[],
  line: Line & { is: 'summary' },
  row: number,
): void {
  const channels = table.lines.flatMap((one) => (one.is === 'channel' ? [one.channel] : []));
  const tag = laid.find(({ column }) => column.meaning === 'tag') ?? laid[0]!;
  put(on, row, tag.at, line.label);
  if (line.of === 'nothing') return;
  const next = laid.find(({ at }) => at > tag.at);
  if (line.of === 'count') {
    if (next) put(on, row, next.at, channels.length);
    return;
  }
  for (const { column, at } of laid) {
    const values = channels.map(column.cell).filter((cell: Cell) => typeof cell === 'number');
    if (column.unit === null || values.length === 0) continue;
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    put(on, row, at, Number(mean.toPrecision(4)));
  }
}

/** Merges neighbours below each other that say the same, as plants do with the machine's name. */
function mergeEquals(on: Canvas, column: number, first: number, last: number): void {
  for (let row = first; row <= last;) {
    const cell = on.rows[row - 1]?.[column - 1] ?? null;
    let end = row;
    while (end < last && cell !== null && on.rows[end]?.[column - 1] === cell) end += 1;
    merge(on, row, column, end, column);
    row = end + 1;
  }
}
