import { describe, expect, it } from 'vitest';
import { evaluate, type FormulaPlace } from '../../src/functions/formula/evaluate.ts';
import {
  argumentsOf,
  binary,
  call,
  calledName,
  chain,
  errorLiteral,
  levelsOf,
  literal,
  partsOf,
  replaced,
} from '../../src/functions/formula/nodes.ts';
import { FormulaTooLarge, mostLevels, parseFormula } from '../../src/functions/formula/parse.ts';
import { printed } from '../../src/functions/formula/print.ts';
import { FunctionError } from '../../src/functions/functionError.ts';

const print = (formula: string): string | undefined => printed(parseFormula(formula));

// Which brackets are needed follows from the order of operations in ECMA-376 part 1, 18.17.2.2: % before ^ before * and /
// before + and - before & before comparisons, equals from left to right.
describe('a formula is printed', () => {
  it.each([
    ['=1+2*3', '1+2*3'],
    ['(1+2)*3', '(1+2)*3'],
    ['1+(2*3)', '1+2*3'],
    ['8-(2-1)', '8-(2-1)'],
    ['(8-2)-1', '8-2-1'],
    ['8-2+1', '8-2+1'],
    ['8-(2+1)', '8-(2+1)'],
    ['8/(2*2)', '8/(2*2)'],
    ['8/2*2', '8/2*2'],
    ['8*(2/3)', '8*(2/3)'],
    ['2^(3^2)', '2^(3^2)'],
    ['(2^3)^2', '2^3^2'],
    ['2^(3*2)', '2^(3*2)'],
    ['(2*3)^2', '(2*3)^2'],
    ['2*3^2', '2*3^2'],
    ['(1+2)&3', '1+2&3'],
    ['1+(2&3)', '1+(2&3)'],
    ['(1&2)*3', '(1&2)*3'],
    ['(A1&"x")="y"', 'A1&"x"="y"'],
    ['A1&("x"="y")', 'A1&("x"="y")'],
    ['(1<2)=(3>4)', '1<2=(3>4)'],
    ['(1<=2)+(3>=4)', '(1<=2)+(3>=4)'],
    ['(1<>2)*3', '(1<>2)*3'],
    ['1<>2+3', '1<>2+3'],
    ['1>(2<3)', '1>(2<3)'],
    ['1<=(2>=3)', '1<=(2>=3)'],
    ['-(2)^2', '(-2)^2'],
    ['-A1^2', '(-A1)^2'],
    ['2-(-A1)', '2-(-A1)'],
    ['+A1', '+A1'],
    ['-(A1+2)', '-(A1+2)'],
    ['-(-A1)', '-(-A1)'],
    ['(A1+2)%', '(A1+2)%'],
    ['A1%%', '(A1%)%'],
    ['5%*2', '(5%)*2'],
    ['F(1, , A2)', 'F(1,,A2)'],
    ['F()', 'F()'],
    ['{1,2;3,4}', '{1,2;3,4}'],
    ['"x""y"', '"x""y"'],
    ['#N/A', '#N/A'],
    ["'a b'!$C$4", "'a b'!$C$4"],
  ])('%s as %s', (formula, text) => {
    expect(print(formula)).toBe(text);
  });

  it.each([
    ['@A1'],
    ['A1#'],
    ['LET(x,1,x)'],
    ['LAMBDA(x,x)'],
    ['LAMBDA(x,x)(5)'],
    ['SUM((A1,B2))'],
    ['A1 B2'],
    ['1+@A1'],
    ['@A1+1'],
    ['F(@A1)'],
    ['F(1,@A1,2)'],
    ['-(@A1)'],
    ['(@A1)%'],
  ])('not, as it has no place in every cell: %s', (formula) => {
    expect(print(formula)).toBeUndefined();
  });

  it('with the numbers and texts that were put in', () => {
    expect(printed(binary('-', literal(2), literal(-3)))).toBe('2-(-3)');
    expect(printed(binary('^', literal(-2), literal(2)))).toBe('(-2)^2');
    expect(printed(literal(1e-12))).toBe('1E-12');
    expect(printed(literal(1e21))).toBe('1E+21');
    expect(printed(literal('a "b"'))).toBe('"a ""b"""');
    expect(printed(call('IF', literal(1), errorLiteral('#VALUE!')))).toBe('IF(1,#VALUE!)');
    expect(printed(chain('*', [literal(2), literal(3), literal(4)])!)).toBe('2*3*4');
    expect(printed(chain('-', [literal(2), literal(3), literal(4)])!)).toBe('2-3-4');
    expect(printed(chain('*', [literal(2)])!)).toBe('2');
    expect(chain('*', [])).toBeUndefined();
  });
});

