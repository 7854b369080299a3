import { sensitivityError } from '../../method/vibration/sensitivity.ts';
import { declare } from '../declare/declare.ts';
import { configured, measured, multiplier, setpoint, uncertainty } from './shared.ts';
import { distributions, combineUncertainties, TWO_SIGMA, coverageFactor } from '../../method/uncertainty.ts';
import { optionalNumber, series, number } from '../declare/argument.ts';
import { FunctionError } from '../functionError.ts';
import { budgetParts } from '../read/budgetParts.ts';
import { band } from '../../method/decision/band.ts';
import { probabilityLater } from '../../method/decision/probabilityLater.ts';
import { decide } from '../../method/decision/verdict.ts';

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

export const PROBABILITYLATER = declare({
  id: 'PROBABILITYLATER',
  description:
    'Probability that a setpoint acts later than a limit, with the measured sensitivity normally distributed.',
  arguments: [
    setpoint,
    number('limit', 'positive', 'Greatest acceptable real displacement, in the unit of the setpoint.'),
    configured,
    measured,
    uncertainty,
    optionalNumber('coverage', 'positive', 2, 'Coverage factor of the uncertainty; 2 if left out.'),
    multiplier,
  ],
  result: 'number',
  resultDescription:
    'Probability from 0 to 1, by the measurement alone; wiring, logic and relays are not counted.',
  example: { formula: '=TRIPDRIFT.PROBABILITYLATER(5,6.25,200,160,0.03)', result: '0.5' },
  native: 'NORM.S.DIST((multiplier*setpoint*configured/limit-measured)*coverage/(uncertainty*measured),TRUE)',
  run: probabilityLater,
});

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

export const SENSITIVITYUNCERTAINTY = declare({
  id: 'SENSITIVITYUNCERTAINTY',
  description: 'Expanded uncertainty of a measured sensitivity from the independent parts of its budget.',
  arguments: [
    series(
      'values',
      'positive',
      'What is stated of each part, all in one unit, such as % of the sensitivity.',
    ),
    {
      kind: 'series',
      name: 'distributions',
      description:
        'Beside each value: "normal" (an expanded uncertainty, k = 2), "rectangular" or "triangular" (a half-width), or "standard" (a standard uncertainty as it is).',
      cells: {
        kind: 'choice',
        name: 'distributions',
        choices: distributions,
        description: '',
      },
    },
    {
      kind: 'series',
      name: 'degreesOfFreedom',
      description:
        'Degrees of freedom beside each value; blank, a very great number, or left out where the spread is known.',
      cells: { kind: 'number', name: 'degreesOfFreedom', range: 'positive', description: '' },
      otherwise: [],
    },
    optionalNumber(
      'level',
      'share',
      TWO_SIGMA,
      'Level of confidence; 0.9545 (k = 2 for a normal distribution) if left out.',
    ),
  ],
  result: 'row',
  resultDescription:
    'Four cells: expanded uncertainty, coverage factor k, effective degrees of freedom ("infinite" where nothing limits them), combined standard uncertainty.',
  example: {
    formula:
      '=TRIPDRIFT.SENSITIVITYUNCERTAINTY({0.25,0.57,0.82},{"standard","standard","standard"},{9,4,14},0.95)',
    result: '2.1547065061200006\t2.093033432222585\t18.99874231426795\t1.0294658809304948',
  },
  run: (values, spreads, degrees, level) => {
    const parts = budgetParts(values, spreads, degrees);
    if (parts instanceof FunctionError) return parts;
    const combined = combineUncertainties(parts);
    if (!combined) return undefined;
    const { standard, freedom } = combined;
    const factor = coverageFactor(level, freedom);
    return [factor * standard, factor, freedom === Infinity ? 'infinite' : freedom, standard];
  },
});

export const SENSITIVITYERROR = declare({
  id: 'SENSITIVITYERROR',
  description: 'Error of the measured sensitivity as a fraction of the configured one.',
  arguments: [configured, measured],
  result: 'number',
  resultDescription:
    'Measured over configured sensitivity, less 1. It is not the shift with its sign turned.',
  example: { formula: '=TRIPDRIFT.SENSITIVITYERROR(200,160)', result: '-0.2' },
  native: '(measured-configured)/configured',
  run: sensitivityError,
});
