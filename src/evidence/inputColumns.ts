import type { TableKind } from '../audit/read/tables/vocabulary.ts';

/** Where an input that the results sheet shows stands in the tables. */
export interface InputPlace {
  readonly table: TableKind;
  /** Id of the column in the vocabulary; the setpoint's is that of its threshold. */
  readonly column: string;
  /** The same where what was left counts. */
  readonly asLeft?: string;
}

/** Columns of the results sheet that show inputs, by their ids. */
export const inputColumns: ReadonlyMap<string, InputPlace> = new Map([
  ['machine', { table: 'channels', column: 'machine' }],
  ['location', { table: 'channels', column: 'location' }],
  ['kind', { table: 'channels', column: 'kind' }],
  ['detection', { table: 'settings', column: 'detection' }],
  ['setpoint', { table: 'settings', column: 'setpoint' }],
  ['configured', { table: 'settings', column: 'configured' }],
  ['measured', { table: 'channels', column: 'measured', asLeft: 'asLeftSensitivity' }],
  ['uncertainty', { table: 'channels', column: 'uncertainty', asLeft: 'asLeftUncertainty' }],
  ['coverage', { table: 'channels', column: 'coverage' }],
  ['fullScale', { table: 'settings', column: 'fullScale' }],
  ['zeroConfigured', { table: 'settings', column: 'zeroConfigured' }],
  ['zeroMeasured', { table: 'channels', column: 'zeroMeasured', asLeft: 'asLeftZero' }],
  ['limit', { table: 'channels', column: 'limit' }],
  ['reading', { table: 'channels', column: 'reading' }],
  ['resolution', { table: 'settings', column: 'resolution' }],
]);
