import type { AstExpression, CallExpression } from '@borgar/fx';
import { argumentsOf, calledName, levelsOf } from '../formula/nodes.ts';
import { mostLevels, parseFormula } from '../formula/parse.ts';
import { printed } from '../formula/print.ts';
import { reaches } from '../range.ts';
import type { NativePlace } from './argumentForm.ts';
import { functionOf, nativeCall } from './nativeCall.ts';

/** Beyond this nobody can read it; a cell holds 8,192 characters. */
const longest = 4000;

/**
 * A formula, as people type it and without `=`, with native functions in place of each of ours; all else stays as it is
 * written. A pair that fills two cells beside each other (`pair`) becomes two formulas. `undefined` where one of our
 * functions has no native form that is sure to do the same there, or the text is no formula.
 */
export function nativeFormula(
  formula: string,
  place: NativePlace,
  pair = false,
): readonly [string] | readonly [string, string] | undefined {
  const tree = parsedOrNone(formula);
  if (!tree || levelsOf(tree, 'every operator') > mostLevels) return undefined;
  if (tree.type === 'CallExpression' && functionOf(tree)?.result === 'pair') {
    if (rangesIn(tree, place)) return undefined;
    const [low, high] = [readable(nativeCall(tree, place, 'low')), readable(nativeCall(tree, place, 'high'))];
    if (low === undefined || high === undefined) return undefined;
    return pair ? [low, high] : [low];
  }
  let text = '';
  let at = 0;
  for (const call of outermostOurs(tree)) {
    const [from, to] = call?.loc ?? [];
    const node = call && nativeCall(call, place);
    const native = readable(node);
    if (native === undefined || from === undefined || to === undefined) return undefined;
    const whole = from === 0 && to === formula.length;
    text += formula.slice(at, from) + (whole || node?.type === 'CallExpression' ? native : `(${native})`);
    at = to;
  }
  text += formula.slice(at);
  return pair || text.length > longest ? undefined : [text];
}

function parsedOrNone(formula: string): AstExpression | undefined {
  try {
    return parseFormula(formula);
  } catch {
    return undefined;
  }
}

/** A native form as text, unless there is none or it is too long to be read. */
function readable(native: AstExpression | undefined): string | undefined {
  const text = native && printed(native);
  return text !== undefined && text.length <= longest ? text : undefined;
}

/** Our calls that stand in no other of ours, in their order; `undefined` among them for what can't be looked into. */
function outermostOurs(node: AstExpression): (CallExpression | undefined)[] {
  if (node.type === 'CallExpression' && functionOf(node)) return [node];
  if (node.type === 'LetExpression' || node.type === 'LambdaExpression') return [undefined];
  if (node.type === 'CallExpression' && calledName(node) === undefined) return [undefined];
  if (!('arguments' in node)) return [];
  return argumentsOf(node).flatMap((one) => (one === null ? [] : outermostOurs(one)));
}

function rangesIn(node: AstExpression, { cellsAt }: NativePlace): boolean {
  if (node.type === 'ReferenceIdentifier') {
    const cells = cellsAt(node.value);
    return cells === undefined || reaches(cells);
  }
  if (!('arguments' in node)) return node.type === 'ArrayExpression';
  return argumentsOf(node).some((one) => one !== null && rangesIn(one, { cellsAt, array: false }));
}
