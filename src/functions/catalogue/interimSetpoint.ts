import { interimSetpoint } from '../../method/vibration/interimSetpoint.ts';
import { optionalNumber } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { notAvailable } from '../functionError.ts';
import { configured, measured, setpoint } from './shared.ts';

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
  run: (intended, kc, km, resolution) => {
    const offered = interimSetpoint(intended, kc, km, resolution);
    return Number.isNaN(offered)
      ? notAvailable('Resolution is too coarse: even one step would act late. Use a finer step.')
      : offered;
  },
});
