import { combineUncertainties } from '../../method/uncertainty/combine.ts';
import { TWO_SIGMA, coverageFactor } from '../../method/uncertainty/coverageFactor.ts';
import { distributions } from '../../method/uncertainty/standardUncertainty.ts';
import { optionalNumber, series } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { FunctionError } from '../functionError.ts';
import { budgetParts } from '../uncertainty/budgetParts.ts';

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
