import { describe, expect, it } from 'vitest';
import { nativeFormula } from '../../src/functions/native/nativeFormula.ts';
import { workedOut, type Content } from './workedOut.ts';

type Cells = Readonly<Record<string, Content | readonly Content[]>>;

/** The native form that is made while the cells hold this; several contents are a column. */
function native(formula: string, cells: Cells = {}, array = false): string | undefined {
  const rows = (name: string) => {
    const content = cells[name];
    if (content === undefined) return undefined;
    return Array.isArray(content) ? content.map((one: Content) => [one]) : [[content]];
  };
  return nativeFormula(formula, { cellsAt: rows, array })?.[0];
}

/** What a native form gives that was made while the cells held `first`, once they hold something else. */
const later = (formula: string, first: Cells, cells: Cells): unknown =>
  workedOut(native(formula, first)!, cells);

/** A form made while A1 held a sound number, for what A1 holds later. */
const of = (formula: string, first: Content, ...contents: Content[]): unknown[] =>
  contents.map((A1) => later(formula, { A1: first }, { A1 }));

// What the functions take is in the reference: setpoints, sensitivities and factors above 0, shares between 0 and 1,
// delays of 0 or above, signed positions other than 0. All else is refused, as is what is no number.
describe('a native form refuses what its function refuses', () => {
  it('an amount above 0: 1000/A1 (by hand)', () => {
    const formula = 'TRIPDRIFT.EFFECTIVE(5,200,A1)';
    expect(of(formula, 160, 160, 0.5)).toEqual([6.25, 2000]);
    expect(of(formula, 160, 0, -160, 'text', '160', null)).toEqual(new Array(5).fill('refused'));
  });

  it('a share: 6.25/(1+A1) (by hand)', () => {
    const formula = 'TRIPDRIFT.BAND(5,200,160,A1)';
    expect(of(formula, 0.5, 0.25, 0.999)).toEqual([5, expect.closeTo(6.25 / 1.999, 12)]);
    expect(of(formula, 0.5, 0, 1, 1.5, -0.5, '0.5', null)).toEqual(new Array(6).fill('refused'));
  });

  it('a delay of 0 or above: 6.25 + A1/2 (by hand)', () => {
    const formula = 'TRIPDRIFT.LEVELATTRIP(6.25,A1,0.5)';
    expect(of(formula, 1, 0, 3)).toEqual([6.25, 7.75]);
    expect(of(formula, 1, -1, -1e-9, '3', null)).toEqual(new Array(4).fill('refused'));
  });

  it('by numbers that every spreadsheet program can read', () => {
    // Excel: from 2.2251E-308 up (Microsoft, "Excel specifications and limits"); a smaller one would be 0.
    expect(native('TRIPDRIFT.LEVELATTRIP(6.25,A1,0.5)', { A1: 1 })).not.toMatch(/E-3/);
  });

  it('a position of either sign, but not 0: A1·200/160 (by hand)', () => {
    const formula = 'TRIPDRIFT.AXIALEFFECTIVE(A1,200,160,-10,-10,"toward")';
    expect(of(formula, 20, 20, -20)).toEqual([25, -25]);
    expect(of(formula, 20, 0, '20', null)).toEqual(new Array(3).fill('refused'));
  });

  it('any number: A1·25.4 (by hand)', () => {
    const formula = 'TRIPDRIFT.CONVERTUNIT(A1,"mil","um")';
    expect(of(formula, 5, 5, 0, -1)).toEqual([127, 0, -25.4]);
    expect(of(formula, 5, 'text', '5', null)).toEqual(new Array(3).fill('refused'));
  });

  it('each of several cells by itself', () => {
    const formula = 'TRIPDRIFT.EFFECTIVE(A1,B1,C1)';
    const sound = { A1: 5, B1: 200, C1: 160 };
    expect(later(formula, sound, sound)).toBe(6.25);
    for (const name of ['A1', 'B1', 'C1'])
      for (const bad of [0, '5', null])
        expect(later(formula, sound, { ...sound, [name]: bad })).toBe('refused');
  });

  it('a text in a cell that chooses, but for one of its choices in any case and with spaces about it', () => {
    // Toward: 25 + 0.5·1000/160 = 28.125; away: 25 − 3.125.
    const formula = 'TRIPDRIFT.AXIALEFFECTIVE(20,200,160,-9.5,-10,A1)';
    expect(of(formula, 'toward', 'toward', ' AWAY ')).toEqual([28.125, 21.875]);
    expect(of(formula, 'away', 'neither', '', 7, null)).toEqual(new Array(4).fill('refused'));
    expect(native(formula, { A1: ' Away ' })).toBeDefined();
  });
});

