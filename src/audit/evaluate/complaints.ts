import type { Complaint } from '../rows/complaint.ts';
import type { ChannelRow } from '../rows/channelRow.ts';
import type { SettingsRow } from '../rows/settingsRow.ts';
import type { TableKind } from '../tables/vocabulary.ts';

export interface TableComplaint extends Complaint {
  readonly table: TableKind;
}

/** Columns without whose value, when something unusable stands there, no number of the row can be trusted. */
const decisive = new Set([
  'kind',
  'measured',
  'uncertainty',
  'coverage',
  'configured',
  'alert',
  'danger',
  'counterAlert',
  'counterDanger',
  'direction',
]);

/** The complaints about one channel and its settings, gathered while they are brought together. */
export interface Complaints {
  readonly all: readonly TableComplaint[];
  /** Adds a warning; `null`, to stand for the value that can't be used. */
  add(table: TableKind, column: string, rule: string, message: string): null;
  /** Adds that a value is missing, unless something is said about its cell already. Does not spoil the row by itself. */
  missing(table: TableKind, column: string, what: string): void;
  /** Whether something unusable stands where the whole row depends on it. */
  spoilt(): boolean;
}

/** Starts from what was said about the cells of both rows as they were read. */
export function gatherComplaints(channel: ChannelRow, settings: SettingsRow): Complaints {
  const all: TableComplaint[] = [
    ...channel.complaints.map((complaint) => ({ ...complaint, table: 'channels' as const })),
    ...settings.complaints.map((complaint) => ({ ...complaint, table: 'settings' as const })),
  ];
  const add = (table: TableKind, column: string, rule: string, message: string): null => {
    all.push({ table, column, rule, severity: 'warning', message });
    return null;
  };
  return {
    all,
    add,
    missing(table, column, what) {
      const said = all.some((c) => c.table === table && c.column === column && c.severity !== 'note');
      if (!said) add(table, column, 'value-missing', `The ${what} is missing; enter it.`);
    },
    spoilt: () => all.some((c) => c.severity !== 'note' && c.rule !== 'value-missing' && spoils(c)),
  };
}

function spoils({ column, rule }: TableComplaint): boolean {
  return decisive.has(column) && (column !== 'direction' || rule === 'direction-missing');
}
