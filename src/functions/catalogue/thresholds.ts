import {
  effectiveThreshold,
  shift,
  shiftFraction,
  interimSetpoint,
} from '../../method/vibration/threshold.ts';
import { declare } from '../declare/declare.ts';
import { configured, measured, multiplier, setpoint } from './shared.ts';
import { optionalNumber } from '../declare/argument.ts';
import { notAvailable } from '../functionError.ts';

export const INTERIMSETPOINT = declare({
  id: 'INTERIMSETPOINT',
  description:
    'Setpoint that acts at the intended real vibration until the chain is corrected. An interim measure under the site’s change procedure; it may lie below the present reading.',
  arguments: [
    setpoint,
    configured,
    measured,
    optionalNumber(
      'resolution',
      'positive',
      null,
      'Smallest setpoint step of the monitor, in the unit of the setpoint; the result is rounded down to it. Not rounded if left out.',
    ),
  ],
  result: 'number',
  resultDescription: 'Setpoint, in the unit of the given one; #N/A where even one step would act late.',
  example: { formula: '=TRIPDRIFT.INTERIMSETPOINT(5,200,157,0.1)', result: '3.9' },
  native: {
    by: 'resolution',
    forms: { 'left out': 'setpoint*measured/configured', given: stepped('setpoint*measured/configured') },
  },
  run: (intended, kc, km, resolution) => {
    const offered = interimSetpoint(intended, kc, km, resolution);
    return Number.isNaN(offered)
      ? notAvailable('Resolution is too coarse: even one step would act late. Use a finer step.')
      : offered;
  },
});

export const SHIFTFRACTION = declare({
  id: 'SHIFTFRACTION',
  description: 'Shift of every threshold of a channel as a fraction of the intended one.',
  arguments: [configured, measured],
  result: 'number',
  resultDescription: 'Configured over measured sensitivity, less 1; above 0 is late. 0.25 is 25 %.',
  example: { formula: '=TRIPDRIFT.SHIFTFRACTION(200,160)', result: '0.25' },
  native: '(configured-measured)/measured',
  run: shiftFraction,
});

export const SHIFT = declare({
  id: 'SHIFT',
  description: 'How much later (+) or earlier (−) a setpoint acts than intended, as real displacement.',
  arguments: [setpoint, configured, measured, multiplier],
  result: 'number',
  resultDescription:
    'Effective threshold less the intended one, in the unit of the setpoint; above 0 is late.',
  example: { formula: '=TRIPDRIFT.SHIFT(5,200,160)', result: '1.25' },
  native: 'multiplier*setpoint*(configured-measured)/measured',
  run: shift,
});

export const EFFECTIVE = declare({
  id: 'EFFECTIVE',
  description: 'Real displacement at which a setpoint acts.',
  arguments: [setpoint, configured, measured, multiplier],
  result: 'number',
  resultDescription: 'Effective threshold, in the unit of the setpoint.',
  example: { formula: '=TRIPDRIFT.EFFECTIVE(5,200,160)', result: '6.25' },
  native: 'multiplier*setpoint*configured/measured',
  run: effectiveThreshold,
});

/**
 * The native form of rounding to the early side: `exact` as a whole multiple of the resolution, a step that floating-point
 * noise missed being met; #N/A for none.
 */
function stepped(exact: string): string {
  const steps = `(${exact}/resolution)`;
  const nearest = `ROUND(${steps},0)`;
  const onStep = `ABS(${steps}-${nearest})<=1E-12*IF(${steps}>1,${steps},1)`;
  const whole = `IF(${onStep},${nearest},INT(${steps}))`;
  return `IF(${whole}=0,#N/A,${whole}*resolution)`;
}
