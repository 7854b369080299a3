import { type CurveMethod, methods, type Curve } from '../../method/record/curve.ts';
import { type ChoiceArgument, optionalNumber, series } from '../declare/argument.ts';
import {
  type CalibrationRecord,
  calibrationRecord,
  isFault,
  stepNotFalling,
} from '../../method/record/calibrationRecord.ts';
import { FunctionError, refused, notAvailable } from '../functionError.ts';
import { curveOf } from '../../method/record/curveOf.ts';

/** Arguments that the functions of calibration records share. */
export const gaps = series(
  'gaps',
  'any',
  'Gaps of the record, a row or a column in one unit of displacement.',
);
export const volts = series(
  'volts',
  'gapVoltage',
  'Gap voltages measured there, in V with their minus sign, one beside each gap.',
);
export const method: ChoiceArgument<CurveMethod> = {
  kind: 'choice',
  name: 'method',
  choices: methods,
  otherwise: 'monotone',
  description: 'Between the points: "monotone" (a smooth curve; if left out) or "linear" (straight pieces).',
};
export const tolerance = optionalNumber(
  'tolerance',
  'share',
  0.05,
  'Accepted error of a sensitivity as a fraction; 0.05 (5 %) if left out.',
);

/** A number as a message shows it: six digits at most. */
export function short(value: number | null): string {
  return value === null ? '' : String(Number(value.toPrecision(6)));
}

/** A record as two ranges gave it. */
interface Points {
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

/** The curve through gaps and volts, for reading either from the other, or why there is none. */
export function measuredCurve(
  gaps: readonly (number | null)[],
  volts: readonly (number | null)[],
  method: CurveMethod,
): Curve | FunctionError {
  const points = pointsOf(gaps, volts);
  if (points instanceof FunctionError) return points;
  const { record } = points;
  const curve = curveOf(record, method);
  if (curve) return curve;
  const step = stepNotFalling(record) ?? 0;
  const [from, to] = [record.gaps[step] ?? null, record.gaps[step + 1] ?? null];
  return refused(
    `Volts does not fall from gap ${short(from)} to ${short(to)}: leave one of the two points out.`,
  );
}

/** The gap at a voltage of a measured curve, or that the voltage lies outside it; `name` is what the voltage is called. */
export function gapOnCurve(curve: Curve, voltage: number, name: string): number | FunctionError {
  const gap = curve.gapAt(voltage);
  if (!Number.isNaN(gap)) return gap;
  const [near, far] = [curve.voltsAt(curve.from), curve.voltsAt(curve.to)];
  return notAvailable(
    `${name} ${short(voltage)} V lies outside the record, ${short(near)} V to ${short(far)} V.`,
  );
}
