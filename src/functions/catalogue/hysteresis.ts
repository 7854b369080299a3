import { type UpDownFault, isUpDownFault, upDown } from '../../method/record/upDown.ts';
import { series } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { FunctionError, refused } from '../functionError.ts';
import { volts } from '../record/arguments.ts';
import { readingsInTurn } from '../record/readingsInTurn.ts';
import { short } from '../record/short.ts';

export const HYSTERESIS = declare({
  id: 'HYSTERESIS',
  description:
    'Hysteresis of a calibration record read up and down: the largest difference of both ways of one cycle at one gap.',
  arguments: [
    series(
      'gaps',
      'any',
      'Gaps in the order in which they were read, up and down again, in one unit of displacement.',
    ),
    volts,
  ],
  result: 'row',
  resultDescription:
    'Three cells: in V, in % of the output span of the mean curve, and as displacement in the unit of the gaps. Gaps read one way only stay out.',
  example: {
    formula: '=TRIPDRIFT.HYSTERESIS({10,30,50,50,30,10},{-2,-6,-10,-10,-6.5,-2})',
    result: '0.5\t6.25\t2.5',
  },
  run: (allGaps, allVolts) => {
    const readings = readingsInTurn(allGaps, allVolts);
    if (readings instanceof FunctionError) return readings;
    const found = upDown(readings);
    if (isUpDownFault(found)) {
      if (typeof found === 'string') return refused(cures[found]);
      const { place = 0, gap = NaN } = readings[found.repeated] ?? {};
      return refused(`Gaps ${place} repeats the gap ${short(gap)} on one way: keep one reading of the two.`);
    }
    const { volts: inVolts, ofSpan, displacement } = found.hysteresis;
    return [inVolts, 100 * ofSpan, displacement];
  },
});

const cures: Readonly<Record<Extract<UpDownFault, string>, string>> = {
  'one direction': 'Gaps runs one way only: enter the readings up and down in the order they were taken.',
  'too few gaps': 'Gaps has fewer than 3 gaps read both ways: read the same gaps up and down.',
  'does not fall': 'Volts does not fall as the gap grows: enter gap voltages with their minus sign.',
};
