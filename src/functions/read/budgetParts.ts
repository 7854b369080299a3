import { type Distribution, standardUncertainty, type BudgetPart } from '../../method/uncertainty.ts';
import { type FunctionError, refused } from '../functionError.ts';

/** The parts of a budget, paired by their place; a place without value and distribution is left out. */
export function budgetParts(
  values: readonly (number | null)[],
  distributions: readonly (Distribution | null)[],
  degrees: readonly (number | null)[],
): BudgetPart[] | FunctionError {
  if (distributions.length !== values.length)
    return refused(
      `Distributions has ${distributions.length} cells beside ${values.length} values: select as many cells in each.`,
    );
  if (degrees.length > 0 && degrees.length !== values.length)
    return refused(
      `Degrees of freedom has ${degrees.length} cells beside ${values.length} values: select as many cells in each.`,
    );
  const parts: BudgetPart[] = [];
  for (const [at, value] of values.entries()) {
    const distribution = distributions[at] ?? null;
    if (value === null && distribution === null && (degrees[at] ?? null) === null) continue;
    if (value === null) return refused(`Values ${at + 1} is blank: enter the part or clear its line.`);
    if (distribution === null)
      return refused(`Distributions ${at + 1} is blank: enter how value ${at + 1} is spread.`);
    parts.push({
      standard: standardUncertainty(value, distribution),
      freedom: degrees[at] ?? Infinity,
    });
  }
  return parts;
}
