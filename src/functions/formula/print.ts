import type { AstExpression, BinaryOperator } from '@borgar/fx';
import { argumentsOf, calledName } from './nodes.ts';

/** How tightly operators bind (ECMA-376 part 1, section 18.17.2.2). */
const precedence: Partial<Record<BinaryOperator, number>> = {
  '=': 1,
  '<': 1,
  '>': 1,
  '<=': 1,
  '>=': 1,
  '<>': 1,
  '&': 2,
  '+': 3,
  '-': 3,
  '*': 4,
  '/': 4,
  '^': 5,
};

/**
 * The text of an expression, without `=`, with brackets wherever the order of operations needs them; signs are always
 * put in brackets beside another operator. `undefined` for what has no place in a cell of every program: `@`, `#`, `LET`,
 * `LAMBDA`, unions and intersections.
 */
export function printed(node: AstExpression): string | undefined {
  switch (node.type) {
    case 'Literal':
    case 'ErrorLiteral':
      return node.raw;
    case 'ReferenceIdentifier':
      return node.value;
    case 'ArrayExpression': {
      const rows = node.elements.map((row) => joined(row, ','));
      return rows.includes(undefined) ? undefined : `{${rows.join(';')}}`;
    }
    case 'CallExpression': {
      const given = joined(argumentsOf(node), ',');
      return given === undefined || calledName(node) === undefined
        ? undefined
        : `${node.callee.name}(${given})`;
    }
    case 'UnaryExpression': {
      const [first] = node.arguments;
      const operand = first && operandOf(first, Infinity);
      if (operand === undefined) return undefined;
      if (node.operator === '%') return `${operand}%`;
      return node.operator === '+' || node.operator === '-' ? node.operator + operand : undefined;
    }
    case 'BinaryExpression': {
      const own = precedence[node.operator];
      const [one, other] = node.arguments;
      if (own === undefined || !one || !other) return undefined;
      const left = operandOf(one, own);
      // A right operand of the same strength was in brackets: 8-(2-1).
      const right = operandOf(other, own + 0.5);
      return left === undefined || right === undefined ? undefined : left + node.operator + right;
    }
    case 'LetExpression':
    case 'LambdaExpression':
      return undefined;
  }
}

function operandOf(node: AstExpression, least: number): string | undefined {
  const text = printed(node);
  const own =
    node.type === 'UnaryExpression' || (node.type === 'Literal' && node.raw.startsWith('-'))
      ? 0
      : node.type === 'BinaryExpression'
        ? (precedence[node.operator] ?? 0)
        : Infinity;
  return text === undefined || own >= least ? text : `(${text})`;
}

function joined(nodes: readonly (AstExpression | null)[], separator: string): string | undefined {
  const texts = nodes.map((node) => (node === null ? '' : printed(node)));
  return texts.includes(undefined) ? undefined : texts.join(separator);
}
