import type { AstExpression } from '@borgar/fx';
import { argumentsOf, calledName, partsOf } from '../functions/formula/nodes.ts';

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
  return everyPart(node).some(
    (part) => part.type === 'CallExpression' && hiding.has(calledName(part) ?? '') && holdsOurs(part, uses),
  );
}

function holdsOurs(node: AstExpression, uses: (name: string) => boolean): boolean {
  return everyPart(node).some((part) => {
    if (part.type === 'ReferenceIdentifier') return uses(part.value);
    return part.type === 'CallExpression' && uses(calledName(part) ?? '');
  });
}

/** An expression and all that it is made of, however deep. */
function everyPart(node: AstExpression): readonly AstExpression[] {
  const found = [node];
  for (const part of found) found.push(...partsOf(part));
  return found;
}

/** What `IFERROR(value, otherwise)` consists of; `undefined` for any other formula. */
export function ifErrorOf(
  node: AstExpression,
): { readonly value: AstExpression; readonly otherwise: AstExpression } | undefined {
  if (node.type !== 'CallExpression' || calledName(node) !== 'IFERROR') return undefined;
  const [value, otherwise, ...more] = argumentsOf(node);
  return value && otherwise && more.length === 0 ? { value, otherwise } : undefined;
}
