import { channelColumns } from './channelColumns.ts';
import type { TableColumn, TableKind } from './columnSpec.ts';
import { settingsColumns } from './settingsColumns.ts';

export type { ColumnSpec, Holds, TableKind } from './columnSpec.ts';

/** All columns of one kind of table, in the order in which a template shows them. */
export function columnsOf(kind: TableKind): Readonly<Record<string, TableColumn>> {
  return kind === 'channels' ? channelColumns : settingsColumns;
}

/** Standard header of a column by its id, in whichever table it usually stands. */
export function nameOfColumn(id: string): string {
  const all: Readonly<Record<string, TableColumn>> = { ...channelColumns, ...settingsColumns };
  return all[id]?.name ?? id;
}

/** Whether a quantity, by its id, bears on whether a danger acts as set. */
export function isProtective(id: string): boolean {
  return specOf('channels', id)?.protective === true;
}

/** A column by its id: of this kind of table, or of the other one, whose columns may stand in it too. */
export function specOf(kind: TableKind, id: string): TableColumn | undefined {
  return columnsOf(kind)[id] ?? columnsOf(kind === 'channels' ? 'settings' : 'channels')[id];
}
