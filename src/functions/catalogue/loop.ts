import { number, optionalNumber } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { refused } from '../functionError.ts';
import { loopEffective, loopReading } from '../../method/loop.ts';

export const LOOPEFFECTIVE = declare({
  id: 'LOOPEFFECTIVE',
  description:
    'Real reading at which a setpoint acts when the ends of a current loop are not where the monitor believes them.',
  arguments: [
    number('setpoint', 'positive', 'Setpoint as the monitor shows it, in the unit of the span.'),
    number('span', 'positive', 'Reading at the upper end of the loop, in any unit.'),
    number('currentAtZero', 'positive', 'Loop current measured at reading 0, in mA.'),
    number('currentAtSpan', 'positive', 'Loop current measured at the full span, in mA.'),
    optionalNumber(
      'believedAtZero',
      'positive',
      4,
      'Current that the monitor takes for 0, in mA; 4 if left out.',
    ),
    optionalNumber(
      'believedAtSpan',
      'positive',
      20,
      'Current that the monitor takes for the full span, in mA; 20 if left out.',
    ),
  ],
  result: 'number',
  resultDescription: 'Effective setpoint in the unit of the span; below 0 it acts at rest.',
  example: { formula: '=TRIPDRIFT.LOOPEFFECTIVE(10,20,5,20)', result: '9.333333333333334' },
  native:
    'IF((currentAtSpan-currentAtZero)*(believedAtSpan-believedAtZero)<=0,#VALUE!,span*(believedAtZero+(believedAtSpan-believedAtZero)*setpoint/span-currentAtZero)/(currentAtSpan-currentAtZero))',
  run: (setpoint, span, currentAtZero, currentAtSpan, believedAtZero, believedAtSpan) => {
    const [width, believed] = [currentAtSpan - currentAtZero, believedAtSpan - believedAtZero];
    if (width === 0)
      return refused('Current at span equals current at zero: enter the currents at the two ends.');
    if (believed === 0)
      return refused('Believed at span equals believed at zero: enter the currents at the two ends.');
    if (width * believed < 0)
      return refused('Current at span runs against the believed ends: check which end is which.');
    return loopEffective(
      setpoint,
      span,
      { at0: currentAtZero, at100: currentAtSpan },
      { at0: believedAtZero, at100: believedAtSpan },
    );
  },
});

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
