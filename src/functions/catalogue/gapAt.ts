import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { FunctionError, notAvailable } from '../functionError.ts';
import { gaps, method, volts } from '../record/arguments.ts';
import { measuredCurve } from '../record/measuredCurve.ts';
import { short } from '../record/short.ts';

export const GAPAT = declare({
  id: 'GAPAT',
  description: 'Gap at which a calibration record has a voltage; never beyond its points.',
  arguments: [gaps, volts, number('voltage', 'notZero', 'Gap voltage in V, with its minus sign.'), method],
  result: 'number',
  resultDescription: 'Gap in the unit of the gaps; #N/A outside the record.',
  example: { formula: '=TRIPDRIFT.GAPAT({10,20,30},{-2,-4,-6},-3,"linear")', result: '15' },
  run: (allGaps, allVolts, voltage, kind) => {
    const curve = measuredCurve(allGaps, allVolts, kind);
    if (curve instanceof FunctionError) return curve;
    const gap = curve.gapAt(voltage);
    if (!Number.isNaN(gap)) return gap;
    const [near, far] = [curve.voltsAt(curve.from), curve.voltsAt(curve.to)];
    return notAvailable(
      `Voltage ${short(voltage)} V lies outside the record, ${short(near)} V to ${short(far)} V.`,
    );
  },
});
