import { describe, expect, it } from 'vitest';
import { type CustomFunctionsLike, associateAll } from '../../src/functions/excel/associate.ts';

/** What Excel is to the functions, with codes of our own; `excel.test.ts` calls them through Microsoft's runtime. */
class CellError extends Error {
  readonly code: string;

  constructor(code: never, message?: string) {
    super(message);
    this.code = code;
  }
}

type Run = (...given: unknown[]) => unknown;

function associated(onFirstCall?: () => void): ReadonlyMap<string, Run> {
  const runs = new Map<string, Run>();
  const excel: CustomFunctionsLike = {
    associate: (id, run) => runs.set(id, run),
    Error: CellError,
    ErrorCode: {
      invalidValue: 'value',
      invalidNumber: 'number',
      notAvailable: 'n/a',
      divisionByZero: 'div',
      nullReference: 'null',
    },
  };
  associateAll(excel, onFirstCall);
  return runs;
}

const runs = associated();
const run = (id: string, ...given: unknown[]): unknown => runs.get(id)!(...given);

/** Code and text of what a call throws. */
function thrown(id: string, ...given: unknown[]): string {
  try {
    return `no error: ${JSON.stringify(run(id, ...given))}`;
  } catch (error) {
    if (!(error instanceof CellError)) throw error;
    return `${error.code}: ${error.message}`;
  }
}

describe('a function as Excel calls it', () => {
  it('answers in rows of cells, one as well as many (by hand: 5·200/160)', () => {
    expect(run('EFFECTIVE', [[5]], [[200]], [[160]])).toEqual([[6.25]]);
    expect(run('VERDICT', [[200]], [[160]])).toEqual([['late']]);
    expect(run('EFFECTIVE', [[5, 10]], [[200]], [[160]])).toEqual([[6.25, 12.5]]);
    // 6.25/1.25 and 6.25/0.75.
    expect(run('BAND', [[5]], [[200]], [[160]], [[0.25]])).toEqual([[5, 6.25 / 0.75]]);
  });

  it('gives a cell that it can not use its error, and the others their numbers', () => {
    const [first, [error]] = run('EFFECTIVE', [[5], [0]], [[200]], [[160]]) as [unknown[], unknown[]];
    expect(first).toEqual([6.25]);
    expect(error).toBeInstanceOf(CellError);
    expect(error).toMatchObject({
      code: 'value',
      message: 'Setpoint is zero or blank: enter a number above 0.',
    });
  });

  it('throws an error of the whole call, with its kind and its text', () => {
    expect(thrown('EFFECTIVE', [[0]], [[200]], [[160]])).toBe(
      'value: Setpoint is zero or blank: enter a number above 0.',
    );
    expect(thrown('EFFECTIVE', [[1e308]], [[1e308]], [[1]])).toBe(
      'number: No finite result for these numbers: check their size and units.',
    );
    expect(thrown('VOTED', [['bypassed'], [4]], [[2]])).toBe(
      'n/a: Thresholds: 1 of 2 members can act, 2 needed: the group cannot trip.',
    );
  });

  // ECMA-376 part 1, 18.17.3 has the seven errors; #NAME? and #REF! are none that a custom function of Excel can return.
  it.each([
    ['#VALUE!', 'value: An argument holds #VALUE!: correct that cell.'],
    ['#NUM!', 'number: '],
    ['#N/A', 'n/a: '],
    ['#DIV/0!', 'div: '],
    ['#NULL!', 'null: '],
    ['#NAME?', 'value: An argument holds #NAME?: correct that cell.'],
    ['#REF!', 'value: An argument holds #REF!: correct that cell.'],
  ])('passes %s of a cell on, or says that the cell holds it', (code, error) => {
    expect(thrown('EFFECTIVE', [[5]], [[{ code }]], [[160]])).toBe(error);
  });

  it('keeps the text that comes with an error', () => {
    expect(thrown('EFFECTIVE', [[5]], [[{ code: '#REF!', message: 'sheet deleted' }]], [[160]])).toBe(
      'value: sheet deleted',
    );
  });

  it('that fails unexpectedly says so, in the first 60 characters of why', () => {
    const failing = (why: unknown): unknown =>
      new Proxy([[1], [2]], {
        get(target, key) {
          if (key === '1') throw why;
          return Reflect.get(target, key) as unknown;
        },
      });
    const long = `${'x'.repeat(60)}and more`;
    expect(thrown('EFFECTIVE', failing(new Error(long)), [[200]], [[160]])).toBe(
      `value: Tripdrift failed unexpectedly: ${'x'.repeat(60)}`,
    );
    expect(thrown('EFFECTIVE', failing('a text'), [[200]], [[160]])).toBe(
      'value: Tripdrift failed unexpectedly: ',
    );
  });
});

describe('the first call', () => {
  it('is told once, of whichever function it is, even of one that refuses', () => {
    let told = 0;
    const own = associated(() => told++);
    expect(told).toBe(0);
    expect(() => own.get('VOTED')!([[null]], [[2]])).toThrow(CellError);
    expect(told).toBe(1);
    own.get('VOTED')!([[4]], [[1]]);
    own.get('EFFECTIVE')!([[5]], [[200]], [[160]]);
    expect(told).toBe(1);
  });

  it('needs nobody to hear of it', () => {
    expect(associated().get('VOTED')!([[4]], [[1]])).toEqual([[4]]);
  });
});
