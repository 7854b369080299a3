import { loopReading } from '../../method/loop/loop.ts';
import { number, optionalNumber } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { refused } from '../functionError.ts';

export const LOOP = declare({
  id: 'LOOP',
  description: 'Reading of a 4–20 mA loop, with the currents measured at its ends where they are known.',
  arguments: [
    number('current', 'positive', 'Loop current in mA.'),
    number('span', 'positive', 'Reading at the upper end of the loop, in any unit.'),
    optionalNumber('at0', 'positive', 4, 'Current at reading 0, in mA; 4 if left out.'),
    optionalNumber('at100', 'positive', 20, 'Current at the full span, in mA; 20 if left out.'),
  ],
  result: 'number',
  resultDescription: 'Reading in the unit of the span; outside it where the current is outside the ends.',
  example: { formula: '=TRIPDRIFT.LOOP(12,20)', result: '10' },
  native: 'IF(at0=at100,#VALUE!,(current-at0)/(at100-at0)*span)',
  run: (current, span, at0, at100) =>
    at0 === at100
      ? refused('At100 equals At0: enter the currents at the two ends.')
      : loopReading(current, span, at0, at100),
});
