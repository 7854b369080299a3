import type { AstExpression, BinaryOperator } from '@borgar/fx';

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

/** The arguments of a call, `null` where one is left out between commas; the parser's types don't know of that. */
export function argumentsOf({
  arguments: given,
}: {
  readonly arguments: readonly AstExpression[];
}): readonly (AstExpression | null)[] {
  return given;
}
