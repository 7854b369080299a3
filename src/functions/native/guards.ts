import type { AstExpression } from '@borgar/fx';
import type { NumberRange } from '../declare/numberRange.ts';
import { binary, call, literal } from '../formula/nodes.ts';

/** Conditions, each true or false for one cell, that say together whether an argument is a number in its range. */
export function guards(argument: AstExpression, range: NumberRange): AstExpression[] {
  const { above, below, zero, whole } = range;
  const zeroCounts = zero && above === -Number.MIN_VALUE;
  const found = [call('ISNUMBER', argument)];
  if (zeroCounts) found.push(binary('>=', argument, literal(0)));
  else if (above !== -Infinity) found.push(binary('>', argument, literal(above)));
  else if (!zero) found.push(binary('<>', argument, literal(0)));
  if (below !== Infinity) found.push(binary('<', argument, literal(below)));
  if (whole) found.push(binary('=', call('INT', argument), argument));
  return found;
}
