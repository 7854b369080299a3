import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { FunctionError } from '../functionError.ts';
import { gaps, method, volts } from '../record/arguments.ts';
import { gapOnCurve } from '../record/gapOnCurve.ts';
import { measuredCurve } from '../record/measuredCurve.ts';

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