describe('a text is taken apart', () => {
  it('up to 8,192 characters, the most that a cell holds', () => {
    const long = (length: number): string => `="${'x'.repeat(length - 3)}"`;
    expect(printed(parseFormula(long(8192)))).toHaveLength(8191);
    expect(() => parseFormula(long(8193))).toThrow(FormulaTooLarge);
    expect(() => parseFormula(long(8193))).toThrow('longer than 8,192 characters');
  });

  it('up to 200 levels, a chain of operators being one', () => {
    const nested = (levels: number): string => `${'F('.repeat(levels - 1)}1${')'.repeat(levels - 1)}`;
    expect(mostLevels).toBe(200);
    expect(() => parseFormula(nested(200))).not.toThrow();
    expect(() => parseFormula(nested(201))).toThrow('nested more than 200 levels deep');
    expect(() => parseFormula(nested(201))).toThrow(FormulaTooLarge);
    expect(() => parseFormula(`${'1+'.repeat(1000)}1`)).not.toThrow();
  });

  it.each([["'a b'!A1+1"], ["'it''s'!A1"], ["'a:b'!A1"], [`"it's"&A1`], [`T[it''s]`], [`"a""'"&"b'"`]])(
    'with apostrophes that close, or in texts and brackets: %s',
    (formula) => {
      expect(() => parseFormula(formula)).not.toThrow();
    },
  );

  it.each([["'a b"], ["'a b'A1"], ["1+'a'"], ["A1'b"], [`"x"&'a`]])(
    'not with an apostrophe that does not close: %s',
    (formula) => {
      expect(() => parseFormula(formula)).toThrow('an apostrophe does not close');
    },
  );

  it('says where its calls stand', () => {
    expect(parseFormula('F(1)+G(2)')).toMatchObject({ arguments: [{ loc: [0, 4] }, { loc: [5, 9] }] });
  });

  it('throws what the parser says of a text that is no formula', () => {
    expect(() => parseFormula('1+')).toThrow();
    expect(() => parseFormula('1+')).not.toThrow(FormulaTooLarge);
  });
});

describe('the levels of an expression', () => {
  // By hand: a number 1; F( one more; 1+2+3 is (1+2)+3.
  it.each([
    ['1', 1, 1],
    ['F(1)', 2, 2],
    ['1+2', 2, 2],
    ['1+2+3', 2, 3],
    ['1+2+3+4', 2, 4],
    ['1+(2+3)', 3, 3],
    ['F(1+2+3)', 3, 4],
    ['-1+2', 2, 2],
    ['-(A1)+2', 3, 3],
    ['F(1,G(2))', 3, 3],
    ['F(G(2),1)', 3, 3],
    ['{1,2}', 2, 2],
    ['LAMBDA(x,F(x))(5)', 4, 4],
    ['LET(x,F(1),x)', 3, 3],
    ['LET(x,1,F(G(x)))', 4, 4],
    ['F(1)+2', 3, 3],
  ])('%s', (formula, asOne, every) => {
    const tree = parseFormula(formula);
    expect([levelsOf(tree, 'chains as one'), levelsOf(tree, 'every operator')]).toEqual([asOne, every]);
  });
});

describe('an expression', () => {
  it('has parts, in their order', () => {
    const parts = (formula: string) => partsOf(parseFormula(formula)).map((one) => printed(one));
    expect(parts('F(1,,A2)')).toEqual(['1', 'A2']);
    expect(parts('A1-2')).toEqual(['A1', '2']);
    expect(parts('-A1')).toEqual(['A1']);
    expect(parts('{1,2;3,4}')).toEqual(['1', '2', '3', '4']);
    expect(parts('LET(x,1,y,2,A1)')).toEqual(['1', '2', 'A1']);
    expect(parts('LAMBDA(x,A1)')).toEqual(['A1']);
    expect(parts('LAMBDA(x,A1)(5)')).toEqual([undefined, '5']);
    for (const leaf of ['1', '#N/A', 'A1']) expect(parts(leaf)).toEqual([]);
  });

  it('calls a name, in capitals, or what another expression gives', () => {
    const name = (formula: string) => calledName(parseFormula(formula) as Parameters<typeof calledName>[0]);
    expect([name('tripdrift.Effective(1)'), name('LAMBDA(x,x)(5)')]).toEqual([
      'TRIPDRIFT.EFFECTIVE',
      undefined,
    ]);
  });

  it('is replaced wherever its names stand, those left out between commas too', () => {
    const tree = parseFormula('a*F(b,,a)-{1,2}');
    const one = replaced(tree, (name) => (name === 'a' ? literal(7) : undefined));
    expect(printed(one)).toBe('7*F(b,,7)-{1,2}');
    expect(printed(tree)).toBe('a*F(b,,a)-{1,2}');
    expect(argumentsOf(parseFormula('F(1,,2)') as Parameters<typeof argumentsOf>[0])[1]).toBeNull();
  });
});