describe('an argument', () => {
  it('that is left out stands for what the function says (by hand)', () => {
    expect(workedOut(native('TRIPDRIFT.EFFECTIVE(5,200,160)')!)).toBe(6.25);
    expect(workedOut(native('TRIPDRIFT.EFFECTIVE(5,200,160,)')!)).toBe(6.25);
    expect(workedOut(native('TRIPDRIFT.EFFECTIVE(5,200,160,3)')!)).toBe(18.75);
    // 6.25 + 0.5·3; 6.25 doubled every 3.
    expect(workedOut(native('TRIPDRIFT.LEVELATTRIP(6.25,3,0.5)')!)).toBe(7.75);
    expect(workedOut(native('TRIPDRIFT.LEVELATTRIP(6.25,3,3,"doubling")')!)).toBe(12.5);
    expect(workedOut(native('TRIPDRIFT.LEVELATTRIP(6.25,3,0.5,"LINEAR")')!)).toBe(7.75);
    // 9000/√3600 = 150 µm.
    expect(workedOut(native('TRIPDRIFT.ZONELIMIT("B/C",3600)')!)).toBe(150);
    expect(workedOut(native('TRIPDRIFT.ZONELIMIT("B/C",3600,"mm")')!)).toBeCloseTo(0.15, 12);
    expect(native('TRIPDRIFT.EFFECTIVE(5,200)')).toBeUndefined();
    expect(native('TRIPDRIFT.EFFECTIVE(,200,160)')).toBeUndefined();
    expect(native('TRIPDRIFT.CONVERTUNIT(5,"mil",)')).toBeUndefined();
    expect(native('TRIPDRIFT.AXIALEFFECTIVE(20,200,160,-10,-10,)')).toBeUndefined();
  });

  it('that others are measured by (by hand: 2·30 to the nearer end; 100·(12 − 4)/16)', () => {
    expect(workedOut(native('TRIPDRIFT.REACH(50,20,90)')!)).toBe(60);
    expect(workedOut(native('TRIPDRIFT.LOOP(12,100)')!)).toBe(50);
  });

  it('that chooses the form by being there (by hand: 5·157/200 = 3.925)', () => {
    expect(workedOut(native('TRIPDRIFT.INTERIMSETPOINT(5,200,157)')!)).toBe(3.925);
    expect(workedOut(native('TRIPDRIFT.INTERIMSETPOINT(5,200,157,0.1)')!)).toBeCloseTo(3.9, 12);
    expect(later('TRIPDRIFT.INTERIMSETPOINT(5,200,157,A1)', { A1: 0.1 }, { A1: 0.5 })).toBe(3.5);
    expect(later('TRIPDRIFT.INTERIMSETPOINT(5,200,157,A1)', { A1: 0.1 }, { A1: 5 })).toBe('refused');
  });

  it('that is a constant has to be one that the function takes', () => {
    for (const constant of [
      '0',
      '-5',
      '1-1',
      '"text"',
      '"5"',
      'TRUE',
      '5-"x"',
      '-(5)',
      '1/0',
      '{5}',
      '{5,6}',
    ])
      expect(native(`TRIPDRIFT.EFFECTIVE(${constant},200,160)`), constant).toBeUndefined();
    for (const constant of ['5', '2+3', '50%*10', '10/2', '-(-5)', '+5', '2.5*(1+1)'])
      expect(
        workedOut(native(`TRIPDRIFT.EFFECTIVE(${constant},200,160)`)!.replace('50%', '0.5')),
        constant,
      ).toBe(6.25);
  });

  it('that is a cell has to hold by now what the function takes in a native form', () => {
    const formula = 'TRIPDRIFT.EFFECTIVE(A1,200,160)';
    expect(native(formula, { A1: 5 })).toBeDefined();
    for (const content of ['5', 'text', '', null]) expect(native(formula, { A1: content })).toBeUndefined();
    expect(native(formula)).toBeUndefined();
    const unit = 'TRIPDRIFT.CONVERTUNIT(5,A1,"um")';
    expect(native(unit, { A1: 'mil' })).toBeUndefined();
    expect(native('TRIPDRIFT.CONVERTUNIT(5,"furlong","um")')).toBeUndefined();
    // A name is what its cell holds, whatever it is called.
    expect(native('TRIPDRIFT.CONVERTUNIT(5,mil,"um")', { mil: 'in' })).toBeUndefined();
    expect(native('TRIPDRIFT.ZONELIMIT("A/B",3600,mil)', { mil: 'mm' })).toBeUndefined();
    expect(native('TRIPDRIFT.CONVERTUNIT(5,7,"um")')).toBeUndefined();
    const choice = 'TRIPDRIFT.LEVELATTRIP(6.25,3,0.5,A1)';
    for (const content of ['neither', 7, null, ['linear', 'doubling']] as const)
      expect(native(choice, { A1: content })).toBeUndefined();
    expect(native('TRIPDRIFT.LEVELATTRIP(6.25,3,0.5,"neither")')).toBeUndefined();
    expect(native('TRIPDRIFT.LEVELATTRIP(6.25,3,0.5,7)')).toBeUndefined();
    expect(native('TRIPDRIFT.LEVELATTRIP(6.25,3,0.5,TRIM("linear"))')).toBeUndefined();
    expect(native(choice)).toBeUndefined();
  });

  it('of a kind that no native formula can read has none', () => {
    expect(native('TRIPDRIFT.VOTED({4,4.3,3.7},2)')).toBeUndefined();
    expect(native('TRIPDRIFT.VERDICT(200,160)')).toBeUndefined();
    expect(native('TRIPDRIFT.EFFECTIVE(5,200,160,1,1)')).toBeUndefined();
  });
});

