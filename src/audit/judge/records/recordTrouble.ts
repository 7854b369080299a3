import type { RecordTrouble } from '../../model/rules/recordRules.ts';
import { leastPoints, mostPoints, type Fault } from './chooseRecord.ts';
import type { RawRecord } from '../../read/records/rawRecord.ts';

/** Why a record can't be used, with what shows it. */
export function recordTrouble(
  { tag, series, gapUnit, points }: RawRecord,
  { fault, at }: Fault,
): RecordTrouble {
  const of = { tag, series };
  switch (fault) {
    case 'gap repeated':
      return { ...of, fault, gap: points[at]?.gap ?? NaN, gapUnit: gapUnit.text };
    case 'too few points':
      return { ...of, fault, points: at, least: leastPoints };
    case 'too many points':
      return { ...of, fault, points: at, most: mostPoints };
    case 'not a number':
    case 'lengths differ':
      return { ...of, fault };
  }
}