describe('a formula is worked out in its place', () => {
  const cells = new Map<string, unknown>([
    ['A1', 160],
    ['B1', [[5], [10]]],
    ['C1', ''],
  ]);
  const seen: unknown[] = [];
  const place: FormulaPlace = {
    cellsAt: (reference) => cells.get(reference) ?? 'no cell',
    operand: (value) => {
      seen.push(value);
      return value === '' ? 0 : value;
    },
    beyond: ({ code, message }) => `beyond: ${code} ${message}`,
  };
  const of = (formula: string): unknown => evaluate(parseFormula(formula), place);

  it('from its cells, which operators take as the place does (by hand)', () => {
    expect(of('A1')).toBe(160);
    expect(of('Z9')).toBe('no cell');
    expect(of('A1-60-20')).toBe(80);
    expect(of('A1/4/2')).toBe(20);
    expect(of('2^3^2')).toBe(64);
    expect(of('A1*50%')).toBe(80);
    expect(of('-A1')).toBe(-160);
    expect(of('+A1')).toBe(160);
    expect(of('5+C1')).toBe(5);
    expect(of('C1+5')).toBe(5);
    expect(of('-C1')).toBe(0);
    expect(of('B1*2')).toEqual([[10], [20]]);
    expect(of('{1,2;3,4}')).toEqual([
      [1, 2],
      [3, 4],
    ]);
    expect(of('{1,2}-{1;2}')).toEqual([
      [0, 1],
      [-1, 0],
    ]);
    expect(of('TRIPDRIFT.EFFECTIVE(B1,200,A1)')).toEqual([[6.25], [12.5]]);
  });

  it('where operands of every operator pass the place', () => {
    seen.length = 0;
    of('1+2-3');
    expect(seen).toEqual([1, 2, 3, 3]);
    seen.length = 0;
    of('-A1%');
    expect(seen).toEqual([160, -160]);
  });

  it('with errors as values', () => {
    expect(of('1/0')).toEqual(new FunctionError('#DIV/0!', 'Division by zero.'));
    expect(of('#N/A+1')).toEqual(new FunctionError('#N/A', ''));
    expect(of('TRIPDRIFT.EFFECTIVE(#DIV/0!,200,160)')).toEqual(new FunctionError('#DIV/0!', ''));
    const message = (formula: string): string => (of(formula) as FunctionError).message;
    expect(message('"x"*2')).toMatch(/^Left is text "x"/);
    expect(message('2-"x"')).toMatch(/^Right is text "x"/);
  });

  it.each([
    ['"a"&"b"', '#VALUE! The operator & is not understood here: use + - * / ^ %.'],
    ['1=2', '#VALUE! The operator = is not understood here: use + - * / ^ %.'],
    ['1+(2<3)*0', '#VALUE! Right is text "beyond: #VALUE…'],
    ['@A1', '#VALUE! The operator @ is not understood here: use + - * / ^ %.'],
    ['LET(x,1,x)', '#VALUE! LET and LAMBDA are not understood here: enter their values.'],
    ['LAMBDA(x,x)', '#VALUE! LET and LAMBDA are not understood here: enter their values.'],
    ['LAMBDA(x,x)(5)', '#VALUE! A call needs the name of a function before it.'],
    ['SUM(1,2)', '#NAME? SUM is none of the functions; see --list.'],
    ['effective(5,200,160)', '#NAME? EFFECTIVE is none of the functions; enter TRIPDRIFT.EFFECTIVE.'],
    [`${'N'.repeat(31)}(1)`, `#NAME? ${'N'.repeat(30)} is none of the functions; see --list.`],
  ])('what is not understood there is for it to say: %s', (formula, said) => {
    const result = of(formula);
    if (typeof result === 'string') expect(result).toBe(`beyond: ${said}`);
    else
      expect(`${(result as FunctionError).code} ${(result as FunctionError).message}`).toContain(
        said.slice(0, 20),
      );
  });

  it.each([
    ['TRIPDRIFT.EFFECTIVE(5,200)', 'TRIPDRIFT.EFFECTIVE takes 3 to 4 arguments, not 2: see --list.'],
    ['TRIPDRIFT.EFFECTIVE(5,200,160,1,1)', 'TRIPDRIFT.EFFECTIVE takes 3 to 4 arguments, not 5: see --list.'],
    ['TRIPDRIFT.SHIFTFRACTION(200)', 'TRIPDRIFT.SHIFTFRACTION takes 2 arguments, not 1: see --list.'],
    ['TRIPDRIFT.SHIFTFRACTION(200,160,1)', 'TRIPDRIFT.SHIFTFRACTION takes 2 arguments, not 3: see --list.'],
  ])('calls take as many arguments as they have: %s', (formula, said) => {
    expect(of(formula)).toBe(`beyond: #VALUE! ${said}`);
  });

  it('that is left out stands for what the function says (by hand: 5·200/160)', () => {
    expect(of('TRIPDRIFT.EFFECTIVE(5,200,160,)')).toBe(6.25);
    expect(of('TRIPDRIFT.EFFECTIVE(5,200,160)')).toBe(6.25);
    expect(of('TRIPDRIFT.EFFECTIVE(5,200,160,2)')).toBe(12.5);
  });
});
