// The one-file build of mathjs loads several times faster than its hundreds of modules.
import math from 'mathjs/lib/browser/math.js';
import type { MathNode } from 'mathjs';
import { type Atom, atomOf } from './atoms.ts';

const SPELLINGS: readonly (readonly [symbol: string, spellings: string])[] = [
  ['um', 'um μm micron microns micrometre micrometres micrometer micrometers'],
  ['mm', 'mm millimetre millimetres millimeter millimeters'],
  ['cm', 'cm centimetre centimetres centimeter centimeters'],
  ['m', 'm metre metres meter meters'],
  ['mil', 'mil mils thou thous'],
  ['inch', 'in inch inches "'],
  ['mV', 'mv millivolt millivolts'],
  ['V', 'v volt volts'],
  ['mA', 'ma milliamp milliamps milliampere milliamperes'],
  ['A', 'a amp amps ampere amperes'],
  ['ms', 'ms msec millisecond milliseconds'],
  ['s', 's sec secs second seconds'],
  ['min', 'min mins minute minutes'],
  ['h', 'h hr hrs hour hours'],
  ['day', 'd day days'],
  ['week', 'wk wks week weeks'],
  ['g', 'g gs gn'],
  ['percent', '% pct percent'],
  ['(inch/s)', 'ips'],
  ['/', 'per'],
  ['^2', 'squared'],
];

const SYMBOLS: ReadonlyMap<string, string> = new Map(
  SPELLINGS.flatMap(([symbol, spellings]) =>
    spellings.split(' ').map((spelling) => [spelling, symbol] as const),
  ),
);

/** Powers of the simple units in a compound one. */
export type Powers = ReadonlyMap<Atom, number>;

const TOKEN = /\s*(?:(?<word>[a-zμ]+|%|")|(?<power>\^?-?\d)(?!\d)|(?<sign>[*/()]))/y;

/** Powers of the simple units in a tidied text such as `mv/(in/s)`; `undefined` where a word or the form is unknown. */
export function powersOf(tidied: string): Powers | undefined {
  const expression = toExpression(tidied);
  if (expression === undefined) return undefined;
  const powers = new Map<Atom, number>();
  try {
    return collect(math.parse(expression), 1, powers) ? powers : undefined;
  } catch {
    return undefined; // unbalanced brackets or a sign without its operand
  }
}

/** The text in symbols alone, with the multiplication signs and powers that people leave out. */
function toExpression(tidied: string): string | undefined {
  let expression = '';
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < tidied.length) {
    const { word, power, sign } = TOKEN.exec(tidied)?.groups ?? {};
    if (power !== undefined) {
      if (!/[\w)]$/.test(expression)) return undefined;
      expression += `^(${power.replace('^', '')})`;
      continue;
    }
    const part = word === undefined ? sign : symbolOf(word);
    if (part === undefined) return undefined;
    const operands = /[\w)]$/.test(expression) && /^[\w(]/.test(part);
    expression += operands ? `*${part}` : part;
  }
  return expression;
}

function collect(node: MathNode, power: number, into: Map<Atom, number>): boolean {
  if (math.isParenthesisNode(node)) return collect(node.content, power, into);
  if (math.isSymbolNode(node)) {
    const atom = atomOf(node.name);
    if (atom === undefined) return false;
    into.set(atom, (into.get(atom) ?? 0) + power);
    return true;
  }
  if (!math.isOperatorNode(node)) return false;
  const [left, right] = node.args as readonly (MathNode | undefined)[];
  if (left === undefined || right === undefined) return false;
  if (node.op === '*') return collect(left, power, into) && collect(right, power, into);
  if (node.op === '/') return collect(left, power, into) && collect(right, -power, into);
  return node.op === '^' && collect(left, power * exponent(right), into);
}

/** A whole exponent, bracketed or signed; `NaN`, which fits no dimension, for anything else. */
function exponent(node: MathNode): number {
  return Number(node.toString().replaceAll(/[()\s]/g, ''));
}

/**
 * The symbol of one lower-case word of a unit text, or `undefined`. Case carries no meaning here: `MV` in a
 * channel list is a slip for mV, never a megavolt.
 */
function symbolOf(word: string): string | undefined {
  return SYMBOLS.get(word);
}
