import { band } from '../../method/decision/band.ts';
import { declare } from '../declare/declare.ts';
import { configured, measured, multiplier, setpoint, uncertainty } from './shared.ts';

export const BAND = declare({
  id: 'BAND',
  description:
    'Lowest and highest real displacement at which a setpoint may act, given the uncertainty of the measured sensitivity.',
  arguments: [setpoint, configured, measured, uncertainty, multiplier],
  result: 'pair',
  resultDescription:
    'Low and high side by side, in the unit of the setpoint; not symmetric about the effective threshold.',
  example: { formula: '=TRIPDRIFT.BAND(5,200,160,0.25)', result: '5\t8.333333333333334' },
  native: {
    low: 'multiplier*setpoint*configured/measured/(1+uncertainty)',
    high: 'multiplier*setpoint*configured/measured/(1-uncertainty)',
  },
  run: band,
});
