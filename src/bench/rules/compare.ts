/** What a cell or an operand of a rule says. */
export type CellValue = number | string | boolean | null;

type Filled = Exclude<CellValue, null>;

/** Numbers come before texts and texts before truth values, as a spreadsheet orders them (common practice, no source). */
const rank = { number: 0, string: 1, boolean: 2 } as const;

/**
 * Whether a cell fits a comparison with constants (`operator` as ECMA-376 part 1, section 18.18.15 names it). Texts compare
 * without case; a blank cell counts as 0 beside a number and as an empty text beside a text. An unknown operator fits nothing.
 */
export function fits(operator: string, value: CellValue, operands: readonly Filled[]): boolean {
  const [first, second = first] = operands;
  if (first === undefined || second === undefined) return false;
  const to = (operand: Filled): number => order(value ?? blankBeside(operand), operand);
  const [low, high] = order(first, second) <= 0 ? [first, second] : [second, first];
  switch (operator) {
    case 'equal':
      return to(first) === 0;
    case 'notEqual':
      return to(first) !== 0;
    case 'lessThan':
      return to(first) < 0;
    case 'lessThanOrEqual':
      return to(first) <= 0;
    case 'greaterThan':
      return to(first) > 0;
    case 'greaterThanOrEqual':
      return to(first) >= 0;
    case 'between':
      return to(low) >= 0 && to(high) <= 0;
    case 'notBetween':
      return to(low) < 0 || to(high) > 0;
    default:
      return false;
  }
}

function blankBeside(operand: Filled): Filled {
  if (typeof operand === 'string') return '';
  return typeof operand === 'number' ? 0 : false;
}

function order(one: Filled, other: Filled): number {
  if (typeof one !== typeof other)
    return rank[typeof one as keyof typeof rank] - rank[typeof other as keyof typeof rank];
  const [a, b] = [plain(one), plain(other)];
  return a < b ? -1 : a > b ? 1 : 0;
}

function plain(value: Filled): number | string {
  return typeof value === 'string' ? value.toLowerCase() : Number(value);
}

/** The value of a formula that is nothing but a number, a text in quotes or a truth value; `undefined` for all others. */
export function constantOf(formula: string): Exclude<CellValue, null> | undefined {
  const text = formula.trim();
  if (/^[+-]?(\d+(?:\.\d*)?|\.\d+)(e[+-]?\d+)?$/i.test(text)) return Number(text);
  if (/^"([^"]|"")*"$/.test(text)) return text.slice(1, -1).replaceAll('""', '"');
  if (/^(true|false)$/i.test(text)) return text.toLowerCase() === 'true';
  return undefined;
}
