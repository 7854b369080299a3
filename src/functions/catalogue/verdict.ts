import { decide } from '../../method/decision/verdict.ts';
import { optionalNumber } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { configured, measured } from './shared.ts';

export const VERDICT = declare({
  id: 'VERDICT',
  description: 'Whether the thresholds of a channel act where they should.',
  arguments: [
    configured,
    measured,
    optionalNumber(
      'tolerance',
      'share',
      0.05,
      'Accepted error of the sensitivity as a fraction; 0.05 (5 %) if left out.',
    ),
    optionalNumber(
      'uncertainty',
      'shareOrNone',
      null,
      'Expanded uncertainty of the measured sensitivity as a fraction of it, kept as a guard band. 0 or left out: the value alone decides.',
    ),
  ],
  result: 'text',
  resultDescription: 'late, early, within, or undetermined where the uncertainty reaches over the tolerance.',
  example: { formula: '=TRIPDRIFT.VERDICT(200,160,0.05,0.03)', result: 'late' },
  run: (kc, km, tolerance, uncertainty) => decide(kc, km, tolerance, uncertainty, 'guarded'),
});
