import { straightLine } from '../../method/record/straightLine.ts';
import { optionalNumber } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { FunctionError, refused } from '../functionError.ts';
import { gaps, volts } from '../record/arguments.ts';
import { pointsOf } from '../record/points.ts';

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
