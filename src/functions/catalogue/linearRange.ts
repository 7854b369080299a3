import { linearRange } from '../../method/record/linearRange.ts';
import { number, optionalNumber } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { FunctionError, notAvailable } from '../functionError.ts';
import { gaps, tolerance, volts } from '../record/arguments.ts';
import { pointsOf } from '../record/points.ts';
import { short } from '../record/short.ts';

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
