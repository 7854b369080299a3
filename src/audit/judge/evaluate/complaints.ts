import type { ChannelRow } from '../../read/rows/channelRow.ts';
import type { Complaint } from '../../read/rows/complaint.ts';
import type { SettingsRow } from '../../read/rows/settingsRow.ts';
import type { TableKind } from '../../read/tables/vocabulary.ts';

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
]);

/** Columns on which an axial channel depends as well. */
const decisiveForAxial = new Set(['zeroMeasured', 'zeroConfigured']);

/** The complaints about one channel and its settings, gathered while they are brought together. */
export class Complaints {
  readonly all: TableComplaint[] = [];

  /** Starts from what was said about the cells of both rows as they were read. */
  constructor(channel: ChannelRow, settings: SettingsRow) {
    for (const complaint of channel.complaints) this.all.push({ ...complaint, table: 'channels' });
    for (const complaint of settings.complaints) this.all.push({ ...complaint, table: 'settings' });
  }

  /** Adds a warning; `null`, to stand for the value that can't be used. */
  add(table: TableKind, column: string, rule: string, message: string): null {
    this.all.push({ table, column, rule, severity: 'warning', message });
    return null;
  }

  /** Adds something worth knowing that spoils nothing. */
  note(table: TableKind, column: string, rule: string, message: string): void {
    this.all.push({ table, column, rule, severity: 'note', message });
  }

  /** Adds that a value is missing, unless something is said about its cell already. Does not spoil the row by itself. */
  missing(table: TableKind, column: string, what: string): void {
    const said = this.all.some((c) => c.table === table && c.column === column && c.severity !== 'note');
    if (!said) this.add(table, column, 'value-missing', `The ${what} is missing; enter it.`);
  }

  /** Whether something unusable stands where the whole row depends on it. */
  spoilt(axial: boolean): boolean {
    return this.all.length > 0 && this.all.some((one) => spoils(one, axial));
  }
}

function spoils({ column, rule, severity }: TableComplaint, axial: boolean): boolean {
  if (rule === 'direction-missing') return true;
  if (severity === 'note' || rule === 'value-missing' || rule === 'zero-voltage-missing') return false;
  return decisive.has(column) || (axial && decisiveForAxial.has(column));
}
