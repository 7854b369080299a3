import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { FunctionError, notAvailable } from '../functionError.ts';
import { gaps, method, volts } from '../record/arguments.ts';
import { measuredCurve } from '../record/measuredCurve.ts';
import { short } from '../record/short.ts';

export const VOLTSAT = declare({
  id: 'VOLTSAT',
  description: 'Voltage that a calibration record has at a gap; never beyond its points.',
  arguments: [gaps, volts, number('gap', 'any', 'Gap in the unit of the gaps.'), method],
  result: 'number',
  resultDescription: 'Gap voltage in V; #N/A outside the record.',
  example: { formula: '=TRIPDRIFT.VOLTSAT({10,20,30},{-2,-4,-6},15,"linear")', result: '-3' },
  run: (allGaps, allVolts, gap, kind) => {
    const curve = measuredCurve(allGaps, allVolts, kind);
    if (curve instanceof FunctionError) return curve;
    const voltage = curve.voltsAt(gap);
    if (!Number.isNaN(voltage)) return voltage;
    return notAvailable(
      `Gap ${short(gap)} lies outside the record, ${short(curve.from)} to ${short(curve.to)}.`,
    );
  },
});
