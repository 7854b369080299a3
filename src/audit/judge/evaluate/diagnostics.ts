import { factOf } from '../../model/findings.ts';
import type { Kind } from '../../model/channel.ts';
import type { RuleId, RuleValues } from '../../model/rules/rules.ts';
import type { Obstacle } from '../../model/threshold.ts';
import type { PairedRows } from '../../read/pairedRows.ts';
import type { Diagnostic } from '../../read/rows/diagnostic.ts';
import { nameOfColumn, type TableKind } from '../../read/tables/vocabulary.ts';

/** What can't be used because of something: the value in its cell, the whole row, what contradicts another value, what is absent and needed, or nothing. */
export type Invalidates = 'value' | 'row' | 'contradiction' | 'absent' | 'nothing';

export type TableDiagnostic = Diagnostic & {
  readonly table: TableKind;
  readonly invalidates: Invalidates;
};

/** Columns without whose value, when something unusable stands there, no number of the row can be trusted. */
const decisive: ReadonlySet<string> = new Set([
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
const decisiveForAxial: ReadonlySet<string> = new Set(['zeroMeasured', 'zeroConfigured']);

/** Columns that bear on whether a threshold acts: an unusable value there leaves it no better than incomplete. */
const evidence: ReadonlySet<string> = new Set([
  'limit',
  'fullScale',
  'multiplier',
  'detection',
  'gain',
  'gainUncertainty',
]);
const evidenceOfDisplacement: ReadonlySet<string> = new Set(['gapVoltage', 'faultHigh', 'faultLow']);
const evidenceOfPosition: ReadonlySet<string> = new Set(['direction', 'zeroUncertainty']);
const evidenceOfLoop: ReadonlySet<string> = new Set([
  'loopAtZero',
  'loopAtZeroUncertainty',
  'loopAtSpan',
  'loopAtSpanUncertainty',
]);

const none: readonly never[] = [];

/** What is wrong with one channel and its settings, gathered while they are brought together. */
export class Diagnostics {
  readonly all: TableDiagnostic[] = [];

  /** Starts from what was said about the cells of both rows as they were read, and where the tables contradict each other. */
  constructor({ row, settings, contradictions }: PairedRows) {
    for (const one of row.diagnostics) this.all.push(ofCell('channels', one));
    for (const one of settings.diagnostics) this.all.push(ofCell('settings', one));
    for (const { column, inChannels, inSettings } of contradictions) {
      const values = { quantity: nameOfColumn(column), inChannels, inSettings };
      this.add('channels', column, 'tables-contradict', values, 'contradiction');
    }
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
    if (!this.isSaid(column)) this.add(table, column, 'value-missing', { what }, 'absent');
  }

  /** Whether a column that is needed has no value, usable or not. */
  absent(column: string): boolean {
    return this.all.some((one) => one.column === column && one.invalidates === 'absent');
  }

  /** Whether something is wrong with a column's value. */
  isSaid(column: string): boolean {
    return this.all.some((one) => one.column === column && one.severity !== 'note');
  }

  /** Whether something unusable stands where the whole row depends on it. */
  invalid(axial: boolean): boolean {
    return this.all.some((one) => isFatal(one, axial));
  }

  /** What keeps the thresholds of a channel of this kind from being better than incomplete. */
  obstacles(kind: Kind | null): readonly Obstacle[] {
    if (this.all.length === 0) return none;
    const found = new Set<Obstacle>();
    for (const { column, invalidates } of this.all) {
      if (invalidates === 'contradiction') found.add('two values contradict each other');
      if (invalidates !== 'value') continue;
      if (column === 'bypass') found.add('the bypass mark is not understood');
      else if (isEvidence(column, kind)) found.add('a value that can’t be used');
    }
    return [...found];
  }

  /** Those of `all` that keep the row, or its thresholds, from being judged. */
  blocking(kind: Kind | null): readonly TableDiagnostic[] {
    if (this.all.length === 0) return none;
    return this.all.filter(
      (one) =>
        isFatal(one, kind === 'axial') ||
        one.invalidates === 'contradiction' ||
        one.invalidates === 'absent' ||
        (one.invalidates === 'value' && (one.column === 'bypass' || isEvidence(one.column, kind))),
    );
  }
}

function ofCell(table: TableKind, diagnostic: Diagnostic): TableDiagnostic {
  return { ...diagnostic, table, invalidates: diagnostic.severity === 'note' ? 'nothing' : 'value' };
}

function isFatal({ column, invalidates }: TableDiagnostic, axial: boolean): boolean {
  if (invalidates !== 'value') return invalidates === 'row';
  return decisive.has(column) || (axial && decisiveForAxial.has(column));
}

function isEvidence(column: string, kind: Kind | null): boolean {
  if (decisive.has(column) || evidence.has(column)) return true;
  const ofDisplacement = kind === 'radial' || kind === 'axial';
  if (ofDisplacement && evidenceOfDisplacement.has(column)) return true;
  if (kind === 'loop' && evidenceOfLoop.has(column)) return true;
  return kind === 'axial' && (evidenceOfPosition.has(column) || decisiveForAxial.has(column));
}
