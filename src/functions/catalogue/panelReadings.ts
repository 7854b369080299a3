import { number, optionalNumber } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { configured, measured } from './shared.ts';
import { indicated, actual } from '../../method/vibration/panelReading.ts';
import { pointsTo } from '../../method/pointsTo.ts';
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

export const INDICATED = declare({
  id: 'INDICATED',
  description: 'What the monitor shows when the shaft really moves this much.',
  arguments: [number('real', 'notNegative', 'Real vibration, in any unit.'), configured, measured],
  result: 'number',
  resultDescription: 'Reading of the monitor, in the unit of the real vibration.',
  example: { formula: '=TRIPDRIFT.INDICATED(5,200,160)', result: '4' },
  native: 'real*measured/configured',
  run: indicated,
});

export const ACTUAL = declare({
  id: 'ACTUAL',
  description: 'What the shaft really does when the monitor shows this much.',
  arguments: [
    number('indicated', 'notNegative', 'Reading of the monitor, in any unit.'),
    configured,
    measured,
  ],
  result: 'number',
  resultDescription: 'Real vibration, in the unit of the reading.',
  example: { formula: '=TRIPDRIFT.ACTUAL(4,200,160)', result: '5' },
  native: 'indicated*configured/measured',
  run: actual,
});
