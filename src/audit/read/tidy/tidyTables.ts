import { cellText, type Cell } from '../../../cells/cell.ts';
import type { Sheet } from '../../../cells/sheet.ts';
import type { Unit } from '../../../units/parse.ts';
import type { FoundColumn, FoundTable, Tables, UnitColumn } from '../tables/found.ts';
import type { TableKind } from '../tables/vocabulary.ts';
import type { TidyChannel, TidyColumn, TidyList } from './tidyList.ts';
import { withColumnLetters } from './cellRemarks.ts';

/** Row of the headers; the channels follow. */
const headerRow = 1;

/**
 * A list in the standard shape as a channel list and monitor settings, each on a sheet of its own that nobody sees: a unit
 * column beside every number, and the origin of every cell, by which it is named.
 */
export function tidyTables(list: TidyList): Tables {
  return { channels: tidyTable(list, 'channels'), settings: tidyTable(list, 'settings') };
}

function tidyTable(list: TidyList, kind: TableKind): FoundTable {
  const listed = list.columns.filter((column) => column.id !== 'tag' && column.id !== 'machine');
  const own = listed.filter(({ table }) => table === kind);
  const names = kind === 'channels' ? (['tag', 'machine'] as const) : (['tag'] as const);
  const columns = new Map<string, FoundColumn>();
  const unitColumns: UnitColumn[] = [];
  const writers: ((channel: TidyChannel) => Cell)[] = [];
  const add = (write: (channel: TidyChannel) => Cell): number => writers.push(write);
  for (const id of names) {
    const header = headerOf(list.columns.find((column) => column.id === id)) ?? id;
    columns.set(id, { id, column: add((channel) => channel[id]), header, remarks: [] });
  }
  const withKind = kind === 'channels' && list.channels.some(({ values }) => values.has('kind'));
  if (withKind && !own.some(({ id }) => id === 'kind'))
    columns.set('kind', {
      id: 'kind',
      column: add(({ values }) => values.get('kind')?.cell ?? null),
      header: 'kind',
      remarks: [],
    });
  for (const column of own) {
    const { id, name, holds } = column;
    columns.set(id, {
      id,
      column: add(({ values }) => values.get(id)?.cell ?? null),
      header: headerOf(column) ?? name,
      remarks: [],
    });
    if (holds !== 'number') continue;
    unitColumns.push({
      column: add(({ values }) => unitText(values.get(id)?.unit ?? null)),
      header: `${name} unit`,
      names: new Set([id]),
    });
  }
  const rows: (readonly Cell[])[] = [[]];
  const channels: TidyChannel[] = [];
  const hiddenRows = new Set<number>();
  for (const channel of list.channels) {
    if (!channel.listed[kind]) continue;
    channels.push(channel);
    rows.push(writers.map((write) => write(channel)));
    if (channel.hidden) hiddenRows.add(rows.length);
  }
  const sheet: Sheet = { name: list.sheets.join(', '), hidden: false, rows, hiddenRows, tables: [] };
  const at = (row: number): TidyChannel | undefined => channels[row - headerRow - 1];
  return {
    kind,
    sheet,
    headerRow,
    firstRow: headerRow + 1,
    lastRow: rows.length,
    columns,
    unitColumns,
    skipped: new Map(),
    areaEnd: null,
    unread: [],
    origin: {
      place: (row, id) => {
        const channel = at(row);
        return withColumnLetters(channel ? placeIn(channel, kind, id) : placeOfHeader(list, kind, id));
      },
      key: (row) => at(row)?.key ?? '',
      machine: (row) => cellText(at(row)?.machine ?? null),
      remarks: (row) => at(row)?.remarks[kind] ?? [],
    },
  };
}

function placeIn(
  { values, unused, at }: TidyChannel,
  kind: TableKind,
  id: string,
): TidyChannel['at'][TableKind] {
  if (id === 'tag') return at[kind];
  const column = id as TidyColumn['id'];
  return values.get(column)?.place ?? unused.get(column) ?? at[kind];
}

function placeOfHeader(
  { columns, sheets }: TidyList,
  kind: TableKind,
  id: string,
): TidyChannel['at'][TableKind] {
  const column = columns.find((one) => one.id === id) ?? columns.find(({ table }) => table === kind);
  return column?.fields[0]?.place ?? { sheet: sheets[0] ?? '', row: 1, column: 1 };
}

/** The header of a column, where it has one and the same wherever it is read from. */
function headerOf(column: TidyColumn | undefined): string | undefined {
  const headers = new Set(column?.fields.map(({ header }) => header));
  return headers.size === 1 ? [...headers][0] : undefined;
}

/** A unit as its column has it, with its detection, so that it is read back as it is. */
function unitText(unit: Unit | null): Cell {
  if (unit === null) return null;
  return unit.detection ? `${unit.text} ${unit.detection}` : unit.text;
}
