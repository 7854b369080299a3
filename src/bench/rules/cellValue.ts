/** What a cell or an operand of a rule says. */
export type CellValue = number | string | boolean | null;

/** The value of a formula that is nothing but a number, a text in quotes or a truth value; `undefined` for all others. */
export function constantOf(formula: string): Exclude<CellValue, null> | undefined {
  const text = formula.trim();
  if (/^[+-]?(\d+(?:\.\d*)?|\.\d+)(e[+-]?\d+)?$/i.test(text)) return Number(text);
  if (/^"([^"]|"")*"$/.test(text)) return text.slice(1, -1).replaceAll('""', '"');
  if (/^(true|false)$/i.test(text)) return text.toLowerCase() === 'true';
  return undefined;
}
