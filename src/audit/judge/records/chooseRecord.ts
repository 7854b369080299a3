import {
  type CalibrationRecord,
  type RecordFault,
  calibrationRecord,
  isFault,
} from '../../../method/record/calibrationRecord.ts';
import { straightLine } from '../../../method/record/straightLine.ts';
import type { RawRecord } from '../../read/records/rawRecord.ts';
import { asFound, asLeft } from '../../read/records/recordCells.ts';

/** A record that can be used, with the rows as they stand in the sheet. */
export interface Usable {
  readonly raw: RawRecord;
  readonly record: CalibrationRecord;
  /** V per gap unit over all its points; not above 0 where the voltage does not fall. */
  readonly slope: number;
}

export interface Chosen {
  readonly used: Usable | undefined;
  readonly others: readonly Usable[];
  readonly faults: readonly { readonly raw: RawRecord; readonly fault: Fault }[];
}

/** Why a record is not looked at; `at` is a point from 0, or how many there are. */
export type Fault = RecordFault | { readonly fault: 'too many points'; readonly at: number };

/** Points above which a table of gaps and volts is a log, not a calibration record: it would hold up the whole audit. */
export const mostPoints = 1_000;
/** Points that a record needs: two leave no way to tell a bend or a slip from the line. */
export const leastPoints = 3;

/**
 * Which record of a channel is looked at: as found before any other series, as left last; of several temperatures the one
 * with the lowest sensitivity, which makes trips latest. Records in other units are compared in µm.
 */
export function chooseRecord(records: readonly RawRecord[]): Chosen {
  const usable: Usable[] = [];
  const faults: { raw: RawRecord; fault: Fault }[] = [];
  for (const raw of records) {
    if (raw.points.length > mostPoints) {
      faults.push({ raw, fault: { fault: 'too many points', at: raw.points.length } });
      continue;
    }
    const record = calibrationRecord(
      raw.points.map(({ gap }) => gap),
      raw.points.map(({ volts }) => volts),
      leastPoints,
    );
    if (isFault(record)) faults.push({ raw, fault: record });
    else usable.push({ raw, record, slope: -(straightLine(record.gaps, record.volts)?.slope ?? NaN) });
  }
  const inOrder = usable.toSorted(
    (one, other) =>
      rank(one.raw) - rank(other.raw) ||
      one.slope / one.raw.gapUnit.factor - other.slope / other.raw.gapUnit.factor,
  );
  const [used, ...others] = inOrder;
  return { used, others, faults };
}

/** As found before any other series, as left last. */
export function rank({ series }: { readonly series: string }): number {
  return series === asFound ? 0 : series === asLeft ? 2 : 1;
}
