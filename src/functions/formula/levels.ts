import type { AstExpression } from '@borgar/fx';
import { partsOf } from './nodes.ts';

/**
 * How many levels an expression has, counted without going down by calls. A chain of operators (`1+2+3`), which is
 * worked out from left to right, counts as one level or as many.
 */
export function levelsOf(tree: AstExpression, counting: 'chains as one' | 'every operator'): number {
  const left: { readonly node: AstExpression; readonly level: number }[] = [{ node: tree, level: 1 }];
  let most = 0;
  for (let next = left.pop(); next; next = left.pop()) {
    const { node, level } = next;
    most = Math.max(most, level);
    const [first] = node.type === 'BinaryExpression' ? node.arguments : [];
    for (const part of partsOf(node)) {
      const sameChain = counting === 'chains as one' && part === first && part.type === 'BinaryExpression';
      left.push({ node: part, level: sameChain ? level : level + 1 });
    }
  }
  return most;
}
