import type { AstExpression } from '@borgar/fx';
import { argumentsOf } from './nodes.ts';

/** An expression with the names and references in it that `instead` knows replaced. */
export function replaced(
  node: AstExpression,
  instead: (reference: string) => AstExpression | undefined,
): AstExpression {
  if (node.type === 'ReferenceIdentifier') return instead(node.value) ?? node;
  if (!('arguments' in node)) return node;
  const given = argumentsOf(node).map((one) => one && replaced(one, instead));
  return { ...node, arguments: given } as AstExpression;
}