describe('an argument that is an expression', () => {
  const cells = { A1: 160, B1: 40, 'D1:D2': [100, 60] } as const;
  const measured = (expression: string) => native(`TRIPDRIFT.EFFECTIVE(5,200,${expression})`, cells);

  // Each is 160 by hand, so that the form gives 6.25.
  it.each([
    ['A1*1'],
    ['2*80+A1-A1'],
    ['B1*4'],
    ['-(-A1)'],
    ['SUM(D1:D2)'],
    ['SUM(D1:D2,0)'],
    ['ABS(0-A1)'],
    ['MAX(A1,SUM(D1:D2))'],
    ['IF(A1>100,A1,0)'],
    ['IF(A1<=100,0,A1)'],
    ['IF(A1<>100,A1,0)'],
    ['IF(A1>=100,A1,0)'],
    ['IF(A1=160,A1,0)'],
    ['IF(A1<100,0,A1)'],
    ['ROUND(A1+0.2,0)'],
    ['TRIPDRIFT.EFFECTIVE(A1,B1,B1)'],
    ['ABS(TRIPDRIFT.EFFECTIVE(A1,B1,B1))'],
    ['4^2*10+A1-A1'],
  ])('%s is worked out where it stands', (expression) => {
    expect(workedOut(measured(expression)!, cells)).toBeCloseTo(6.25, 12);
  });

  it.each([
    ['A1%'],
    ['VALUE(A1&"")'],
    ['VLOOKUP(A1,D1:D2,1)'],
    ['MATCH(A1,D1:D2,0)'],
    ['AVERAGE(D1:D2)'],
    ['ROUNDUP(A1,0)'],
    ['IFERROR(A1,#N/A)'],
    ['LOG10(A1)'],
    ['PI()*A1'],
    ['NORM.S.DIST(A1,TRUE)'],
    ['sqrt(A1)'],
    ['COUNTA(D1:D2)+A1'],
    ['MEDIAN(D1:D2)'],
    ['N(A1)'],
    ['SUM(A1,,120)'],
    ['ROUND(A1,)'],
    ['IF(A1>1,A1,)'],
    ['#N/A'],
  ])('%s has one value', (expression) => {
    expect(measured(expression)).toContain(expression.startsWith('sqrt') ? 'sqrt(A1)' : expression);
  });

  it.each([
    ['D1:D2*1'], // several values
    ['A1*D1:D2'],
    ['D1:D2+A1'],
    ['-D1:D2'],
    ['ABS(D1:D2)'],
    ['ABS(A1)+ABS(D1:D2)'],
    ['IF(A1>1,D1:D2,A1)'],
    ['SUM(D1:D2*2)'],
    ['SUM(A1,D1:D2*2)'],
    ['VLOOKUP(D1:D2,D1:D2,1)'],
    ['MATCH(D1:D2,D1:D2,0)'],
    ['MATCH(,D1:D2,0)'],
    ['A1*{1,2}'],
    ['SUM({1,2}*A1)'],
    ['A1*Z9'], // a cell that is not known
    ['ABS(Z9)'],
    ['OFFSET(A1,0,0)'], // functions of which nothing is known
    ['INDEX(D1:D2,1)'],
    ['RANDBETWEEN(A1,2)'],
    ['@A1*1'], // what no other program has
    ['LET(x,A1,x)'],
    ['LAMBDA(x,x)(A1)'],
    ['ABS(LET(x,A1,x))'],
    ['ABS(LAMBDA(x,x))'],
    ['A1*LAMBDA(x,x)(2)'],
    ['TRIPDRIFT.EFFECTIVE(A1,B1,Z9)'], // one of ours without a form
    ['ABS(TRIPDRIFT.EFFECTIVE(A1,B1,Z9))'],
    ['TRIPDRIFT.BAND(A1,B1,B1,0.02)*1'],
    ['D1:D2'],
  ])('%s has no native form', (expression) => {
    expect(measured(expression)).toBeUndefined();
  });

  it('refuses where it comes out wrong', () => {
    expect(later('TRIPDRIFT.EFFECTIVE(5,200,A1-B1)', cells, { A1: 200, B1: 40 })).toBe(6.25);
    expect(later('TRIPDRIFT.EFFECTIVE(5,200,A1-B1)', cells, { A1: 40, B1: 40 })).toBe('refused');
    expect(later('TRIPDRIFT.EFFECTIVE(5,200,A1-B1)', cells, { A1: 1, B1: 40 })).toBe('refused');
  });
});

