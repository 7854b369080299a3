import { loopEffective } from '../../method/loop/loopEffective.ts';
import { number, optionalNumber } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { refused } from '../functionError.ts';

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
