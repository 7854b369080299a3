import { describe, expect, it } from 'vitest';
import { calcCommand } from '../../src/cli/calcProgram.ts';
import { catalogue } from '../../src/functions/catalogue.ts';
import { call, why } from './call.ts';

/**
 * Where the result of the example of each function comes from. "By hand" is arithmetic that is written out;
 * "second-hand" is a standard as others quote it.
 */
const EXAMPLES: Readonly<Record<string, { result: string; source: string }>> = {
  EFFECTIVE: { result: '6.25', source: 'by hand: 5 mil × 200 mV/mil = 1000 mV; 1000/160' },
  SHIFT: { result: '1.25', source: 'by hand: 6.25 − 5' },
  SHIFTFRACTION: { result: '0.25', source: 'by hand: 200/160 = 1.25' },
  SENSITIVITYERROR: { result: '-0.2', source: 'by hand: 160/200 = 0.8' },
  INDICATED: { result: '4', source: 'by hand: 5 × 160 = 800 mV; 800/200' },
  ACTUAL: { result: '5', source: 'by hand: 4 × 200 = 800 mV; 800/160' },
  INTERIMSETPOINT: { result: '3.9', source: 'by hand: 5 × 157/200 = 3.925, down to a step of 0.1' },
  BAND: { result: '5\t8.333333333333334', source: 'by hand: 6.25/1.25 = 5; 6.25/0.75 = 25/3' },
  VERDICT: { result: 'late', source: 'ILAC-G8:09/2019 4.2.2, guard band U: 0.8 + 0.8 × 0.03 < 0.95' },
  PROBABILITYLATER: {
    result: '0.5',
    source: 'by hand: the limit is the effective threshold itself; Φ(0) = 1/2',
  },
  AXIALEFFECTIVE: { result: '25', source: 'by hand: one zero voltage; 20 × 200/160' },
  VOTED: { result: '4', source: 'by hand, order statistic: the second of 3.7, 4, 4.3' },
  LATEBY: { result: '2.5', source: 'by hand: 1.25/0.5' },
  LEVELATTRIP: { result: '7.75', source: 'by hand: 6.25 + 3 × 0.5' },
  REACH: { result: '60', source: 'by hand: 2 × min(50 − 10, 80 − 50)' },
  ZONE: { result: 'B', source: 'ISO 7919-3 second-hand: 127 µm lies between 80 and 150 µm at 3600 r/min' },
  ZONELIMIT: { result: '150', source: 'ISO 7919-3 second-hand: 9000/√3600' },
  CONVERTUNIT: { result: '127', source: 'NIST SP 811 App. B.8: 1 mil = 25.4 µm exactly' },
  DISPLACEMENT: {
    result: '25.3999999784035',
    source: 'arithmetic with 40 digits: 4.7877872 mm/s / (60π Hz)',
  },
  LOOP: { result: '10', source: 'by hand: half of the way from 4 to 20 mA, half of 20' },
  FIT: {
    result: '200\t17.67766952966368\t-1\t0.7745966692414831\t0.9128709291752769\t0.6324555320336757\t4',
    source:
      'JCGM 100:2008 H.3 by hand to 14 digits: slope −256/1280, residuals 0.2, −0.6, 0.6, −0.2; √(0.4/1280), √0.6, 40/√1920, √0.4',
  },
  INCREMENTAL: { result: '200\t150', source: 'by hand: 2 V and 1.5 V over 10 mil' },
  DEVIATION: {
    result: '1.25\t-1.25\t1.25',
    source: 'by hand: offsets from 0.2 V/mil are 0, −0.5, 0 V; midway −0.25 V; 0.25/0.2',
  },
  LINEARRANGE: { result: '10\t30', source: 'by hand: steps of 200, 200 and 100 mV/mil, the last 50 % off' },
  GAPAT: { result: '15', source: 'by hand: half of the way from −2 to −4 V' },
  VOLTSAT: { result: '-3', source: 'by hand: half of the way from 10 to 20 mil' },
  EFFECTIVEONCURVE: {
    result: '20',
    source: 'by hand: 3 V; 10 mil towards at 0.2 V/mil are 2 V, 10 mil away at 0.1 V/mil are 1 V',
  },
  POINTSTO: {
    result:
      'Both are low, consistent with too much cable in the chain: check the extension cable length next.',
    source: 'common practice, no source: both a fifth low',
  },
  SENSITIVITYUNCERTAINTY: {
    result: '2.1547065061200006\t2.093033432222585\t18.99874231426795\t1.0294658809304948',
    source:
      'JCGM 100:2008 G.4.1 (text read): 2.2 %, 2.09, 19.0, 1.03 %; with 40 digits 2.154706506120001, 2.0930334322225850, 18.998742314267953, 1.0294658809304949',
  },
  LIVEVOTE: { result: '1oo2', source: 'by hand: one of two votes is cast already, two members are left' },
  VOTELATER: {
    result: '0.25',
    source: 'by hand: both act at the limit and share nothing; both are late with ½ · ½',
  },
  VOTEBAND: { result: '5\t8.333333333333334', source: 'by hand, as BAND: u 0.125 at k = 2 is U 0.25' },
  AXIALBAND: {
    result: '20\t33.333333333333336',
    source: 'by hand: the zero is exact, so 25/1.25 and 25/0.75',
  },
  LOOPEFFECTIVE: {
    result: '9.333333333333334',
    source: 'by hand: 12 mA at the setpoint; (12 − 5)/(20 − 5) of 20',
  },
  HYSTERESIS: {
    result: '0.5\t6.25\t2.5',
    source: 'by hand: 0.5 V at 30; mean curve −2, −6.25, −10: span 8 V, 0.2 V per unit',
  },
  HIGHPASS: { result: '0.8', source: 'by hand: at the corner 1/(2ζ) = 1/1.25' },
  LOWPASS: { result: '0.8', source: 'by hand: 1/√(1 + 0.75²) = 1/1.25' },
  SENSITIVITYAT: { result: '184.25', source: 'by hand: a quarter of the way from 181 to 194' },
  RUNUPTRIP: {
    result: '2062.5\t1857.142857142857',
    source: 'by hand: 4/0.8 = 5 mil lies 0.2/1.6 of 500 r/min beyond 2000; 4 mil 2/2.8 of 500 beyond 1500',
  },
  TRIPTIME: { result: '2\t2', source: 'by hand: 4 is reached at 1.5 days, 43 200 s are half a day' },
  COMPENSATE: { result: '6\t30', source: 'by hand: 4 × 200/160 = 5 at 30°, less 1 the other way' },
};

