import { deviations, fittedLine, ratedLine } from '../../method/record/deviation.ts';
import { straightLine } from '../../method/record/straightLine.ts';
import { optionalNumber } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { FunctionError } from '../functionError.ts';
import { gaps, volts } from '../record/arguments.ts';
import { pointsOf } from '../record/points.ts';

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
