import { incrementalSensitivity } from '../../method/record/incremental.ts';
import { declare } from '../declare/declare.ts';
import { FunctionError, refused } from '../functionError.ts';
import { gaps, volts } from '../record/arguments.ts';
import { pointsOf } from '../record/points.ts';

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
