import type { Detection } from '../../../units/parse.ts';
import { settingsColumns } from '../tables/settingsColumns.ts';
import type { FoundTable } from '../tables/found.ts';
import { withRemarks, type Diagnostic } from './diagnostic.ts';
import { above0, atLeast0, checkRanges, type Ranges } from './ranges.ts';
import { rowReader, type Amount } from './rowReader.ts';
import { detectionWords, flagWords } from './words.ts';

/** One row of the monitor settings, in the units in which it was written; every column has its place. */
export interface SettingsRow extends Readonly<Record<keyof typeof settingsColumns, unknown>> {
  readonly row: number;
  readonly tag: string;
  readonly configured: Amount | null;
  /** Indicated over injected. */
  readonly gain: Amount | null;
  readonly gainUncertainty: Amount | null;
  readonly alert: Amount | null;
  readonly danger: Amount | null;
  readonly fullScale: Amount | null;
  readonly alertDelay: Amount | null;
  readonly dangerDelay: Amount | null;
  readonly multiplier: Amount | null;
  readonly zeroConfigured: Amount | null;
  /** Positive amounts in the counter direction, as in the table. */
  readonly counterAlert: Amount | null;
  readonly counterDanger: Amount | null;
  readonly faultHigh: Amount | null;
  readonly faultLow: Amount | null;
  readonly resolution: Amount | null;
  readonly detection: Detection | null;
  readonly group: string;
  readonly voting: string;
  /** Blank is no bypass. `null`: what stands there is not understood, so it can't be told. */
  readonly bypass: boolean | null;
  /** Whether a mark stands there, be it one for no. */
  readonly bypassMarked: boolean;
  readonly diagnostics: readonly Diagnostic[];
}

const ranges: Ranges<SettingsRow> = [
  ['configured', above0],
  // A monitor that shows less than half or more than twice what is injected: rather a percentage, or another quantity.
  [
    'gain',
    [
      { kind: 'at least', than: 0.5 },
      { kind: 'at most', than: 2 },
    ],
  ],
  ['gainUncertainty', atLeast0],
  ['alert', above0],
  ['danger', above0],
  ['fullScale', above0],
  ['alertDelay', atLeast0],
  ['dangerDelay', atLeast0],
  ['multiplier', [{ kind: 'at least', than: 1 }]],
  ['counterAlert', above0],
  ['counterDanger', above0],
  ['resolution', above0],
];

/** Reads the rows of the monitor settings one by one: a function of the row's number. */
export function settingsRowReader(table: FoundTable): (row: number) => SettingsRow {
  const read = rowReader(table, settingsColumns);
  return (row) => {
    read.open(row);
    const found: SettingsRow = {
      row,
      tag: read.text('tag'),
      configured: read.amount('configured'),
      gain: read.amount('gain'),
      gainUncertainty: read.amount('gainUncertainty'),
      alert: read.amount('alert'),
      danger: read.amount('danger'),
      fullScale: read.amount('fullScale'),
      alertDelay: read.amount('alertDelay'),
      dangerDelay: read.amount('dangerDelay'),
      multiplier: read.amount('multiplier'),
      zeroConfigured: read.amount('zeroConfigured'),
      counterAlert: read.amount('counterAlert'),
      counterDanger: read.amount('counterDanger'),
      faultHigh: read.amount('faultHigh'),
      faultLow: read.amount('faultLow'),
      resolution: read.amount('resolution'),
      detection: read.word('detection', detectionWords),
      group: read.text('group'),
      voting: read.text('voting'),
      bypass: read.text('bypass') === '' ? false : read.word('bypass', flagWords),
      bypassMarked: read.text('bypass') !== '',
      diagnostics: withRemarks(table, row, read.diagnostics()),
    };
    return checkRanges(ranges, table, found);
  };
}
