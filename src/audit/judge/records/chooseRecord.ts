import {
  type CalibrationRecord,
  type RecordFault,
  calibrationRecord,
  isFault,
} from '../../../method/record/calibrationRecord.ts';
import { straightLine } from '../../../method/record/straightLine.ts';
import { type UpDown, isUpDownFault, upDown } from '../../../method/record/upDown.ts';
import type { RawRecord } from '../../read/records/rawRecord.ts';
import { asFound, asLeft } from '../../read/records/recordCells.ts';

/** A record that can be used, with the rows as they stand in the sheet. */
export interface Usable {
  readonly raw: RawRecord;
  /** As read, or the mean curve of a record that was read up and down. */
  readonly record: CalibrationRecord;
  /** What both directions say; `null` where it was read one way. */
  readonly upDown: UpDown | null;
  /** V per gap unit over all its points; not above 0 where the voltage does not fall. */
  readonly slope: number;
}

export interface Chosen {
  readonly used: Usable | undefined;
  readonly others: readonly Usable[];
  readonly faults: readonly { readonly raw: RawRecord; readonly fault: Fault }[];
}

/** Why a record is not looked at; `at` is a point from 0, or how many there are. */
export type Fault =
  RecordFault | { readonly fault: 'too many points' | 'does not fall both ways'; readonly at: number };

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
    const read = readingsOf(raw);
    if ('fault' in read) faults.push({ raw, fault: read });
    else {
      const { gaps, volts } = read.record;
      usable.push({ raw, ...read, slope: -(straightLine(gaps, volts)?.slope ?? NaN) });
    }
  }
  const inOrder = usable.toSorted(
    (one, other) =>
      rank(one.raw) - rank(other.raw) ||
      one.slope / one.raw.gapUnit.factor - other.slope / other.raw.gapUnit.factor,
  );
  const [used, ...others] = inOrder;
  return { used, others, faults };
}

/** A record as it was read: one way, or up and down, where its gaps stand twice and the mean of both ways is its curve. */
function readingsOf({ points }: RawRecord): Pick<Usable, 'record' | 'upDown'> | Fault {
  const record = calibrationRecord(
    points.map(({ gap }) => gap),
    points.map(({ volts }) => volts),
    leastPoints,
  );
  if (!isFault(record)) return { record, upDown: null };
  if (record.fault !== 'gap repeated') return record;
  const both = upDown(points);
  if (!isUpDownFault(both)) return { record: both.mean, upDown: both };
  if (typeof both !== 'string') return { fault: 'gap repeated', at: both.repeated };
  return both === 'does not fall' ? { fault: 'does not fall both ways', at: 0 } : record;
}

/** As found before any other series, as left last. */
export function rank({ series }: { readonly series: string }): number {
  return series === asFound ? 0 : series === asLeft ? 2 : 1;
}
