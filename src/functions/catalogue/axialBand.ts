import { uncertainZeroBand } from '../../method/axial/uncertainZero.ts';
import { number, optionalNumber } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { axialArguments } from './shared.ts';

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
