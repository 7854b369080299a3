import cdf from '@stdlib/stats-base-dists-normal-cdf';
import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/functions/catalogue.ts';
import { optional, type Argument } from '../../src/functions/declare/argument.ts';
import type { WorksheetFunction } from '../../src/functions/declare/declare.ts';
import { FunctionError } from '../../src/functions/functionError.ts';
import { parseUnit } from '../../src/units/parse.ts';
import { call } from './call.ts';
import '../seed.ts';

/** What the functions of a spreadsheet are to mathjs, which has its own arithmetic and logarithm. */
const spreadsheet = {
  IF: (condition: boolean, yes: unknown, no: unknown) => (condition ? yes : no),
  ABS: Math.abs,
  INT: Math.floor,
  LOG: (value: number, base: number) => Math.log(value) / Math.log(base),
  PHI: (z: number) => cdf(z, 0, 1),
  ROUND: (value: number) => Math.round(value),
  SQRT: Math.sqrt,
  REFUSED: 'refused',
};

/** A native formula worked out by mathjs; its names are marked, as some of them are words of mathjs. */
function workedOut(native: string, values: Readonly<Record<string, unknown>>): unknown {
  const scope: Record<string, unknown> = { ...spreadsheet };
  let formula = native
    .replaceAll(/#(?:VALUE!|N\/A)/g, 'REFUSED')
    .replaceAll('NORM.S.DIST', 'PHI')
    .replaceAll(',TRUE)', ')')
    .replaceAll('<>', '!=')
    .replaceAll(/(?<![<>!])=/g, '==');
  for (const [name, value] of Object.entries(values)) {
    formula = formula.replaceAll(new RegExp(`\\b${name}\\b`, 'g'), `its_${name}`);
    scope[`its_${name}`] = value;
  }
  return evaluate(formula, scope) as unknown;
}

/** A number that every range of the arguments takes; steps of a twentieth, so that ends meet now and then. */
const anyNumber = fc.integer({ min: 1, max: 19 }).map((twentieths) => twentieths / 20);
const lengths = fc.constantFrom('um', 'mil', 'mm');

/** Speeds whose zone boundaries are whole numbers of µm (ISO 20816-3, from memory: 4800, 9000, 13200/√n), and amplitudes about them. */
const speeds = fc.constantFrom(900, 3600, 10_000);
const amplitudes = fc
  .tuple(fc.constantFrom(160, 80, 48, 300, 150, 90, 440, 220, 132), fc.constantFrom(-0.01, 0, 0.01))
  .map(([boundary, off]) => boundary + off);

/** What is given for an argument: to the function, and to the formula. */
type Given = readonly [toFunction: unknown, toFormula: unknown];

function given(argument: Argument): fc.Arbitrary<Given> {
  if (argument.kind === 'choice')
    return fc.constantFrom(...argument.choices).map((choice): Given => [choice, choice]);
  if (argument.kind === 'unit') return lengths.map((text): Given => [text, parseUnit(text)!.factor]);
  const numbers = { speed: speeds, displacement: amplitudes }[argument.name] ?? anyNumber;
  const number = numbers.map((value): Given => [value, value]);
  if (argument.kind !== 'number' || !optional(argument)) return number;
  return fc.oneof({ weight: 3, arbitrary: number }, fc.constant<Given>([null, argument.otherwise]));
}

/** The formulas that stand for a function with these arguments; two for a pair. */
function formsFor(
  { native, arguments: declared }: WorksheetFunction,
  all: readonly Given[],
): (string | undefined)[] {
  if (native === undefined) return [];
  if (typeof native === 'string') return [native];
  if ('low' in native) return [native.low, native.high];
  const at = declared.findIndex(({ name }) => name === native.by);
  const [value] = all[at]!;
  const by = declared[at]!.kind === 'choice' ? String(value) : value === null ? 'left out' : 'given';
  return [native.forms[by]];
}

describe('native forms, worked out by a general library (mathjs), are what the functions give', () => {
  for (const declared of catalogue.filter(({ native }) => native !== undefined)) {
    it(declared.id, () => {
      fc.assert(
        fc.property(fc.tuple(...declared.arguments.map(given)), (all) => {
          const ours = call(declared.id, ...all.map(([value]) => value));
          const cells: unknown[] = Array.isArray(ours) ? ours.flat() : [ours];
          const forms = formsFor(declared, all);
          expect(forms).toHaveLength(cells.length);
          const values = Object.fromEntries(
            declared.arguments.map(({ name }, index) => [name, all[index]![1]]),
          );
          for (const [index, form] of forms.entries()) {
            expect(form).toBeDefined();
            const theirs = workedOut(form!, values);
            const cell = cells[index];
            if (cell instanceof FunctionError) expect(theirs).toBe('refused');
            else if (typeof cell === 'number' && typeof theirs === 'number')
              expect(Math.abs(theirs - cell)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(cell)));
            else expect(theirs).toBe(cell);
          }
        }),
      );
    });
  }
});
