import { type CurveMethod, methods } from '../../method/record/curve.ts';
import { type ChoiceArgument, optionalNumber, series } from '../declare/argument.ts';

/** Arguments that the functions of calibration records share. */
export const gaps = series(
  'gaps',
  'any',
  'Gaps of the record, a row or a column in one unit of displacement.',
);
export const volts = series(
  'volts',
  'gapVoltage',
  'Gap voltages measured there, in V with their minus sign, one beside each gap.',
);
export const method: ChoiceArgument<CurveMethod> = {
  kind: 'choice',
  name: 'method',
  choices: methods,
  otherwise: 'monotone',
  description: 'Between the points: "monotone" (a smooth curve; if left out) or "linear" (straight pieces).',
};
export const tolerance = optionalNumber(
  'tolerance',
  'share',
  0.05,
  'Accepted error of a sensitivity as a fraction; 0.05 (5 %) if left out.',
);