describe('ranges in an array formula', () => {
  const made = (formula: string, cells: Cells) => native(formula, cells, true);
  const column = { 'A1:A3': [5, 10, 20], 'B1:B3': [1, 2, 3] } as const;

  it('are gone over place by place (by hand)', () => {
    const text = made('TRIPDRIFT.EFFECTIVE(A1:A3,200,160,B1:B3)', column)!;
    const at = (A: Content, B: Content) => workedOut(text, { 'A1:A3': A, 'B1:B3': B });
    expect([at(5, 1), at(10, 2)]).toEqual([6.25, 25]);
    expect([at(0, 1), at(5, 0), at('5', 1), at('text', 1), at(5, null), at(null, 1)]).toEqual(
      new Array(6).fill('refused'),
    );
  });

  it('have a blank place where all of them are blank, one at least being required', () => {
    const text = made('TRIPDRIFT.EFFECTIVE(A1:A3,200,160,B1:B3)', column)!;
    expect(workedOut(text, { 'A1:A3': null, 'B1:B3': null })).toBe('');
    const both = made('TRIPDRIFT.EFFECTIVE(A1:A3,B1:B3,160)', column)!;
    expect(workedOut(both, { 'A1:A3': null, 'B1:B3': null })).toBe('');
    expect(workedOut(both, { 'A1:A3': 5, 'B1:B3': null })).toBe('refused');
    const only = made('TRIPDRIFT.EFFECTIVE(A1:A3,200,160)', column)!;
    expect([workedOut(only, { 'A1:A3': '' }), workedOut(only, { 'A1:A3': 5 })]).toEqual(['', 6.25]);
    // A factor that may be left out: a blank place would be 1.
    const factor = made('TRIPDRIFT.EFFECTIVE(5,200,160,B1:B3)', column)!;
    expect(workedOut(factor, { 'B1:B3': null })).toBe('refused');
    expect(workedOut(factor, { 'B1:B3': 2 })).toBe(12.5);
  });

  it('may hold blanks by now, where the argument is required', () => {
    expect(made('TRIPDRIFT.EFFECTIVE(A1:A3,200,160)', { 'A1:A3': [5, null, 7] })).toBeDefined();
    expect(made('TRIPDRIFT.EFFECTIVE(A1:A3,200,160)', { 'A1:A3': [5, 'text', 7] })).toBeUndefined();
    expect(made('TRIPDRIFT.EFFECTIVE(5,200,160,A1:A3)', { 'A1:A3': [5, null, 7] })).toBeUndefined();
    expect(made('TRIPDRIFT.EFFECTIVE(A1,200,160)', { A1: null })).toBeUndefined();
    expect(native('TRIPDRIFT.EFFECTIVE(A1:A3,200,160)', { 'A1:A3': [5, 6, 7] })).toBeUndefined();
  });

  it('leave a single cell as it is beside them', () => {
    const text = made('TRIPDRIFT.EFFECTIVE(A1:A3,C1,160)', { ...column, C1: 200 })!;
    expect(workedOut(text, { 'A1:A3': 5, C1: 200 })).toBe(6.25);
    expect(workedOut(text, { 'A1:A3': null, C1: 200 })).toBe('');
    expect(workedOut(text, { 'A1:A3': 5, C1: null })).toBe('refused');
  });
});
