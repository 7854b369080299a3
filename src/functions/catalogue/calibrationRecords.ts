import { straightLine } from '../../method/record/straightLine.ts';
import { optionalNumber, number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { FunctionError, refused, notAvailable } from '../functionError.ts';
import {
  gaps,
  volts,
  pointsOf,
  method,
  measuredCurve,
  gapOnCurve,
  tolerance,
  short,
} from '../record/arguments.ts';
import { deviations, fittedLine, ratedLine } from '../../method/record/deviation.ts';
import { incrementalSensitivity } from '../../method/record/calibrationRecord.ts';
import { linearRange } from '../../method/record/linearRange.ts';

export const LINEARRANGE = declare({
  id: 'LINEARRANGE',
  description: 'Longest run of steps of a calibration record that keep to the rated sensitivity.',
  arguments: [
    gaps,
    volts,
    number('rated', 'positive', 'Rated sensitivity in mV per unit of the gaps.'),
    tolerance,
    optionalNumber(
      'deviation',
      'positive',
      null,
      'Greatest deviation from the line of rated slope, in the unit of the gaps, such as 1 mil; not looked at if left out.',
    ),
    optionalNumber('midGap', 'notZero', null, 'Gap that the range must hold; the longest range if left out.'),
  ],
  result: 'pair',
  resultDescription: 'From and to side by side, in the unit of the gaps; #N/A where no step keeps to it.',
  example: { formula: '=TRIPDRIFT.LINEARRANGE({10,20,30,40},{-2,-4,-6,-7},200)', result: '10\t30' },
  run: (allGaps, allVolts, rated, part, deviation, midGap) => {
    const points = pointsOf(allGaps, allVolts);
    if (points instanceof FunctionError) return points;
    const range = linearRange(points.record, {
      rated: rated / 1000,
      tolerance: part,
      deviation: deviation ?? Infinity,
      ...(midGap === null ? {} : { midGap }),
    });
    if (range) return { low: range.from, high: range.to };
    const where = midGap === null ? '' : ` about gap ${short(midGap)}`;
    return notAvailable(`No step${where} keeps to ${short(rated)} mV per unit within its tolerance.`);
  },
});

export const INCREMENTAL = declare({
  id: 'INCREMENTAL',
  description: 'Incremental sensitivity of each step of a calibration record.',
  arguments: [gaps, volts],
  result: 'along',
  resultDescription:
    'One cell a step, beside the point where the step begins, in mV per unit of the gaps; below 0 where the voltage rises.',
  example: { formula: '=TRIPDRIFT.INCREMENTAL({10,20,30},{-2,-4,-5.5})', result: '200\t150' },
  run: (allGaps, allVolts) => {
    const points = pointsOf(allGaps, allVolts);
    if (points instanceof FunctionError) return points;
    const { record, places, length } = points;
    const down = (places[0] ?? 0) > (places[1] ?? 0);
    const cells: (number | string)[] = Array.from({ length: length - 1 }, () => '');
    for (const [step, sensitivity] of incrementalSensitivity(record).entries()) {
      const [place, next] = [places[step] ?? 0, places[step + 1] ?? 0];
      if (place > next !== down)
        return refused('Gaps is not in order: sort the points by gap, so that steps lie side by side.');
      cells[Math.min(place, next)] = 1000 * sensitivity;
    }
    return cells;
  },
});

export const DEVIATION = declare({
  id: 'DEVIATION',
  description: 'Deviation of each point of a calibration record from a straight line.',
  arguments: [
    gaps,
    volts,
    optionalNumber(
      'rated',
      'positive',
      null,
      'Rated sensitivity in mV per unit of the gaps, for the line of that slope whose largest deviation is least; the least-squares line if left out.',
    ),
  ],
  result: 'along',
  resultDescription:
    'One cell a point, in the unit of the gaps; above 0 where the voltage lies above the line.',
  example: { formula: '=TRIPDRIFT.DEVIATION({10,20,30},{-2,-4.5,-6},200)', result: '1.25\t-1.25\t1.25' },
  run: (allGaps, allVolts, rated) => {
    const points = pointsOf(allGaps, allVolts);
    if (points instanceof FunctionError) return points;
    const { record, places, length } = points;
    const fitted = rated === null ? straightLine(record.gaps, record.volts) : undefined;
    const line = rated === null ? fitted && fittedLine(fitted) : ratedLine(record, rated / 1000);
    if (!line) return undefined;
    const cells: (number | string)[] = Array.from({ length }, () => '');
    for (const [at, off] of deviations(record, line).entries()) cells[places[at] ?? 0] = off;
    return cells;
  },
});

export const GAPAT = declare({
  id: 'GAPAT',
  description: 'Gap at which a calibration record has a voltage; never beyond its points.',
  arguments: [gaps, volts, number('voltage', 'notZero', 'Gap voltage in V, with its minus sign.'), method],
  result: 'number',
  resultDescription: 'Gap in the unit of the gaps; #N/A outside the record.',
  example: { formula: '=TRIPDRIFT.GAPAT({10,20,30},{-2,-4,-6},-3,"linear")', result: '15' },
  run: (allGaps, allVolts, voltage, kind) => {
    const curve = measuredCurve(allGaps, allVolts, kind);
    return curve instanceof FunctionError ? curve : gapOnCurve(curve, voltage, 'Voltage');
  },
});

export const FIT = declare({
  id: 'FIT',
  description: 'Average sensitivity of a calibration record: the least-squares line through its points.',
  arguments: [
    gaps,
    volts,
    optionalNumber('from', 'any', null, 'Smallest gap that counts; the whole record if left out.'),
    optionalNumber('to', 'notZero', null, 'Greatest gap that counts; the whole record if left out.'),
  ],
  result: 'row',
  resultDescription:
    'Seven cells: sensitivity in mV per unit of the gaps, its standard uncertainty, voltage at gap 0 in V, its standard uncertainty, correlation of the two, residual standard deviation in V, number of points.',
  example: {
    formula: '=TRIPDRIFT.FIT({16,32,48,64},{-4,-8,-10,-14})',
    result: '200\t17.67766952966368\t-1\t0.7745966692414831\t0.9128709291752769\t0.6324555320336757\t4',
  },
  run: (allGaps, allVolts, from, to) => {
    const points = pointsOf(allGaps, allVolts);
    if (points instanceof FunctionError) return points;
    const { record } = points;
    const within = (gap: number | undefined): boolean =>
      gap !== undefined && gap >= (from ?? -Infinity) && gap <= (to ?? Infinity);
    const some = record.gaps.filter(within);
    const line = straightLine(
      some,
      record.volts.filter((_, at) => within(record.gaps[at])),
    );
    if (!line || some.length < 3)
      return refused(`From and To hold ${some.length} points: a fit needs 3 or more.`);
    return [
      -1000 * line.slope,
      1000 * line.slopeUncertainty,
      line.intercept,
      line.interceptUncertainty,
      -line.correlation,
      line.residualDeviation,
      line.count,
    ];
  },
});