describe('examples in the reference', () => {
  it.each(catalogue.map(({ id, example }) => [id, example] as const))('%s', (id, { formula, result }) => {
    expect(EXAMPLES[id]?.result, 'worked out beside the project').toBe(result);
    expect(calcCommand([formula])).toEqual({ out: `${result}\n`, error: '', exitCode: 0 });
  });
});

describe('published figures through the functions', () => {
  it('zone boundaries of shaft vibration (ISO 7919-3, second-hand): 80, 150, 220 µm at 3600 r/min; 48, 90, 132 at 10000', () => {
    const column = [['A/B'], ['B/C'], ['C/D']];
    expect(call('ZONELIMIT', column, 3600)).toEqual([[80], [150], [220]]);
    expect(call('ZONELIMIT', column, 10_000)).toEqual([[48], [90], [132]]);
    expect(call('ZONE', [[80, 80.01, 150, 150.01, 220, 220.01]], 3600)).toEqual([
      ['A', 'B', 'B', 'C', 'C', 'D'],
    ]);
  });

  it('1 mil p-p at 60 Hz is 0.18850 in/s pk and 0.18405 g pk (sinusoid, handbook constants agree within 0.5 %)', () => {
    const fromVelocity = call('DISPLACEMENT', 0.18849555921538758, 'in/s', 3600, 'r/min', 'mil');
    const fromAcceleration = call('DISPLACEMENT', 0.1840540095620035, 'g', 60, 'Hz', 'mil');
    expect(fromVelocity).toBeCloseTo(1, 12);
    expect(fromAcceleration).toBeCloseTo(1, 12);
    expect(call('DISPLACEMENT', 3.3854767988766747, 'mm/s rms', 60)).toBeCloseTo(25.4, 12);
    expect(call('DISPLACEMENT', 2 * 4.7877872040708445, 'mm/s p-p', 60)).toBeCloseTo(25.4, 12);
  });

  it('units (NIST SP 811 App. B.8: the inch and standard gravity are exact)', () => {
    expect(call('CONVERTUNIT', 200, 'mV/mil', 'mV/um')).toBeCloseTo(7.874015748031496, 14);
    expect(call('CONVERTUNIT', 7.874015748031496, 'V/mm', 'mV/mil')).toBeCloseTo(200, 12);
    expect(call('CONVERTUNIT', 1, 'in/s', 'mm/s')).toBe(25.4);
    expect(call('CONVERTUNIT', 1, 'g', 'm/s^2')).toBe(9.80665);
    expect(call('CONVERTUNIT', 100, 'mV/g', 'mV/(m/s²)')).toBeCloseTo(10.197162129779283, 13);
  });

  it('a zero voltage 1 V off moves a position threshold by 1000 mV (by hand: (20 × 200 + 1000)/200 and back)', () => {
    expect(call('AXIALEFFECTIVE', 20, 200, 200, -9, -10, 'toward')).toBe(25);
    expect(call('AXIALEFFECTIVE', 20, 200, 200, -9, -10, 'AWAY')).toBe(15);
    expect(call('AXIALEFFECTIVE', -20, 200, 200, -9, -10, ' Toward ')).toBe(-15);
  });

  it('doubling (by hand: two doublings are four times; one delay of one doubling time is twice)', () => {
    expect(call('LATEBY', 5, 20, 30, 'doubling')).toBe(60);
    expect(call('LEVELATTRIP', 6, 3, 3, 'Doubling')).toBe(12);
  });

  it('verdicts at the limits of 5 % (ILAC-G8:09/2019 4.2.1 and 4.2.2; the tolerance of API 670 from memory)', () => {
    expect(call('VERDICT', 200, [[190, 189.9, 210, 210.1]])).toEqual([['within', 'late', 'within', 'early']]);
    expect(call('VERDICT', 200, 192, 0.05, [[0, 0.005, 0.02]])).toEqual([
      ['within', 'within', 'undetermined'],
    ]);
    expect(call('VERDICT', 200, 170, 0.2)).toBe('within');
  });

  it('coverage and multiplier (by hand: threefold the setpoint; U of 4.2 % at k = 3 is 1.4 %, as 2.8 % at k = 2)', () => {
    expect(call('EFFECTIVE', 5, 200, 160, 3)).toBe(18.75);
    expect(call('SHIFT', 5, 200, 160, 2)).toBe(2.5);
    expect(call('PROBABILITYLATER', 5, 6.3, 200, 160, 0.042, 3)).toBeCloseTo(
      call('PROBABILITYLATER', 5, 6.3, 200, 160, 0.028) as number,
      12,
    );
    expect(call('PROBABILITYLATER', 5, 12.5, 200, 160, 0.03, 2, 2)).toBe(0.5);
  });

  it('one guard band short of the limit leaves 2.275 % (ILAC-G8:09/2019: PFA of a guard band U at k = 2)', () => {
    // The limit is met at 160/0.97 mV/mil less U: Km = 160, m·S·Kc/L = 160 × (1 − 0.03).
    const limit = 1000 / (160 * 0.97);
    expect(call('PROBABILITYLATER', 5, limit, 200, 160, 0.03)).toBeCloseTo(0.02275013194817921, 12);
  });

  it('measured ends of a loop (by hand: (12 − 4.02)/(19.98 − 4.02) = 0.5)', () => {
    expect(call('LOOP', 12, 20, 4.02, 19.98)).toBeCloseTo(10, 12);
    expect(call('LOOP', 3.5, 16)).toBe(-0.5);
  });
});

