import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/functions/catalogue.ts';
import { label } from '../../src/functions/declare/argument.ts';
import { FunctionError } from '../../src/functions/functionError.ts';
import { runs } from '../seed.ts';
import { call, calls, why } from './call.ts';

/** Sound arguments of each function: those of its example, read by hand. */
const SOUND: Readonly<Record<string, readonly unknown[]>> = {
  EFFECTIVE: [5, 200, 160, 1],
  SHIFT: [5, 200, 160, 1],
  SHIFTFRACTION: [200, 160],
  SENSITIVITYERROR: [200, 160],
  INDICATED: [5, 200, 160],
  ACTUAL: [4, 200, 160],
  INTERIMSETPOINT: [5, 200, 157, 0.1],
  BAND: [5, 200, 160, 0.25, 1],
  VERDICT: [200, 160, 0.05, 0.03],
  PROBABILITYLATER: [5, 6.25, 200, 160, 0.03, 2, 1],
  AXIALEFFECTIVE: [20, 200, 160, -10, -10, 'toward'],
  VOTED: [[[4, 4.3, 3.7]], 2],
  LATEBY: [5, 6.25, 0.5, 'linear'],
  LEVELATTRIP: [6.25, 3, 0.5, 'linear'],
  REACH: [50, 10, 80],
  ZONE: [5, 3600, 'mil'],
  ZONELIMIT: ['B/C', 3600, 'um'],
  CONVERTUNIT: [5, 'mil', 'um'],
  DISPLACEMENT: [4.7, 'mm/s', 60, 'Hz', 'um'],
  LOOP: [12, 20, 4, 20],
  FIT: [[[10, 20, 30, 40]], [[-2, -4.1, -6, -8]], 5, 45],
  INCREMENTAL: [[[10, 20, 30]], [[-2, -4, -6]]],
  DEVIATION: [[[10, 20, 30]], [[-2, -4.1, -6]], 200],
  LINEARRANGE: [[[10, 20, 30]], [[-2, -4, -6]], 200, 0.05, 1, 20],
  GAPAT: [[[10, 20, 30]], [[-2, -4, -6]], -3, 'linear'],
  VOLTSAT: [[[0, 10, 20]], [[-1, -3, -5]], 5, 'monotone'],
  EFFECTIVEONCURVE: [5, 200, [[10, 20, 30]], [[-2, -4, -6]], -4, 1, 'monotone'],
  POINTSTO: [160, 200, -8, -10, 0.05, 0.5],
  SENSITIVITYUNCERTAINTY: [[[3, 4]], [['standard', 'standard']], [[9, 9]], 0.95],
  LIVEVOTE: [2, 3, 1, 'trip'],
  VOTELATER: [1, [[5, 5]], [[200, 200]], [[160, 160]], [[0.01, 0.01]], [[0.01, 0.01]], 6.25, [['a', 'b']], 1],
  VOTEBAND: [1, [[5, 5]], [[200, 200]], [[160, 160]], [[0.01, 0.01]], [[0.01, 0.01]], [['a', 'b']], 1, 2],
  AXIALBAND: [20, 200, 160, -10, -10, 'toward', 0.25, 0.1, 2],
  LOOPEFFECTIVE: [10, 20, 5, 20, 4, 20],
  HYSTERESIS: [[[10, 30, 50, 70, 70, 50, 30, 10]], [[-2, -6, -10, -14, -14, -10, -6.5, -2]]],
  HIGHPASS: [8, 8, 0.625],
  LOWPASS: [750, 1000],
  SENSITIVITYAT: [[[10, 20, 40]], [[158, 181, 194]], 25],
  RUNUPTRIP: [[[1500, 2000, 2500]], [[2, 4.8, 6.4]], [[160, 160, 160]], 4, 200, 1, 1800],
  TRIPTIME: [[[1, 2, 3]], [[3, 5, 5]], 4, 43_200, 86_400, false],
  COMPENSATE: [4, 30, 1, 210, 200, 160, 200],
};

