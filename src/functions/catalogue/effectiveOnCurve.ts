import { thresholdOnCurve } from '../../method/record/thresholdOnCurve.ts';
import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { FunctionError, notAvailable } from '../functionError.ts';
import { gaps, method, volts } from '../record/arguments.ts';
import { gapOnCurve } from '../record/gapOnCurve.ts';
import { measuredCurve } from '../record/measuredCurve.ts';
import { short } from '../record/short.ts';
import { multiplier } from './shared.ts';

export const EFFECTIVEONCURVE = declare({
  id: 'EFFECTIVEONCURVE',
  description:
    'Real peak-to-peak displacement at which a vibration setpoint acts, on the curve of a calibration record.',
  arguments: [
    number('setpoint', 'positive', 'Peak-to-peak setpoint as the monitor shows it, in the unit of the gaps.'),
    number(
      'configured',
      'positive',
      'Sensitivity the monitor is configured with, in mV per unit of the gaps.',
    ),
    gaps,
    volts,
    number('gapVoltage', 'notZero', 'Operating gap voltage in V, with its minus sign.'),
    multiplier,
    method,
  ],
  result: 'number',
  resultDescription:
    'Effective threshold in the unit of the gaps; #N/A with the largest indication that the record supports where the setpoint cannot be shown to act.',
  example: {
    formula: '=TRIPDRIFT.EFFECTIVEONCURVE(15,200,{10,50,90},{-2,-10,-14},-10,,"linear")',
    result: '20',
  },
  run: (setpoint, configured, allGaps, allVolts, gapVoltage, times, kind) => {
    const curve = measuredCurve(allGaps, allVolts, kind);
    if (curve instanceof FunctionError) return curve;
    const gap = gapOnCurve(curve, gapVoltage, 'Gap voltage');
    if (gap instanceof FunctionError) return gap;
    const found = thresholdOnCurve(curve, gap, setpoint, configured / 1000, times);
    if (!found || 'acts' in found) return found?.acts;
    return notAvailable(
      `Setpoint cannot be shown to act: the record supports indications up to ${short(found.largestIndicated)}.`,
    );
  },
});
