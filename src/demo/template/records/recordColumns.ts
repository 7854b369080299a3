import { anyDate } from '../entries.ts';
import type { ColumnHelp } from '../templateColumn.ts';

export interface RecordColumn extends ColumnHelp {
  readonly header: string;
  readonly holds: 'text' | 'number' | 'date';
  readonly needed?: true;
}

/** Columns of the table of calibration records: one row a point. */
export const recordColumns: readonly RecordColumn[] = [
  {
    header: 'Tag',
    holds: 'text',
    needed: true,
    meaning: 'Name of the channel, the same as on the other sheets, in every row of its record.',
  },
  {
    header: 'Series',
    holds: 'text',
    meaning:
      'as found or as left, or any other name that tells records of one channel apart. Blank: one record.',
    allowed: { words: ['as found', 'as left'] },
    warnOnly: true,
  },
  {
    header: 'Calibrated on',
    holds: 'date',
    meaning: 'Day on which the record was taken.',
    allowed: anyDate,
  },
  {
    header: 'Temperature [°C]',
    holds: 'number',
    meaning: 'Temperature of the probe, where records of one channel were taken at several.',
    allowed: { from: -200, to: 600 },
    warnOnly: true,
  },
  {
    header: 'Gap [mil]',
    holds: 'number',
    needed: true,
    meaning: 'Distance from the target to the probe tip at this point. Needed. Each gap once in a record.',
    allowed: { atLeast: 0 },
  },
  {
    header: 'Output [V]',
    holds: 'number',
    needed: true,
    meaning: 'Voltage at this gap with its sign; negative for the usual −24 V supply. Needed.',
    allowed: { from: -30, to: 0 },
    warnOnly: true,
  },
];
