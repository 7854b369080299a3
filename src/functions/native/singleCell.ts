import type { AstExpression } from '@borgar/fx';
import { argumentsOf, calledName } from '../formula/nodes.ts';

/** Functions that give one value for single values, and those that make one value of whatever they get. */
const ofEach = new Set(
  'ABS ROUND ROUNDUP ROUNDDOWN INT TRUNC SQRT LN LOG LOG10 EXP POWER MOD SIGN IF IFERROR VALUE N PI CONVERT LEFT RIGHT MID TRIM LOWER UPPER LEN ISNUMBER NORM.S.DIST'.split(
    ' ',
  ),
);
const ofAll = new Set('SUM AVERAGE MIN MAX COUNT COUNTA MEDIAN PRODUCT SUMPRODUCT STDEV AND OR'.split(' '));
const operators = new Set(['+', '-', '*', '/', '^', '&', '=', '<', '>', '<=', '>=', '<>', '%']);

/** Whether an expression has one value wherever it stands; `single` tells it of references. In doubt it has not. */
export function isSingle(node: AstExpression, single: (reference: string) => boolean): boolean {
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
