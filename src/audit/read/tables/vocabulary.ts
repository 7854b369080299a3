import { channelColumns } from './channelColumns.ts';
import type { ColumnSpec, TableKind } from './columnSpec.ts';
import { settingsColumns } from './settingsColumns.ts';

export type { ColumnSpec, Holds, TableKind } from './columnSpec.ts';

/** All columns of one kind of table, in the order in which a template shows them. */
export function columnsOf(kind: TableKind): Readonly<Record<string, ColumnSpec>> {
  return kind === 'channels' ? channelColumns : settingsColumns;
}

/** Standard header of a column by its id, in whichever table it usually stands. */
export function nameOfColumn(id: string): string {
  const all: Readonly<Record<string, ColumnSpec>> = { ...channelColumns, ...settingsColumns };
  return all[id]?.name ?? id;
}

/** A column by its id: of this kind of table, or of the other one, whose columns may stand in it too. */
export function specOf(kind: TableKind, id: string): ColumnSpec | undefined {
  return columnsOf(kind)[id] ?? columnsOf(kind === 'channels' ? 'settings' : 'channels')[id];
}
