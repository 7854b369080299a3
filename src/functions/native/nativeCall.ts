import type { AstExpression, CallExpression } from '@borgar/fx';
import { NAMESPACE, catalogue } from '../catalogue.ts';
import { optional, type Argument } from '../declare/argument.ts';
import type { WorksheetFunction, Native, NativeBy } from '../declare/declare.ts';
import {
  argumentsOf,
  binary,
  call,
  calledName,
  chain,
  errorLiteral,
  literal,
  replaced,
} from '../formula/nodes.ts';
import { parseFormula } from '../formula/parse.ts';
import { type ArgumentForm, type NativePlace, argumentForm } from './argumentForm.ts';
import { callable } from '../call/callable.ts';
import { FunctionError } from '../functionError.ts';

const byName: ReadonlyMap<string, WorksheetFunction> = new Map(
  catalogue.map((declared) => [`${NAMESPACE}.${declared.id}`, declared]),
);

/** The function of ours that a call is of. */
export function functionOf(node: AstExpression): WorksheetFunction | undefined {
  return node.type === 'CallExpression' ? byName.get(calledName(node) ?? '') : undefined;
}

/**
 * A call of a function of ours as an expression without any, which gives #VALUE! wherever the function would refuse a
 * number. `part` says which cell of a pair is meant. `undefined` where there is none that is sure to do the same.
 */
export function nativeCall(
  node: CallExpression,
  place: NativePlace,
  part?: 'low' | 'high',
): AstExpression | undefined {
  const declared = functionOf(node);
  const given = argumentsOf(node);
  if (!declared?.native || given.length > declared.arguments.length) return undefined;
  const forms: readonly (ArgumentForm | undefined)[] = declared.arguments.map((argument, index) => {
    const own = given[index] ?? null;
    const bare = own && withoutOurs(own, place);
    return bare === undefined ? undefined : argumentForm(argument, bare, place);
  });
  if (!isWhole(forms) || !unitsTaken(declared, given)) return undefined;
  const answer = answerOf(declared, declared.native, forms, part);
  const conditions = chain(
    '*',
    forms.flatMap((form) => form.guards),
  );
  if (!answer) return undefined;
  const refusing = conditions ? call('IF', conditions, answer, errorLiteral('#VALUE!')) : answer;
  return blankWhereAllAre(declared, forms, refusing);
}

function isWhole(forms: readonly (ArgumentForm | undefined)[]): forms is readonly ArgumentForm[] {
  return !forms.includes(undefined);
}

/** An expression with each of our calls in it in its native form. */
function withoutOurs(node: AstExpression, place: NativePlace): AstExpression | undefined {
  if (node.type === 'LetExpression' || node.type === 'LambdaExpression') return undefined;
  if (node.type === 'CallExpression' && calledName(node) === undefined) return undefined;
  if (!('arguments' in node)) return node;
  if (node.type === 'CallExpression' && functionOf(node)) return nativeCall(node, place);
  const given = argumentsOf(node).map((one) => one && withoutOurs(one, place));
  return given.includes(undefined) ? undefined : ({ ...node, arguments: given } as AstExpression);
}

function answerOf(
  declared: WorksheetFunction,
  native: Native,
  forms: readonly ArgumentForm[],
  part: 'low' | 'high' | undefined,
): AstExpression | undefined {
  const filled = (template: string | undefined): AstExpression | undefined => {
    if (template === undefined) return undefined;
    return replaced(parsed(template), (name) => {
      const index = declared.arguments.findIndex((argument) => argument.name === name);
      return forms[index]?.node;
    });
  };
  if (typeof native === 'string') return filled(native);
  if ('low' in native) return part && filled(native[part]);
  const index = declared.arguments.findIndex(({ name }) => name === native.by);
  const form = forms[index];
  if (!form) return undefined;
  if (declared.arguments[index]?.kind === 'number') {
    return filled(native.forms[form.node ? 'given' : 'left out']);
  }
  return form.choice === undefined ? chosenByCell(native, form, filled) : filled(native.forms[form.choice]);
}

/** One form within the other, as the text in a cell chooses; #VALUE! for any other text. */
function chosenByCell(
  { forms }: NativeBy,
  { node }: ArgumentForm,
  filled: (template: string) => AstExpression | undefined,
): AstExpression | undefined {
  return Object.entries(forms).reduceRight<AstExpression | undefined>((otherwise, [choice, template]) => {
    const form = filled(template);
    if (!node || !form || !otherwise) return undefined;
    return call('IF', binary('=', call('TRIM', node), literal(choice)), form, otherwise);
  }, errorLiteral('#VALUE!'));
}

/** A place where all ranges are blank stays blank, if one of them is of an argument that may not be left out. */
function blankWhereAllAre(
  declared: WorksheetFunction,
  forms: readonly ArgumentForm[],
  answer: AstExpression,
): AstExpression {
  const many = forms.flatMap((form, index) => {
    const argument = declared.arguments[index];
    return form.many && form.node && argument ? [{ node: form.node, required: !optional(argument) }] : [];
  });
  const blank = chain(
    '*',
    many.map(({ node }) => binary('=', node, literal(''))),
  );
  return blank && many.some(({ required }) => required) ? call('IF', blank, literal(''), answer) : answer;
}

const templates = new Map<string, AstExpression>();

function parsed(template: string): AstExpression {
  const known = templates.get(template) ?? parseFormula(template);
  templates.set(template, known);
  return known;
}

/**
 * Whether a function takes the units of a call, all of them texts or left out, beside one another: a native formula
 * calculates with their factors alone, and would turn mil into g.
 */
function unitsTaken(declared: WorksheetFunction, given: readonly (AstExpression | null)[]): boolean {
  if (!declared.arguments.some(({ kind }) => kind === 'unit')) return true;
  const tried = declared.arguments.map((argument, index) => inPlaceOf(argument, given[index] ?? null));
  return !(callable(declared)(...tried) instanceof FunctionError);
}

/** The unit itself, and of any other argument a value that it takes. */
function inPlaceOf(argument: Argument, node: AstExpression | null): unknown {
  switch (argument.kind) {
    case 'unit':
      return node?.type === 'Literal' ? node.value : null;
    case 'choice':
      return argument.choices[0];
    case 'number':
      return argument.range === 'count' || argument.range === 'countOrNone' ? 1 : 0.5;
    case 'members':
    case 'series':
    case 'labels':
    case 'switch':
      return null;
  }
}
