import type { ColumnEntry, System } from '../../../audit/read/tables/columnSpec.ts';
import { anyDate } from '../../../audit/read/tables/columns/ranges.ts';
import { unitIn } from '../templateColumn.ts';

/** A column of a record; its header has no unit where `unit` names it. */
export interface RecordColumn extends ColumnEntry {
  readonly header: string;
  readonly holds: 'text' | 'number' | 'date';
  readonly needed?: true;
}

const declared: readonly RecordColumn[] = [
  {
    header: 'Tag',
    sample: 'K-201-1X',
    holds: 'text',
    needed: true,
    meaning: 'Name of the channel, the same as on the other sheets, in every row of its record.',
  },
  {
    header: 'Series',
    sample: 'as found',
    holds: 'text',
    meaning:
      'as found or as left, or any other name that tells records of one channel apart. Blank: one record.',
    allowed: { words: ['as found', 'as left'] },
    warnOnly: true,
  },
  {
    header: 'Calibrated on',
    sample: '2026-03-14',
    holds: 'date',
    meaning: 'Day on which the record was taken.',
    allowed: anyDate,
  },
  {
    header: 'Temperature [°C]',
    sample: '25',
    holds: 'number',
    meaning: 'Temperature of the probe, where records of one channel were taken at several.',
    allowed: { from: -200, to: 600 },
    warnOnly: true,
  },
  {
    header: 'Gap',
    unit: 'mil',
    sample: { mil: '50', µm: '1270' },
    holds: 'number',
    needed: true,
    meaning: 'Distance from the target to the probe tip at this point. Needed. Each gap once in a record.',
    allowed: { atLeast: 0 },
  },
  {
    header: 'Output [V]',
    sample: '-9.62',
    holds: 'number',
    needed: true,
    meaning: 'Voltage at this gap with its sign; negative for the usual −24 V supply. Needed.',
    allowed: { from: -30, to: 0 },
    warnOnly: true,
  },
];

/** Columns of the table of calibration records in a system of units: one row a point. */
export function recordColumns(system: System): readonly RecordColumn[] {
  return declared.map((column) => {
    const unit = unitIn(column.unit, system);
    return unit === undefined ? column : { ...column, header: `${column.header} [${unit}]` };
  });
}
