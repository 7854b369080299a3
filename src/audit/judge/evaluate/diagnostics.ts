import { factOf } from '../../model/findings.ts';
import type { RuleId, RuleValues } from '../../model/rules/rules.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import type { Diagnostic } from '../../read/rows/complaint.ts';
import type { SettingsRow } from '../../read/rows/settingsRow.ts';
import type { TableKind } from '../../read/tables/vocabulary.ts';

/** What can't be used because of something: the value in its cell, the whole row, or nothing. */
export type Invalidates = 'value' | 'row' | 'nothing';

export type TableDiagnostic = Diagnostic & {
  readonly table: TableKind;
  readonly invalidates: Invalidates;
};

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

/** What is wrong with one channel and its settings, gathered while they are brought together. */
export class Diagnostics {
  readonly all: TableDiagnostic[] = [];

  /** Starts from what was said about the cells of both rows as they were read. */
  constructor(channel: ChannelRow, settings: SettingsRow) {
    for (const one of channel.diagnostics) this.all.push(ofCell('channels', one));
    for (const one of settings.diagnostics) this.all.push(ofCell('settings', one));
  }

  /** Adds a warning; `null`, to stand for the value that can't be used. */
  add<R extends RuleId>(
    table: TableKind,
    column: string,
    rule: R,
    values: RuleValues[R],
    invalidates: Invalidates = 'value',
  ): null {
    this.all.push({ ...factOf(rule, 'warning', values), table, column, invalidates });
    return null;
  }

  /** Adds something worth knowing that invalidates nothing. */
  note<R extends RuleId>(table: TableKind, column: string, rule: R, values: RuleValues[R]): void {
    this.all.push({ ...factOf(rule, 'note', values), table, column, invalidates: 'nothing' });
  }

  /** Adds that a value is missing, unless something is said about its cell already. Does not invalidate the row by itself. */
  missing(table: TableKind, column: string, what: string): void {
    const said = this.all.some(
      (one) => one.table === table && one.column === column && one.severity !== 'note',
    );
    if (!said) this.add(table, column, 'value-missing', { what }, 'nothing');
  }

  /** Whether something unusable stands where the whole row depends on it. */
  invalid(axial: boolean): boolean {
    return this.all.length > 0 && this.all.some((one) => isFatal(one, axial));
  }
}

function ofCell(table: TableKind, diagnostic: Diagnostic): TableDiagnostic {
  return { ...diagnostic, table, invalidates: diagnostic.severity === 'note' ? 'nothing' : 'value' };
}

function isFatal({ column, invalidates }: TableDiagnostic, axial: boolean): boolean {
  if (invalidates !== 'value') return invalidates === 'row';
  return decisive.has(column) || (axial && decisiveForAxial.has(column));
}
