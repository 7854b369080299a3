import { thresholdOnCurve } from '../../method/record/onCurve.ts';
import { number, series } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { FunctionError, notAvailable, refused } from '../functionError.ts';
import { gaps, method, volts, short, measuredCurve, gapOnCurve } from '../record/arguments.ts';
import { multiplier } from './shared.ts';
import { type UpDownFault, isUpDownFault, upDown } from '../../method/record/upDown.ts';
import { readingsInTurn } from '../record/readingsInTurn.ts';
import { linearReach } from '../../method/reach.ts';

export const REACH = declare({
  id: 'REACH',
  description: 'Largest peak-to-peak swing about the gap that stays inside the linear range.',
  arguments: [
    number('gap', 'notZero', 'Operating gap.'),
    number('from', 'notZero', 'Smaller end of the linear range, in the unit of the gap.'),
    number('to', 'notZero', 'Greater end of the linear range, in the unit of the gap.'),
  ],
  result: 'number',
  resultDescription: 'Swing in the unit of the gap; 0 where the gap lies outside the range.',
  example: { formula: '=TRIPDRIFT.REACH(50,10,80)', result: '60' },
  native: 'IF(from<to,IF(gap<=from,0,IF(gap>=to,0,2*IF(gap-from<to-gap,gap-from,to-gap))),#VALUE!)',
  run: (gap, from, to) =>
    from < to ? linearReach(gap, from, to) : refused('From is not below To: enter the smaller end first.'),
});

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
