import { type CalibrationRecord, calibrationRecord, isFault } from '../../method/record/calibrationRecord.ts';
import { type FunctionError, refused } from '../functionError.ts';
import { short } from './short.ts';

/** A record as two ranges gave it. */
export interface Points {
  readonly record: CalibrationRecord;
  /** Where each point of the record stands in the ranges, from 0. */
  readonly places: readonly number[];
  /** Cells of each range, blank ones included. */
  readonly length: number;
}

type Cells = readonly (number | null)[];

const LEAST = 3;

/**
 * Gaps and volts, paired by their place, as a record sorted by gap; a place that is blank in both is left out. At least
 * three points of different gaps, whose voltage falls from the first to the last.
 */
export function pointsOf(gaps: Cells, volts: Cells): Points | FunctionError {
  if (gaps.length !== volts.length) {
    const [longer, shorter] = gaps.length > volts.length ? ['Gaps', 'Volts'] : ['Volts', 'Gaps'];
    return refused(`${shorter} ends before ${longer}: select as many cells in each.`);
  }
  const places: number[] = [];
  for (const [place, gap] of gaps.entries()) {
    const volt = volts[place] ?? null;
    if (gap === null && volt === null) continue;
    if (gap === null) return refused(`Gaps ${place + 1} is blank beside ${short(volt)} V: enter the gap.`);
    if (volt === null) return refused(`Volts ${place + 1} is blank at gap ${short(gap)}: enter the voltage.`);
    places.push(place);
  }
  const gapAt = (place: number): number => gaps[place] ?? NaN;
  places.sort((one, other) => gapAt(one) - gapAt(other));
  const record = calibrationRecord(
    places.map(gapAt),
    places.map((place) => volts[place] ?? NaN),
    LEAST,
  );
  if (isFault(record)) {
    if (record.fault === 'too few points')
      return refused(`Gaps has ${places.length} points: a record needs ${LEAST} or more.`);
    const place = places[record.at] ?? 0;
    return refused(`Gaps ${place + 1} repeats the gap ${short(gapAt(place))}: keep one point for each gap.`);
  }
  if (!((record.volts.at(-1) ?? NaN) < (record.volts[0] ?? NaN)))
    return refused('Volts does not fall as the gap grows: enter gap voltages with their minus sign.');
  return { record, places, length: gaps.length };
}
