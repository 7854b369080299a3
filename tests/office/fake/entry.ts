import { HostError, invalidArgument } from './hostError.ts';

/** A cell's content: a constant, or a formula with its last result. */
export type Content = string | number | boolean | ErrorValue | FormulaCell;

export class ErrorValue {
  constructor(readonly code: string) {}
}

export class FormulaCell {
  constructor(
    readonly formula: string,
    readonly result: string | number | boolean | ErrorValue,
  ) {}
}

/** What an entry makes of a cell; a format where Excel chooses one. */
export interface Entered {
  readonly content: Content | undefined;
  readonly format?: string;
}

const longest = 32_767;
const errors = new Set(['#N/A', '#VALUE!', '#REF!', '#DIV/0!', '#NUM!', '#NAME?', '#NULL!']);

/**
 * Takes an entry as Excel takes what is written through `values` and `formulas`: as if typed in English. Sources: the public
 * reference (Range.values) for formulas; for numbers, dates, truth values and the apostrophe common practice, no source.
 */
export function entered(
  entry: unknown,
  format: string,
  evaluate: (formula: string) => FormulaCell['result'],
): Entered {
  if (typeof entry === 'number' || typeof entry === 'boolean') return { content: entry };
  if (typeof entry !== 'string') throw invalidArgument();
  if (entry.length > longest) throw invalidArgument();
  if (entry === '') return { content: undefined };
  if (entry.startsWith("'")) return { content: entry.slice(1) };
  if (format === '@') return { content: entry };
  if (errors.has(entry)) return { content: new ErrorValue(entry) };
  const typed = typedNumber(entry.trim());
  if (typed !== undefined) return typed;
  if (/^[=+\-@]/.test(entry)) return formulaEntry(entry, evaluate);
  if (/^(true|false)$/i.test(entry)) return { content: entry.toLowerCase() === 'true' };
  return { content: entry };
}

function formulaEntry(entry: string, evaluate: (formula: string) => FormulaCell['result']): Entered {
  const formula = entry.startsWith('=') ? entry : `=${entry}`;
  if (formula.length > 8_192) throw new HostError('FormulaLengthExceedsLimit');
  // A formula that can't be parsed: unbalanced parentheses or quotes stand for all of them here.
  const bare = formula.replace(/"(?:[^"]|"")*"/g, '');
  if (bare.includes('"') || bare.split('(').length !== bare.split(')').length) throw invalidArgument();
  return { content: new FormulaCell(formula, evaluate(formula)) };
}

function typedNumber(text: string): Entered | undefined {
  if (/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text)) return { content: Number(text) };
  const percent = /^([+-]?\d+\.?\d*)\s*%$/.exec(text);
  if (percent) return { content: Number(percent[1]) / 100, format: '0%' };
  if (/^(\d{1,2}[-/]\d{1,2}([-/]\d{2,4})?|\d{4}-\d{2}-\d{2}|[a-z]{3,9} \d{1,4})$/i.test(text)) {
    const day = Date.parse(`${text} 2026 UTC`) || Date.parse(text);
    if (!Number.isNaN(day)) return { content: Math.floor(day / 86_400_000) + 25_569, format: 'd-mmm' };
  }
  return undefined;
}