describe('voting', () => {
  it('takes the M-th smallest of a row, a column or a block (by hand)', () => {
    expect([1, 2, 3].map((m) => call('VOTED', [[4, 4.3, 3.7]], m))).toEqual([3.7, 4, 4.3]);
    expect(call('VOTED', [[4], [4.3], [3.7]], [[1], [2], [3]])).toEqual([[3.7], [4], [4.3]]);
    expect(
      call(
        'VOTED',
        [
          [10, 9],
          [100, 2],
        ],
        2,
      ),
    ).toBe(9);
    expect(call('VOTED', 6.25, 1)).toBe(6.25);
  });

  it('counts text and errors as members that cannot act, and blank cells as none', () => {
    expect(call('VOTED', [['unreachable', 4, { code: '#N/A' }, 5]], 2)).toBe(5);
    expect(call('VOTED', [[4, '', null, 5]], 2)).toBe(5);
    expect(why(call('VOTED', [['bypassed', 4, '']], 2))).toBe(
      '#N/A Thresholds: 1 of 2 members can act, 2 needed: the group cannot trip.',
    );
    expect(why(call('VOTED', [[0, 4]], 1))).toContain('zero or blank');
    expect(why(call('VOTED', [['4.5', 4]], 1))).toContain('enter it as a number');
    expect(why(call('VOTED', [[-4, 4]], 1))).toContain('above 0');
    expect(why(call('VOTED', [[true, 4]], 1))).toContain('TRUE');
  });
});
