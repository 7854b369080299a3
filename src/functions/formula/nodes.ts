import type { AstExpression, BinaryOperator, CallExpression } from '@borgar/fx';

/** Expressions of formulas, for building others from them. */
export function call(name: string, ...given: AstExpression[]): AstExpression {
  return { type: 'CallExpression', callee: { type: 'Identifier', name }, arguments: given };
}

export function binary(operator: BinaryOperator, one: AstExpression, other: AstExpression): AstExpression {
  return { type: 'BinaryExpression', operator, arguments: [one, other] };
}

export function literal(value: number | string): AstExpression {
  const raw = typeof value === 'number' ? String(value).toUpperCase() : `"${value.replaceAll('"', '""')}"`;
  return { type: 'Literal', value, raw };
}

export function errorLiteral(value: string): AstExpression {
  return { type: 'ErrorLiteral', value, raw: value };
}

/** Operands of a chain of one operator in a row: `a*b*c`. */
export function chain(
  operator: BinaryOperator,
  operands: readonly AstExpression[],
): AstExpression | undefined {
  const [first, ...more] = operands;
  return first && more.reduce((all, operand) => binary(operator, all, operand), first);
}

/** The name that a call calls, in capitals; `undefined` where it calls what another expression gives, as in `LAMBDA(x,x)(5)`. */
export function calledName({ callee }: CallExpression): string | undefined {
  // The parser's types know of names alone.
  const called = callee as AstExpression | CallExpression['callee'];
  return called.type === 'Identifier' ? called.name.toUpperCase() : undefined;
}

/** The expressions that an expression is made of, in their order. */
export function partsOf(node: AstExpression): readonly AstExpression[] {
  switch (node.type) {
    case 'CallExpression': {
      const called = node.callee as AstExpression | CallExpression['callee'];
      const given = argumentsOf(node).flatMap((one) => one ?? []);
      return called.type === 'Identifier' ? given : [called, ...given];
    }
    case 'UnaryExpression':
    case 'BinaryExpression':
      return node.arguments;
    case 'ArrayExpression':
      return node.elements.flat();
    case 'LetExpression':
      return [...node.declarations.flatMap(({ init }) => init ?? []), ...(node.body ? [node.body] : [])];
    case 'LambdaExpression':
      return node.body ? [node.body] : [];
    case 'Literal':
    case 'ErrorLiteral':
    case 'ReferenceIdentifier':
      return [];
  }
}

/** The arguments of a call, `null` where one is left out between commas; the parser's types don't know of that. */
export function argumentsOf({
  arguments: given,
}: {
  readonly arguments: readonly AstExpression[];
}): readonly (AstExpression | null)[] {
  return given;
}

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
