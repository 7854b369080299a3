import { describe, expect, it } from 'vitest';
import { calcCommand } from '../../src/cli/calcProgram.ts';
import { UsageRefused } from '../../src/cli/refused.ts';

/** Precedence and associativity: the table in ECMA-376 Part 1, 18.17.2.2, and Excel's unary minus before ^. */
const ARITHMETIC: readonly (readonly [string, string])[] = [
  ['=1+2*3', '7'],
  ['=2^3^2', '64'],
  ['=-2^2', '4'],
  ['=50%*2', '1'],
  ['=(1+2)*3', '9'],
  ['=8/2/2', '2'],
  ['=1e3+1E-3', '1000.001'],
  ['=-(3)', '-3'],
  ['=+(3)', '3'],
  ['=5-+(3)', '2'],
  ['={1,2;3,4}*10', '10\t20\n30\t40'],
  ['={1;2}+{10,20}', '11\t21\n12\t22'],
  ['"a ""quoted"" text"', 'a "quoted" text'],
  ['=TRUE', 'TRUE'],
];

describe('formulas', () => {
  it.each(ARITHMETIC)('%s', (formula, result) => {
    expect(calcCommand([formula])).toEqual({ out: `${result}\n`, error: '', exitCode: 0 });
  });

  it('take functions within functions, arrays, texts and arguments left out between commas', () => {
    const out = (formula: string) => calcCommand([formula]).out.trimEnd();
    expect(out('=TRIPDRIFT.EFFECTIVE({5,10;20,40},200,160,)')).toBe('6.25\t12.5\n25\t50');
    expect(out('tripdrift.effective( 5 , 200 , 160 )')).toBe('6.25');
    expect(out('=TRIPDRIFT.VOTED(TRIPDRIFT.EFFECTIVE({5,6,"out"},200,160),2)')).toBe('7.5');
    expect(out('=TRIPDRIFT.LATEBY(5,TRIPDRIFT.EFFECTIVE(5,200,160),0.5)*24')).toBe('60');
    expect(out('=TRIPDRIFT.DISPLACEMENT(0,"mm/s",60,,"mil")')).toBe('0');
    expect(out('=TRIPDRIFT.EFFECTIVE({"5"},200,160)')).toBe('6.25');
  });

  it('say what is wrong, with exit code 2', () => {
    const error = (formula: string) => {
      const { out, error: said, exitCode } = calcCommand([formula]);
      expect([out, exitCode]).toEqual(['', 2]);
      return said;
    };
    expect(error('=TRIPDRIFT.EFFECTIVE(0,200,160)')).toBe(
      '#VALUE! Setpoint is zero or blank: enter a number above 0.\n',
    );
    expect(error('=TRIPDRIFT.EFFECTIVE(5,200)')).toBe(
      '#VALUE! TRIPDRIFT.EFFECTIVE takes 3 to 4 arguments, not 2: see --list.\n',
    );
    expect(error('=TRIPDRIFT.EFFECTIVE(5,200,160,1,1)')).toContain('takes 3 to 4 arguments, not 5');
    expect(error('=EFFECTIVE(5,200,160)')).toContain(
      '#NAME? EFFECTIVE is none of the functions; enter TRIPDRIFT.EFFECTIVE',
    );
    expect(error('=SUM(1,2)')).toContain('#NAME?');
    expect(error('=TRIPDRIFT.EFFECTIVE(B2,200,160)')).toContain('#REF! There are no cells here');
    expect(error('=1/0')).toBe('#DIV/0! Division by zero.\n');
    expect(error('=(-8)^0.5')).toContain('#NUM!');
    expect(error('="a"&"b"')).toContain('operator &');
    expect(error('=LET(a,1,a)')).toContain('LET');
    expect(error('=#N/A')).toContain('#N/A');
  });

  it('print a bad cell of a column in its place, and its reason', () => {
    expect(calcCommand(['=TRIPDRIFT.EFFECTIVE({5;0},200,160)'])).toEqual({
      out: '6.25\n#VALUE!\n',
      error: 'row 2, column 1: #VALUE! Setpoint is zero or blank: enter a number above 0.\n',
      exitCode: 2,
    });
  });

  it('that are none are refused in one line', () => {
    for (const bad of [
      '=1+',
      '=TRIPDRIFT.EFFECTIVE(5,',
      '=$%',
      '=(1,2)',
      `=${'('.repeat(8000)}`,
      `="${'x'.repeat(9000)}"`,
    ]) {
      expect(() => calcCommand([bad]), bad.slice(0, 30)).toThrow(UsageRefused);
    }
    expect(() => calcCommand([])).toThrow('Give one formula');
    expect(() => calcCommand([' '])).toThrow('Give one formula');
    expect(() => calcCommand(['=1', '=2'])).toThrow('in single quotes');
  });

  it('show no control characters', () => {
    expect(calcCommand(['="a\u001b[31mb"']).out).toBe('a [31mb\n');
  });
});

describe('formulas that no person typed', () => {
  it('are answered or refused in one line', () => {
    // 4,000 ones
    expect(calcCommand([`=${'1+'.repeat(3999)}1`]).out).toBe('4000\n');
    for (const formula of ['=LAMBDA(x,x)(5)', '=SUM(1)(2)', '=(TRIPDRIFT.EFFECTIVE)(5,200,160)']) {
      expect(calcCommand([formula]).error).toBe('#VALUE! A call needs the name of a function before it.\n');
    }
    const refused = (formula: string): string => {
      try {
        return calcCommand([formula]).error;
      } catch (error) {
        if (error instanceof UsageRefused) return error.message;
        throw error;
      }
    };
    expect(refused(`=${'-'.repeat(4000)}1`)).toBe('The formula is nested more than 200 levels deep.');
    expect(refused(`=1${'%'.repeat(4000)}`)).toBe('The formula is nested more than 200 levels deep.');
    expect(refused(`=${'f('.repeat(1000)}1${')'.repeat(1000)}`)).toContain('nested more than 200 levels');
    expect(refused(`=${'1+'.repeat(8000)}1`)).toBe('The formula is longer than 8,192 characters.');
    for (const part of ['(', '{', 'LAMBDA(x,', 'LET(x,1,', "'", '[', '@', '#', '1 ', 'A1:', ',', '!']) {
      expect(refused(`=${part.repeat(8000 / part.length)}`)).toMatch(/^[^\n]{10,200}\n?$/);
    }
  });
});
