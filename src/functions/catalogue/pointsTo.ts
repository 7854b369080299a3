import { pointsTo } from '../../method/readings/pointsTo.ts';
import { number, optionalNumber } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { tolerance } from '../record/arguments.ts';

/** A hint and the next thing to check, never a verdict; common practice, no source. */
const sentences = {
  nothing: 'Sensitivity and gap voltage agree with the reference; that alone does not clear the channel.',
  'too much cable':
    'Both are low, consistent with too much cable in the chain: check the extension cable length next.',
  'too little cable':
    'Both are high, consistent with too little cable in the chain: check the extension cable length next.',
  'probe position':
    'The sensitivity is right and the gap voltage off, which points to the probe position: check the mechanical gap next.',
  'hidden by the gap voltage':
    'The sensitivity is off while the gap voltage looks right and hides it: check cable and target, the probe may have been moved.',
  'no single cause':
    'Sensitivity and gap voltage are off in no usual pattern: check the target material and every part of the chain.',
} as const;

export const POINTSTO = declare({
  id: 'POINTSTO',
  description:
    'What sensitivity and gap voltage point to, against a reference reading of the same channel at the same mechanical gap.',
  arguments: [
    number('measured', 'positive', 'Sensitivity measured now, in any unit.'),
    number('reference', 'positive', 'Sensitivity of the reference reading, in the same unit.'),
    number('gapVoltage', 'notZero', 'Gap voltage now, in V.'),
    number('referenceGapVoltage', 'notZero', 'Gap voltage of the reference reading, in V.'),
    tolerance,
    optionalNumber(
      'voltTolerance',
      'positive',
      0.5,
      'Gap voltages closer than this, in V, count as the same; 0.5 if left out.',
    ),
  ],
  result: 'text',
  resultDescription: 'One sentence: a hint with the next thing to check, never a verdict.',
  example: {
    formula: '=TRIPDRIFT.POINTSTO(160,200,-8,-10)',
    result: sentences['too much cable'],
  },
  run: (measured, reference, gapVoltage, referenceGapVoltage, part, voltTolerance) => {
    const cause = pointsTo(measured, reference, gapVoltage, referenceGapVoltage, part, voltTolerance);
    return cause && sentences[cause];
  },
});
