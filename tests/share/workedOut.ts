import { all, create, type MathNode } from 'mathjs';

/** What stands in a cell: a number, a text, or nothing. */
export type Content = number | string | null;

/** Numbers before texts, capitals or not; a blank cell is 0 beside a number and "" beside a text, as spreadsheets compare. */
function order(one: unknown, other: unknown): number {
  const [a, b] = [one ?? (typeof other === 'string' ? '' : 0), other ?? (typeof one === 'string' ? '' : 0)];
  if (typeof a === 'string' && typeof b === 'string')
    return a.toLowerCase() === b.toLowerCase() ? 0 : a.toLowerCase() < b.toLowerCase() ? -1 : 1;
  if (typeof a === 'string') return 1;
  if (typeof b === 'string') return -1;
  return Number(a) - Number(b);
}

/** Works out the one of two expressions that a condition chooses, and no other. */
const IF = Object.assign(
  ([condition, yes, no]: MathNode[], _: unknown, scope: Map<string, unknown>): unknown =>
    ((condition?.evaluate(scope) as unknown) ? yes : no)?.evaluate(scope) as unknown,
  { rawArgs: true },
);

const math = create(all!);
math.import(
  {
    equal: (one: unknown, other: unknown) => order(one, other) === 0,
    unequal: (one: unknown, other: unknown) => order(one, other) !== 0,
    larger: (one: unknown, other: unknown) => order(one, other) > 0,
    largerEq: (one: unknown, other: unknown) => order(one, other) >= 0,
    smaller: (one: unknown, other: unknown) => order(one, other) < 0,
    smallerEq: (one: unknown, other: unknown) => order(one, other) <= 0,
    IF,
  },
  { override: true },
);

const numbersIn = (values: readonly unknown[]): number[] =>
  values.flat().filter((one) => typeof one === 'number');

const spreadsheet = {
  ISNUMBER: (value: unknown) => typeof value === 'number',
  INT: Math.floor,
  ABS: Math.abs,
  ROUND: Math.round,
  SQRT: Math.sqrt,
  TRIM: (text: unknown) => (typeof text === 'string' ? text.trim() : text),
  SUM: (...values: unknown[]) => numbersIn(values).reduce((sum, one) => sum + one, 0),
  MAX: (...values: unknown[]) => Math.max(...numbersIn(values)),
  REFUSED: 'refused',
};

/**
 * A formula of a spreadsheet worked out by a general library (mathjs), with what stands in its cells; `refused` for an error.
 * References are names of the cells given; several in a row or column are an array.
 */
export function workedOut(
  formula: string,
  cells: Readonly<Record<string, Content | readonly Content[]>> = {},
): unknown {
  const scope: Record<string, unknown> = { ...spreadsheet };
  let text = formula
    .replaceAll(/#(?:VALUE!|N\/A)/g, 'REFUSED')
    .replaceAll('<>', '!=')
    .replaceAll(/(?<![<>!])=/g, '==');
  for (const [at, [name, content]] of Object.entries(cells).entries()) {
    text = text.replaceAll(new RegExp(`(?<![A-Za-z0-9:"])${name}(?![0-9:"])`, 'g'), `cell_${at}`);
    scope[`cell_${at}`] = content;
  }
  try {
    const value: unknown = math.evaluate(text, scope);
    return typeof value === 'boolean' || value === undefined ? `no value: ${text}` : value;
  } catch (error) {
    if (error instanceof TypeError || /Cannot convert/.test(String(error))) return 'refused';
    throw error;
  }
}
