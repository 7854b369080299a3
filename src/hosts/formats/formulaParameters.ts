import { nextToken, type FormulaToken } from './formulaTokens.ts';

/**
 * Which tokens are names that `LET` or `LAMBDA` gives inside a formula (`x` in `LET(x,2,x*x)`), by their index. Files
 * mark them with `_xlpm.` (common practice, no source). Two walks over the tokens, however deep the calls are nested.
 */
export function parameterTokens(tokens: readonly FormulaToken[]): ReadonlySet<number> {
  const calls = new Map(callsWithNames(tokens).map((call) => [call.opening, call]));
  const found = new Set<number>();
  const inForce = new Map<string, number>();
  const open: Call[] = [];
  tokens.forEach((token, index) => {
    const call = calls.get(index);
    if (call) {
      open.push(call);
      count(inForce, call.names, 1);
    }
    while (open.length > 0 && index >= (open.at(-1)?.end ?? Infinity)) {
      count(inForce, open.pop()?.names ?? [], -1);
    }
    if (token.kind === 'word' && (inForce.get(token.text.toUpperCase()) ?? 0) > 0) found.add(index);
  });
  return found;
}

/** A call of `LET` or `LAMBDA` by the tokens of its brackets, with the names that it gives. */
interface Call {
  readonly opening: number;
  readonly end: number;
  readonly names: readonly string[];
}

/** Brackets that are open, with the arguments found in them so far if they are those of a call that gives names. */
interface Open {
  readonly opening: number;
  readonly call: 'LET' | 'LAMBDA' | undefined;
  readonly names: (string | undefined)[];
  start: number;
}

function callsWithNames(tokens: readonly FormulaToken[]): Call[] {
  const openings = new Map<number, 'LET' | 'LAMBDA'>();
  const calls: Call[] = [];
  const open: Open[] = [];
  const close = (end: number): void => {
    const last = open.pop();
    if (!last?.call) return;
    // What stands last is what the call gives, and no name.
    const names = last.names.filter(
      (name, position) => name !== undefined && (last.call === 'LAMBDA' || position % 2 === 0),
    );
    calls.push({ opening: last.opening, end, names: names as string[] });
  };
  tokens.forEach(({ kind, text }, index) => {
    const name = kind === 'word' ? text.toUpperCase() : '';
    if (name === 'LET' || name === 'LAMBDA') openings.set(nextToken(tokens, index), name);
    if (kind !== 'other') return;
    if (text === '(' || text === '{') {
      const call = text === '(' ? openings.get(index) : undefined;
      open.push({ opening: index, call, names: [], start: index + 1 });
    } else if (text === ',') {
      const inside = open.at(-1);
      if (!inside?.call) return;
      inside.names.push(onlyWord(tokens, inside.start, index));
      inside.start = index + 1;
    } else if (text === ')' || text === '}') close(index);
  });
  while (open.length > 0) close(tokens.length);
  return calls;
}

function onlyWord(tokens: readonly FormulaToken[], start: number, end: number): string | undefined {
  let only: FormulaToken | undefined;
  for (let at = start; at < end; at++) {
    const token = tokens[at];
    if (token === undefined || token.text.trim() === '') continue;
    if (only) return undefined;
    only = token;
  }
  return only?.kind === 'word' ? only.text.toUpperCase() : undefined;
}

function count(inForce: Map<string, number>, names: readonly string[], by: 1 | -1): void {
  for (const name of names) inForce.set(name, (inForce.get(name) ?? 0) + by);
}
