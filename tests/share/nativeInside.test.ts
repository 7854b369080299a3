import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { mostLevels } from '../../src/functions/formula/parse.ts';
import { nativeFormula } from '../../src/functions/native/nativeFormula.ts';

const cells: Readonly<Record<string, readonly (readonly number[])[]>> = {
  A1: [[160]],
  'A1:A2': [[160], [170]],
};
const native = (formula: string, pair = false): readonly string[] | undefined =>
  nativeFormula(formula, { cellsAt: (name) => cells[name]?.map((row) => [...row]), array: false }, pair);

const effective = 'TRIPDRIFT.EFFECTIVE(5,200,160)';

// 5·200/160 = 6.25 by hand; what stands around it is worked out by mathjs.
describe('a native form inside a larger formula', () => {
  it.each([
    [effective, 6.25],
    [`10/${effective}`, 1.6],
    [`2^${effective}`, 76.109_255_360_174],
    [`20-${effective}-1`, 12.75],
    [`${effective}^2`, 39.0625],
    [`3*(1+${effective})`, 21.75],
    [`${effective}/${effective}`, 1],
  ])('%s keeps its value', (formula, value) => {
    const [text, ...more] = native(formula)!;
    expect(more).toEqual([]);
    expect(Number(evaluate(text!))).toBeCloseTo(value, 8);
  });

  it('is the text around it as it is written', () => {
    const [text] = native(`"at " & ${effective} & " mil"`)!;
    expect(text!.startsWith('"at " & (')).toBe(true);
    expect(text!.endsWith(') & " mil"')).toBe(true);
  });

  it('stands beside what is left out between commas', () => {
    const [text] = native(`SUM(1,,${effective})`)!;
    expect(text).toMatch(/^SUM\(1,,[^,]+\)$/);
  });

  it('a formula without any of ours stays as it is', () => {
    expect(native('SUM(1,2) + 3')).toEqual(['SUM(1,2) + 3']);
  });
});

describe('no native form is made', () => {
  it.each([
    ['of a text that is no formula', '10/('],
    ['within LET', `LET(x,${effective},x)`],
    ['within a LAMBDA', `LAMBDA(x,${effective})(1)`],
    ['within a LAMBDA that is not called', `LAMBDA(x,${effective})`],
    ['in the arguments of a call without a name', `LAMBDA(x,x)(${effective})`],
    ['of a range where one cell is meant', 'TRIPDRIFT.EFFECTIVE(5,200,A1:A2)'],
    ['of a cell that is not known', 'TRIPDRIFT.EFFECTIVE(5,200,Z9)'],
    ['of one call that has one beside another that has none', `${effective}+TRIPDRIFT.EFFECTIVE(5,200,Z9)`],
  ])('%s', (_, formula) => {
    expect(native(formula)).toBeUndefined();
  });

  it('for two cells where the formula fills one', () => {
    expect(native(effective)).toHaveLength(1);
    expect(native(effective, true)).toBeUndefined();
  });
});

// K as found 160 ±2 %, of 200, danger 5: 5·200/(160·1.02) to 5·200/(160·0.98).
describe('a pair', () => {
  const band = (measured: string): string => `TRIPDRIFT.BAND(5,200,${measured},0.02)`;

  it('is two formulas side by side, and the first where it fills one cell', () => {
    const both = native(band('160'), true)!;
    expect(both.map((one) => Number(evaluate(one)))).toEqual([
      expect.closeTo(1000 / 163.2, 9),
      expect.closeTo(1000 / 156.8, 9),
    ]);
    expect(native(band('160'))).toEqual([both[0]]);
  });

  it('has what is left out between its commas, and nothing where it would be refused', () => {
    const [low] = native('TRIPDRIFT.BAND(5,200,160,0.02,)', true)!;
    expect(Number(evaluate(low!))).toBeCloseTo(1000 / 163.2, 9);
    expect(native(band('0'))).toBeUndefined();
    expect(native(band('0'), true)).toBeUndefined();
  });

  it('is none of more than 4,000 characters each', () => {
    const long = (count: number): string => band(`A1${'+0.00000000'.repeat(count)}`);
    expect(native(long(50), true)).toHaveLength(2);
    expect(native(long(190), true)).toBeUndefined();
    expect(native(long(190))).toBeUndefined();
  });

  it.each([
    ['a range', 'A1:A2'],
    ['a range inside another call', 'MAX(A1:A2)'],
    ['an array', '{160,170}'],
    ['a cell that is not known', 'Z9'],
  ])('is none over %s', (_, measured) => {
    expect(native(band(measured), true)).toBeUndefined();
    expect(native(band(measured))).toBeUndefined();
  });
});

describe('beyond what a person can read', () => {
  it('nothing is made of more than 4,000 characters', () => {
    const form = native(`""&${effective}`)![0]!.length;
    const of = (length: number): string => `"${'x'.repeat(length - form)}"&${effective}`;
    expect(native(of(4000))![0]).toHaveLength(4000);
    expect(native(of(4001))).toBeUndefined();
  });

  it('nor of a formula with more levels than are gone through', () => {
    const nested = (levels: number): string => `${'-('.repeat(levels)}${effective}${')'.repeat(levels)}`;
    expect(native(nested(mostLevels / 4))).toBeDefined();
    expect(native(nested(mostLevels * 2))).toBeUndefined();
    // Each operator is one: 199 in a chain have 200 levels.
    expect(native(`${'1+'.repeat(199)}${effective}`)).toBeDefined();
    expect(native(`${'1+'.repeat(200)}${effective}`)).toBeUndefined();
  });
});
