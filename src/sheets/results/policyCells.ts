import type { Policy } from '../../audit/model/policy.ts';
import type { ModelCell, ModelRow } from '../model.ts';
import { cell } from '../cells.ts';

/** Where the parts of the policy that the formulas need stand on the results sheet. */
export const policyCells = {
  tolerance: '$D$4',
  rule: '$E$4',
  near: '$F$4',
  far: '$G$4',
  coverage: '$H$4',
} as const;

const labels = ['Tolerance', 'Rule', 'Linear from, V', 'Linear to, V', 'Coverage k'] as const;

/** The same places by row and column. */
export const policyPlace = { tolerance: { row: 4, column: 4 }, rule: { row: 4, column: 5 } } as const;

/** Labels in row 3 and values in row 4, columns D to H as `policyCells` says. */
export function policyRows({ tolerance, rule, linearVolts, coverage }: Policy): readonly ModelRow[] {
  const skip: (ModelCell | undefined)[] = [undefined, undefined];
  return [
    {
      height: 30,
      cells: [
        cell('Policy that the formulas use', 'strong'),
        ...skip,
        ...labels.map((label) => cell(label, 'header')),
        undefined,
        cell(
          'Change a value here, or an input in the table, and the formulas follow. What a calibration record or a known vibration decides stands as values. Levels are in the unit of the column “Unit”.',
          'subtitle',
        ),
      ],
    },
    {
      cells: [
        cell('(rule: guarded or simple)', 'subtitle'),
        ...skip,
        cell(tolerance, 'inputPercent'),
        cell(rule, 'input'),
        cell(linearVolts.near, 'inputVolts'),
        cell(linearVolts.far, 'inputVolts'),
        cell(coverage, 'input'),
      ],
    },
  ];
}
