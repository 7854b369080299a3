import { cellAddress } from '../../cells/address.ts';
import type { ViewRule } from '../../hosts/file/view/types.ts';

const signs: Readonly<Record<string, string>> = {
  equal: '=',
  notEqual: '<>',
  lessThan: '<',
  lessThanOrEqual: '<=',
  greaterThan: '>',
  greaterThanOrEqual: '>=',
};

/**
 * A rule as one formula, with its `=`, that is true where the rule applies, for the top left cell of its first area;
 * `undefined` where it can't be said so.
 */
export function ruleFormula({ kind, operator = '', formulas, areas }: ViewRule): string | undefined {
  const [first, second] = formulas;
  const [area] = areas;
  if (first === undefined || !area) return undefined;
  if (kind === 'expression') return `=${first}`;
  if (kind !== 'cellIs') return undefined;
  const cell = cellAddress(area.top, area.left);
  const sign = signs[operator];
  if (sign !== undefined) return `=${cell}${sign}(${first})`;
  if (second === undefined) return undefined;
  if (operator === 'between')
    return `=AND(${cell}>=MIN(${first},${second}),${cell}<=MAX(${first},${second}))`;
  if (operator === 'notBetween')
    return `=OR(${cell}<MIN(${first},${second}),${cell}>MAX(${first},${second}))`;
  return undefined;
}