class Invocation {
  get functionName(): string {
    return 'EFFECTIVE';
  }
}

const ARGUMENTS = catalogue.flatMap(({ id, arguments: declared }) =>
  declared.map((argument, index) => ({ id, argument, index, name: `${id} ${argument.name}` })),
);

function withValue(id: string, index: number, value: unknown): unknown {
  return call(id, ...SOUND[id]!.with(index, value));
}

describe.each(ARGUMENTS)('$name', ({ id, argument, index }) => {
  const numeric = argument.kind === 'number';

  it('is refused by name where its cell can’t be used', () => {
    const bad: unknown[] = [true, { type: 'Entity', text: 'x' }, Symbol('x'), 12n, () => 0];
    if (argument.kind === 'switch') bad.shift();
    if (argument.kind !== 'members' && argument.kind !== 'labels')
      bad.push('no such thing', '=1+1', '<b>5</b>', 'x'.repeat(40_000), '5,2');
    if (numeric) bad.push(NaN, Infinity, -Infinity, '0x10', '1_000', '٥');
    for (const value of bad) {
      const result = withValue(id, index, value);
      expect(result).toBeInstanceOf(FunctionError);
      const { code, message } = result as FunctionError;
      expect(['#VALUE!', '#NUM!']).toContain(code);
      expect(message.startsWith(label(argument)), message).toBe(true);
      expect(message.length, message).toBeLessThan(100);
    }
  });

  it('passes an error on as itself, or counts it as a member that cannot act', () => {
    for (const code of ['#VALUE!', '#NUM!', '#N/A', '#DIV/0!', '#NULL!', '#NAME?', '#REF!']) {
      const result = withValue(id, index, { code, message: 'why' });
      if (argument.kind === 'members') expect(why(result)).toMatch(/cannot trip/);
      else expect(why(result)).toBe(`${code} why`);
    }
    if (argument.kind !== 'members')
      expect(why(withValue(id, index, { code: '#SPILL!' }))).toContain('#SPILL!');
  });

  it('left out, blank or replaced by the call itself, takes its default or is asked for', () => {
    const results = [undefined, null, '', '  ', [[null]], [['']], new Invocation()].map((value) =>
      withValue(id, index, value),
    );
    for (const result of results) expect(result).toEqual(results[0]);
    const optional = 'otherwise' in argument;
    if (optional) expect(results[0]).not.toBeInstanceOf(FunctionError);
    else expect(why(results[0])).toMatch(new RegExp(`^#VALUE! ${label(argument)} is blank: (enter|select)`));
    expect(call(id, ...SOUND[id]!.slice(0, index), new Invocation())).toEqual(
      call(id, ...SOUND[id]!.slice(0, index)),
    );
  });

  it('refuses a 0 that may be a blank cell, where 0 has no meaning', () => {
    const meaning = [
      ...['real', 'indicated', 'delay', 'value', 'amplitude', 'gaps', 'out', 'shared', 'own'],
      ...['zeroUncertainty', 'speeds', 'times', 'readings', 'phase', 'runout', 'runoutPhase', 'hold'],
    ];
    const zeroHasMeaning =
      meaning.includes(argument.name) ||
      ['VERDICT uncertainty', 'AXIALBAND uncertainty', 'FIT from', 'VOLTSAT gap'].includes(
        `${id} ${argument.name}`,
      );
    const first = () => [(SOUND[id]![index] as unknown[][])[0]!.with(0, 0)];
    const zero = { members: () => [[0, 4]], series: first, labels: first };
    const { kind } = argument;
    const result = withValue(
      id,
      index,
      kind === 'members' || kind === 'series' || kind === 'labels' ? zero[kind]() : 0,
    );
    if (zeroHasMeaning) expect(result).not.toBeInstanceOf(FunctionError);
    else expect(why(result)).toMatch(/^#VALUE! .* zero or blank/);
  });

  it('never lets a number leave that is not finite', () => {
    if (!numeric) return;
    for (const value of [5e-324, 1e-300, 1e300, Number.MAX_VALUE, -Number.MAX_VALUE, 0.5, -1]) {
      const cells = [withValue(id, index, value)].flat(2);
      for (const cell of cells) {
        if (typeof cell === 'number') expect(Number.isFinite(cell)).toBe(true);
        else
          expect(
            typeof cell === 'string' || (cell instanceof FunctionError && cell.message.length < 100),
          ).toBe(true);
      }
    }
  });

  it('counts a text that is a number in a single cell', () => {
    if (!numeric) return;
    const sound = SOUND[id]![index];
    expect(withValue(id, index, ` ${String(sound)} `)).toEqual(call(id, ...SOUND[id]!));
  });
});

describe('a cell that is no value', () => {
  it('passes on its error and the reason, where it has one', () => {
    expect(call('EFFECTIVE', { code: '#NUM!', message: 'too large' }, 200, 160)).toMatchObject({
      code: '#NUM!',
      message: 'too large',
    });
    expect(call('EFFECTIVE', { code: '#NUM!', message: 7 }, 200, 160)).toMatchObject({ message: '' });
    expect(call('EFFECTIVE', { code: '#NUM!' }, 200, 160)).toMatchObject({ message: '' });
    expect(why(call('EFFECTIVE', { code: `#${'A'.repeat(30)}` }, 200, 160))).toBe(
      `#VALUE! An argument holds the error #${'A'.repeat(19)}: correct that cell.`,
    );
  });

  it('is shown as what it is', () => {
    for (const cell of [{}, { code: 5 }, { code: 'NUM' }])
      expect(why(call('EFFECTIVE', cell, 200, 160))).toBe(
        '#VALUE! Setpoint is a data type: enter a number above 0.',
      );
    expect(why(call('EFFECTIVE', false, 200, 160))).toContain('Setpoint is FALSE:');
    expect(why(call('EFFECTIVE', ' ab ', 200, 160))).toContain('Setpoint is text "ab":');
    expect(why(call('EFFECTIVE', 'a'.repeat(15), 200, 160))).toContain(`text "${'a'.repeat(15)}":`);
    expect(why(call('EFFECTIVE', 'a'.repeat(16), 200, 160))).toContain(`text "${'a'.repeat(14)}…":`);
  });

  it('of a group is a text or an error, nothing else', () => {
    expect(call('VOTED', [['out', { code: '#N/A' }, 4]], 1)).toBe(4);
    expect(why(call('VOTED', [[true, 4]], 1))).toBe(
      '#VALUE! Thresholds has TRUE: enter numbers, or text if it cannot act.',
    );
  });

  it('of a few choices is refused with all of them', () => {
    expect(why(call('LATEBY', 5, 6.25, 0.1, 'quick'))).toBe(
      '#VALUE! Law is text "quick": enter "linear" or "doubling".',
    );
    expect(why(call('ZONELIMIT', 'E/F', 3600))).toBe(
      '#VALUE! Boundary is text "E/F": enter "A/B" or "B/C" or "C/D".',
    );
  });
});

describe('a text that is a number', () => {
  it.each([
    ['5', 5],
    ['+5', 5],
    [' 7. ', 7],
    ['12.25', 12.25],
    ['.25', 0.25],
    ['1e10', 1e10],
    ['2E+1', 20],
    ['125e-2', 1.25],
  ])('%j', (text, value) => {
    expect(call('EFFECTIVE', text, 200, 100)).toBe(2 * value);
  });

  it.each([
    '5x',
    'x5',
    '$5',
    '--5',
    '5 5',
    '1e',
    '1e5.5',
    '1e*5',
    '1,5',
    '0x10',
    '5..',
    'Infinity',
    'e5',
    '.',
  ])('%j is none', (text) => {
    expect(why(call('EFFECTIVE', text, 200, 100))).toContain(`Setpoint is text "${text}"`);
  });

  it('of 400 letters is not looked at', () => {
    expect(call('EFFECTIVE', '5'.padEnd(399), 200, 100)).toBe(10);
    expect(why(call('EFFECTIVE', '5'.padEnd(400), 200, 100))).toContain('Setpoint is text');
  });
});

describe('any call', () => {
  const scalar = fc.oneof(
    fc.double(),
    fc.constantFrom<unknown>(
      5,
      200,
      0.03,
      'mil',
      'um',
      'Hz',
      'toward',
      'linear',
      'A/B',
      '',
      null,
      undefined,
      true,
      '5',
    ),
    fc.anything(),
  );
  const given = fc.oneof(scalar, fc.array(fc.array(scalar, { maxLength: 3 }), { maxLength: 3 }));

  it('answers with finite numbers, texts, and errors that say why; it never throws', () => {
    fc.assert(
      fc.property(fc.constantFrom(...calls.keys()), fc.array(given, { maxLength: 9 }), (id, values) => {
        const result = call(id, ...values);
        const rows = typeof result === 'object' && !(result instanceof FunctionError) ? result : [[result]];
        expect(new Set(rows.map((row) => row.length)).size).toBe(1);
        for (const cell of rows.flat()) {
          if (typeof cell === 'number') expect(Number.isFinite(cell)).toBe(true);
          else if (typeof cell === 'object') expect(cell.code).toMatch(/^#/);
          else expect(typeof cell).toBe('string');
        }
      }),
      { numRuns: runs(3000) },
    );
  });

  it('shows nothing of a cell but short, plain text', () => {
    const message = why(call('EFFECTIVE', 'ab\u202Ecd\u0000\n<script>alert(1)</script>', 200, 160));
    expect(message).toBe('#VALUE! Setpoint is text "ab cd <script>…": enter a number above 0.');
  });
});

describe('detections', () => {
  it('are not mixed up silently', () => {
    expect(why(call('CONVERTUNIT', 5, 'mm/s rms', 'in/s pk'))).toContain('name the same one in both');
    expect(why(call('CONVERTUNIT', 5, 'mm/s', 'in/s pk'))).toBe(
      '#VALUE! To is 0-p, From says none: name the same one in both, or none.',
    );
    expect(call('CONVERTUNIT', 25.4, 'mm/s rms', 'in/s rms')).toBe(1);
    expect(call('CONVERTUNIT', 25.4, 'mm/s rms', 'in/s')).toBe(1);
    expect(why(call('CONVERTUNIT', 5, 'mil', 'mV'))).toContain('units of one kind');
    for (const refused of [call('ZONE', 5, 3600, 'mil 0-p'), call('ZONELIMIT', 'A/B', 3600, 'mil 0-p')])
      expect(why(refused)).toBe('#VALUE! Unit is 0-p: displacement is peak-to-peak here, leave "0-p" out.');
    expect(call('ZONE', 5, 3600, 'mil p-p')).toBe('B');
    expect(why(call('ZONE', 5, 3600, 'mm/s'))).toContain('velocity');
    expect(why(call('DISPLACEMENT', 5, 'mm/s', 60, 'Hz', 'mil rms'))).toContain(
      'To is rms: displacement is peak-to-peak here',
    );
  });
});

describe('contradictions', () => {
  it('are named', () => {
    for (const to of [10, 90])
      expect(why(call('REACH', 50, 90, to))).toBe(
        '#VALUE! From is not below To: enter the smaller end first.',
      );
    expect(why(call('LOOP', 12, 20, 4, 4))).toContain('At100 equals At0');
    expect(why(call('INTERIMSETPOINT', 0.4, 200, 160, 0.5))).toMatch(/^#N\/A Resolution is too coarse/);
    expect(why(call('VOTED', [[4, 5]], 1.5))).toContain('M is 1.5');
    expect(why(call('VOTED', [['out', 4, 5]], 3))).toBe(
      '#N/A Thresholds: 2 of 3 members can act, 3 needed: the group cannot trip.',
    );
    expect(call('REACH', 95, 10, 90)).toBe(0);
  });
});
