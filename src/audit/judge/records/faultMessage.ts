import { amount } from '../../model/wording.ts';
import { type Fault, mostPoints } from './chooseRecord.ts';
import type { RawRecord } from '../../read/records/rawRecord.ts';

/** Why a record can't be used, and the cure. */
export function faultMessage(raw: RawRecord, { fault, at }: Fault): string {
  const point = raw.points[at];
  switch (fault) {
    case 'gap repeated':
      return `The gap ${amount(point?.gap ?? NaN, raw.gapUnit.text)} stands twice in the record '${raw.series}' of ${raw.tag}; which of the two voltages counts can't be told, so the record was not used. Correct the gap or delete one of the points.`;
    case 'too few points':
      return `The record '${raw.series}' of ${raw.tag} has ${at === 1 ? 'one usable point' : `${at} usable points`}; at least 3 are needed, so it was not used.`;
    case 'too many points':
      return `The record '${raw.series}' of ${raw.tag} has ${at} points; a calibration record has at most ${mostPoints}, so it was not used. Keep the points of one run, a few for each step of the gap.`;
    case 'not a number':
    case 'lengths differ':
      return `The record '${raw.series}' of ${raw.tag} has a gap or a voltage that is no number, so it was not used. Correct it.`;
  }
}
