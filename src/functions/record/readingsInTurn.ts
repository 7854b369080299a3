import { type FunctionError, refused } from '../functionError.ts';
import type { GapReading } from '../../method/record/runs.ts';
import { short } from './arguments.ts';

/** A reading with its place in the ranges, from 1. */
export interface PlacedReading extends GapReading {
  readonly place: number;
}

type Cells = readonly (number | null)[];

/** Gaps and volts paired by their place, in the order given; a place that is blank in both is left out. */
export function readingsInTurn(gaps: Cells, volts: Cells): PlacedReading[] | FunctionError {
  if (gaps.length !== volts.length) {
    const [longer, shorter] = gaps.length > volts.length ? ['Gaps', 'Volts'] : ['Volts', 'Gaps'];
    return refused(`${shorter} ends before ${longer}: select as many cells in each.`);
  }
  const readings: PlacedReading[] = [];
  for (const [at, gap] of gaps.entries()) {
    const volt = volts[at] ?? null;
    if (gap === null && volt === null) continue;
    if (gap === null) return refused(`Gaps ${at + 1} is blank beside ${short(volt)} V: enter the gap.`);
    if (volt === null) return refused(`Volts ${at + 1} is blank at gap ${short(gap)}: enter the voltage.`);
    readings.push({ gap, volts: volt, place: at + 1 });
  }
  return readings;
}
