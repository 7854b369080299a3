import type { AstExpression } from '@borgar/fx';
import { argumentsOf } from '../functions/formula/nodes.ts';

/** Functions that make something else of an error; IFNA is none of them, as it lets #NAME? pass. */
const hiding = new Set([
  ...['IFERROR', 'ISERROR', 'ISERR', 'ERROR.TYPE', 'ISNUMBER', 'ISTEXT', 'ISNONTEXT', 'ISLOGICAL', 'ISBLANK'],
  ...['TYPE', 'COUNT', 'COUNTA', 'COUNTIF', 'AGGREGATE'],
]);

/**
 * Whether a formula may show a value where one of our functions is not known: what a program without them has left of
 * it looks like a result. `uses` tells names of ours.
 */
export function hidesErrors(node: AstExpression, uses: (name: string) => boolean): boolean {
  if (node.type === 'CallExpression' && hiding.has(node.callee.name.toUpperCase()))
    return holdsOurs(node, uses);
  return operandsOf(node).some((one) => hidesErrors(one, uses));
}

function holdsOurs(node: AstExpression, uses: (name: string) => boolean): boolean {
  if (node.type === 'ReferenceIdentifier') return uses(node.value);
  if (node.type === 'CallExpression' && uses(node.callee.name)) return true;
  return operandsOf(node).some((one) => holdsOurs(one, uses));
}

function operandsOf(node: AstExpression): readonly AstExpression[] {
  return 'arguments' in node ? argumentsOf(node).filter((one) => one !== null) : [];
}

/** What `IFERROR(value, otherwise)` consists of; `undefined` for any other formula. */
export function ifErrorOf(
  node: AstExpression,
): { readonly value: AstExpression; readonly otherwise: AstExpression } | undefined {
  if (node.type !== 'CallExpression' || node.callee.name.toUpperCase() !== 'IFERROR') return undefined;
  const [value, otherwise, ...more] = argumentsOf(node);
  return value && otherwise && more.length === 0 ? { value, otherwise } : undefined;
}
