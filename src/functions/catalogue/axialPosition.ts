import { axialEffective } from '../../method/axial/threshold.ts';
import { declare } from '../declare/declare.ts';
import { axialArguments } from './shared.ts';
import { uncertainZeroBand } from '../../method/axial/uncertainZero.ts';
import { number, optionalNumber } from '../declare/argument.ts';
import { FunctionError, notAvailable } from '../functionError.ts';
import { gaps, method, volts, short, measuredCurve } from '../record/arguments.ts';

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

export const AXIALBAND = declare({
  id: 'AXIALBAND',
  description:
    'Lowest and highest real position at which an axial position setpoint may act, sensitivity and zero voltage uncertain.',
  arguments: [
    ...axialArguments,
    number(
      'uncertainty',
      'shareOrNone',
      'Expanded uncertainty of the measured sensitivity, as a fraction of it: 3 % is 0.03.',
    ),
    number(
      'zeroUncertainty',
      'notNegative',
      'Expanded uncertainty of the measured zero voltage, in V, at the same coverage; 0 if it is exact.',
    ),
    optionalNumber(
      'coverage',
      'positive',
      2,
      'Coverage factor of both uncertainties, and of the interval; 2 if left out.',
    ),
  ],
  result: 'pair',
  resultDescription:
    'Low and high side by side, in the unit of the setpoint, with their signs; on the other side of zero it acts at rest.',
  example: {
    formula: '=TRIPDRIFT.AXIALBAND(20,200,160,-10,-10,"toward",0.25,0)',
    result: '20\t33.333333333333336',
  },
  run: (
    setpoint,
    configured,
    measured,
    zeroConfigured,
    zeroMeasured,
    direction,
    uncertainty,
    zeroUncertainty,
    coverage,
  ) =>
    uncertainZeroBand(
      {
        setpoint,
        configured,
        measured,
        zeroConfigured,
        zeroMeasured,
        direction,
        uncertainty,
        zeroUncertainty,
      },
      coverage,
    ),
});

export const AXIALEFFECTIVE = declare({
  id: 'AXIALEFFECTIVE',
  description:
    'Real position at which an axial position setpoint acts, with the zero voltage shifted as well.',
  arguments: axialArguments,
  result: 'number',
  resultDescription:
    'Position in the unit of the setpoint, with its sign; on the other side of zero it acts at rest.',
  example: { formula: '=TRIPDRIFT.AXIALEFFECTIVE(20,200,160,-10,-10,"toward")', result: '25' },
  native: {
    by: 'direction',
    forms: {
      toward: '(setpoint*configured+(zeroConfigured-zeroMeasured)*1000)/measured',
      away: '(setpoint*configured-(zeroConfigured-zeroMeasured)*1000)/measured',
    },
  },
  run: axialEffective,
});
