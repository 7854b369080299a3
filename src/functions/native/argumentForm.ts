import type { AstExpression } from '@borgar/fx';
import { type Argument, type NumberArgument, optional } from '../declare/argument.ts';
import { inRange, ranges, type NumberRange } from '../declare/numberRange.ts';
import { evaluate } from '../formula/evaluate.ts';
import { literal, argumentsOf, calledName, binary, call } from '../formula/nodes.ts';
import { FunctionError } from '../functionError.ts';
import { type Range, reaches } from '../range.ts';
import { blank } from '../read/cellKind.ts';
import { readerOf } from '../read/readerOf.ts';
import type { Unit } from '../../units/unit.ts';

/** Functions that give one value for single values, and those that make one value of whatever they get. */
const ofEach = new Set(
  'ABS ROUND ROUNDUP ROUNDDOWN INT TRUNC SQRT LN LOG LOG10 EXP POWER MOD SIGN IF IFERROR VALUE N PI CONVERT LEFT RIGHT MID TRIM LOWER UPPER LEN ISNUMBER NORM.S.DIST'.split(
    ' ',
  ),
);

const ofAll = new Set('SUM AVERAGE MIN MAX COUNT COUNTA MEDIAN PRODUCT SUMPRODUCT STDEV AND OR'.split(' '));

const operators = new Set(['+', '-', '*', '/', '^', '&', '=', '<', '>', '<=', '>=', '<>', '%']);

/** What a native formula may rest on where it is going to stand. */
export interface NativePlace {
  /** The rows of cells, as they are now, that a reference or name leads to; `undefined` where it can't be told. */
  readonly cellsAt: (reference: string) => Range | undefined;
  /** Whether ranges are gone over place by place: in an array formula. */
  readonly array: boolean;
}

/** An argument as a native formula has it. */
export interface ArgumentForm {
  /** Left out of the call, and nothing stands in its place. */
  readonly node: AstExpression | undefined;
  readonly guards: readonly AstExpression[];
  /** It is a range of several cells. */
  readonly many?: true;
  /** Of a choice: the one that is meant, or none where a cell says it. */
  readonly choice?: string;
}

/**
 * An argument of a call for a native formula; `node` has no function of ours any more, `null` is left out. `undefined`
 * where the native formula could not refuse what the function refuses, or would refuse what it takes now: a unit or text
 * that no cell should hold, a text that is a number, a cell that is blank.
 */
export function argumentForm(
  argument: Argument,
  node: AstExpression | null,
  place: NativePlace,
): ArgumentForm | undefined {
  if (node === null) return leftOut(argument);
  switch (argument.kind) {
    case 'number':
      return numberForm(argument, node, place);
    case 'choice': {
      const read = readerOf(argument);
      const said = node.type === 'Literal' ? node.value : loneCellOf(node, place);
      const choice = typeof said === 'string' ? read(said, true) : undefined;
      if (typeof choice !== 'string') return undefined;
      return node.type === 'Literal' ? { node, guards: [], choice } : { node, guards: [] };
    }
    case 'unit': {
      const unit = node.type === 'Literal' ? readerOf(argument)(node.value, true) : undefined;
      if (unit === undefined || unit instanceof FunctionError) return undefined;
      return { node: literal((unit as Unit).factor), guards: [] };
    }
    case 'members':
    case 'series':
    case 'labels':
    case 'switch':
      return undefined;
  }
}

function leftOut(argument: Argument): ArgumentForm | undefined {
  if (!optional(argument)) return undefined;
  const stands = readerOf(argument)(null, true);
  if (stands === null) return { node: undefined, guards: [] };
  if (typeof stands === 'number') return { node: literal(stands), guards: [] };
  if (typeof stands === 'string') return { node: literal(stands), guards: [], choice: stands };
  return argument.kind === 'unit' ? { node: literal((stands as Unit).factor), guards: [] } : undefined;
}

function numberForm(
  argument: NumberArgument,
  node: AstExpression,
  place: NativePlace,
): ArgumentForm | undefined {
  const range = ranges[argument.range];
  if (isConstant(node)) {
    const value = evaluate(node, constants);
    return typeof value === 'number' && inRange(value, range) ? { node, guards: [] } : undefined;
  }
  if (node.type !== 'ReferenceIdentifier') {
    const single = isSingle(node, (reference) => {
      const cells = place.cellsAt(reference);
      return cells !== undefined && !reaches(cells);
    });
    return single ? { node, guards: guards(node, range) } : undefined;
  }
  const cells = place.cellsAt(node.value);
  if (cells === undefined) return undefined;
  const many = reaches(cells);
  // A blank cell of an argument that may be left out stands for a value of its own.
  const mayBeBlank = many && !optional(argument);
  const fits = cells.flat().every((cell) => typeof cell === 'number' || (mayBeBlank && blank(cell)));
  if (!fits || (many && !place.array)) return undefined;
  return { node, guards: guards(node, range), ...(many && { many }) };
}

function loneCellOf(node: AstExpression, { cellsAt }: NativePlace): unknown {
  const cells = node.type === 'ReferenceIdentifier' ? cellsAt(node.value) : undefined;
  return cells && !reaches(cells) ? cells[0]?.[0] : undefined;
}

const constants = {
  cellsAt: (): undefined => undefined,
  operand: (value: unknown): unknown => value,
  beyond: (why: FunctionError): FunctionError => why,
};

function isConstant(node: AstExpression): boolean {
  if (node.type === 'UnaryExpression' || node.type === 'BinaryExpression')
    return node.arguments.every(isConstant);
  return node.type === 'Literal';
}

/** Whether an expression has one value wherever it stands; `single` tells it of references. In doubt it has not. */
function isSingle(node: AstExpression, single: (reference: string) => boolean): boolean {
  switch (node.type) {
    case 'Literal':
    case 'ErrorLiteral':
      return true;
    case 'ReferenceIdentifier':
      return single(node.value);
    case 'UnaryExpression':
    case 'BinaryExpression':
      return operators.has(node.operator) && node.arguments.every((one) => isSingle(one, single));
    case 'CallExpression': {
      const name = calledName(node);
      if (name === undefined) return false;
      const given = argumentsOf(node);
      if (ofAll.has(name)) return given.every((one) => one === null || isPlain(one, single));
      if (name === 'VLOOKUP' || name === 'MATCH') {
        return given.slice(0, 1).every((one) => one !== null && isSingle(one, single));
      }
      return ofEach.has(name) && given.every((one) => one === null || isSingle(one, single));
    }
    case 'ArrayExpression':
    case 'LetExpression':
    case 'LambdaExpression':
      return false;
  }
}

/** A reference of any size, or one value: what a function that makes one value of all reads alike everywhere. */
function isPlain(node: AstExpression, single: (reference: string) => boolean): boolean {
  return node.type === 'ReferenceIdentifier' || isSingle(node, single);
}

/** Conditions, each true or false for one cell, that say together whether an argument is a number in its range. */
function guards(argument: AstExpression, range: NumberRange): AstExpression[] {
  const { above, below, zero, whole } = range;
  const zeroCounts = zero && above === -Number.MIN_VALUE;
  const found = [call('ISNUMBER', argument)];
  if (zeroCounts) found.push(binary('>=', argument, literal(0)));
  else if (above !== -Infinity) found.push(binary('>', argument, literal(above)));
  else if (!zero) found.push(binary('<>', argument, literal(0)));
  if (below !== Infinity) found.push(binary('<', argument, literal(below)));
  if (whole) found.push(binary('=', call('INT', argument), argument));
  return found;
}
