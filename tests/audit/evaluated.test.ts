import { describe, expect, it } from 'vitest';
import { Diagnostics } from '../../src/audit/judge/evaluate/diagnostics.ts';
import { kindOfChannel } from '../../src/audit/judge/evaluate/kindOfChannel.ts';
import { timing } from '../../src/audit/judge/evaluate/timing.ts';
import {
  expandedIn,
  gainUncertaintyOf,
  uncertainties,
  uncertaintyOf,
} from '../../src/audit/judge/evaluate/uncertainty.ts';
import { faultLimitsOf, gapVoltageOf, zeroVoltages } from '../../src/audit/judge/evaluate/voltages.ts';
import { zonesOf } from '../../src/audit/judge/evaluate/zones.ts';
import type { Channel } from '../../src/audit/model/channel.ts';
import { parsePolicy } from '../../src/audit/model/policy.ts';
import type { PairedRows } from '../../src/audit/read/pairedRows.ts';
import type { Amount } from '../../src/audit/read/rows/rowReader.ts';
import { parseUnit } from '../../src/units/parse.ts';

const policy = parsePolicy({});
const amount = (value: number, unit?: string): Amount => ({
  value,
  unit: unit === undefined ? null : parseUnit(unit)!,
});

/** Rows with these amounts, all else blank. */
function rows(
  row: object = {},
  settings: object = {},
  contradictions: PairedRows['contradictions'] = [],
): PairedRows {
  return {
    row: { diagnostics: [], kind: null, direction: null, ...row },
    settings: { diagnostics: [], ...settings },
    contradictions,
  } as unknown as PairedRows;
}
const told = ({ all }: Diagnostics) =>
  all.map(({ table, column, rule, invalidates }) => `${rule} ${table} ${column} ${invalidates}`);

describe('times and levels by the present growth (by hand)', () => {
  const day = 86_400;
  const of = (
    channel: Partial<Channel>,
    intended = 5,
    effective: number | null = 6.25,
    reading: number | null = 4,
  ) =>
    timing(
      {
        growthPerDay: null,
        doublingDays: null,
        dangerDelay: day,
        alertDelay: day / 2,
        ...channel,
      } as Channel,
      'danger',
      intended,
      effective,
      reading,
    );
  const nothing = { daysLate: null, daysToGo: null, levelAtTrip: null };

  it('even: 1.25 mil at a quarter a day are 5 days, and a day of delay is a quarter', () => {
    const even = { growthPerDay: 0.25 };
    expect(of(even)).toEqual({ daysLate: 5, daysToGo: 10, levelAtTrip: 6.5, headroom: 2.25 });
    expect(of(even, -5, -6.25, -4)).toEqual({ daysLate: 5, daysToGo: 10, levelAtTrip: -6.5, headroom: 2.25 });
    expect(of(even, 5, 6.25, 7)).toMatchObject({ daysToGo: 1, headroom: -0.75 });
    expect(of(even, 5, 6.25, null)).toEqual({
      daysLate: 5,
      daysToGo: null,
      levelAtTrip: 6.5,
      headroom: null,
    });
    const alert = timing(
      { growthPerDay: 0.25, doublingDays: null, dangerDelay: day, alertDelay: day / 2 } as Channel,
      'alert',
      5,
      6.25,
      4,
    );
    expect([alert.daysToGo, alert.levelAtTrip]).toEqual([9.5, 6.375]);
    expect(of({ ...even, dangerDelay: null }).daysToGo).toBe(9);
  });

  it('doubling in 10 days: half as much is 10 days away', () => {
    const doubling = of({ doublingDays: 10 }, 5, 6.25, 3.125);
    expect(doubling.daysToGo).toBeCloseTo(11, 12);
    expect(doubling.daysLate).toBeCloseTo(10 * Math.log2(1.25), 12);
    expect(doubling.levelAtTrip).toBeCloseTo(6.25 * 2 ** 0.1, 12);
    expect(doubling.headroom).toBe(3.125);
    expect(of({ doublingDays: 10 }, -5, -6.25, -3.125).levelAtTrip).toBeCloseTo(-6.25 * 2 ** 0.1, 12);
    expect(of({ doublingDays: 10 }, 5, 6.25, null).daysToGo).toBeNull();
    expect(of({ doublingDays: 10 }, 5, -1, -2)).toEqual({ ...nothing, headroom: 1 });
  });

  it('are none without a growth, with two of them, or where it does not grow', () => {
    for (const growth of [
      {},
      { growthPerDay: 0.25, doublingDays: 10 },
      { growthPerDay: 0 },
      { growthPerDay: -1 },
    ])
      expect(of(growth)).toEqual({ ...nothing, headroom: 2.25 });
    expect(of({ growthPerDay: 0.25 }, 5, null)).toEqual({ ...nothing, headroom: null });
  });
});

describe('an uncertainty', () => {
  const measured = amount(200, 'mV/mil');
  const at = { given: 2, wanted: 2 };
  const read = (uncertainty: Amount | null, coverage = at, of: Amount | null = measured) => {
    const diagnostics = new Diagnostics(rows());
    const found = uncertaintyOf(uncertainty, of, 'uncertainty', coverage, diagnostics);
    const [one] = diagnostics.all;
    return one ? `${one.rule} ${(one.values as { kind: string }).kind}` : found;
  };

  it('is a part of the sensitivity, from percent or in its unit, at the coverage that is wanted (by hand)', () => {
    expect(read(amount(3, '%'))).toBeCloseTo(0.03, 15);
    expect(read(amount(3))).toBeCloseTo(0.03, 15);
    expect(read(amount(6, 'mV/mil'))).toBeCloseTo(0.03, 15);
    // 6 mV/mil are 0.23622 mV/µm.
    expect(read(amount(6 / 25.4, 'mV/µm'))).toBeCloseTo(0.03, 15);
    expect(read(amount(3, '%'), { given: 3, wanted: 2 })).toBeCloseTo(0.02, 15);
    expect(read(amount(3, '%'), { given: 2, wanted: 3 })).toBeCloseTo(0.045, 15);
    expect([read(null), read(amount(3), at, null)]).toEqual([null, null]);
  });

  it('is refused as a whole or more, and in a unit that does not fit', () => {
    expect(read(amount(100, '%'))).toBe('value-out-of-range uncertainty too large');
    expect(read(amount(99.9, '%'))).toBeCloseTo(0.999, 12);
    expect(read(amount(60, '%'), { given: 1, wanted: 2 })).toBe('value-out-of-range uncertainty too large');
    expect(read(amount(3, 'mV/(mm/s)'))).toBe('value-out-of-range uncertainty not comparable');
    expect(read(amount(3, 'mV/mil'), at, amount(200))).toBeCloseTo(0.03, 15);
  });

  it('that a batch shares is a part of the whole', () => {
    const both = (whole: number | null, shared: number | null) => {
      const diagnostics = new Diagnostics(rows());
      const row = {
        uncertainty: whole === null ? null : amount(whole, '%'),
        sharedUncertainty: shared === null ? null : amount(shared, '%'),
        rowCoverage: null,
      };
      const found = uncertainties(row, measured, at, diagnostics);
      return [found.uncertainty, found.sharedUncertainty, ...told(diagnostics)];
    };
    expect(both(3, 3)).toEqual([0.03, 0.03]);
    expect(both(3, null)).toEqual([0.03, null]);
    expect(both(null, 0)).toEqual([null, 0]);
    const refused = 'value-out-of-range channels sharedUncertainty value';
    expect(both(3, 3.1)).toEqual([0.03, null, refused]);
    expect(both(null, 1)).toEqual([null, null, refused]);
  });

  it('of another quantity is brought to the coverage that is wanted; of a gain it stays below the whole', () => {
    const [percent, stated] = [parseUnit('%')!, { rowCoverage: amount(3) }];
    expect([expandedIn(amount(0.3, '%'), percent, stated, 2), expandedIn(null, percent, stated, 2)]).toEqual([
      expect.closeTo(0.2, 12),
      null,
    ]);
    const gain = (value: number | null, coverage: number | null = null) => {
      const diagnostics = new Diagnostics(rows());
      const found = gainUncertaintyOf(
        { gainUncertainty: value === null ? null : amount(value, '%') },
        { rowCoverage: coverage === null ? null : amount(coverage) },
        2,
        diagnostics,
      );
      return [found, ...told(diagnostics)];
    };
    expect(gain(1)).toEqual([0.01]);
    expect(gain(0)).toEqual([0]);
    expect(gain(null)).toEqual([null]);
    expect(gain(60, 1)).toEqual([null, 'value-out-of-range settings gainUncertainty value']);
    expect(gain(100)).toEqual([null, 'value-out-of-range settings gainUncertainty value']);
  });
});

describe('voltages', () => {
  const volts = (value: number) => amount(value, 'V');
  const zeros = (measured: number | null, configured: number | null, direction: string | null = 'toward') => {
    const { row, settings } = rows(
      { direction, zeroMeasured: measured === null ? null : volts(measured) },
      { zeroConfigured: configured === null ? null : volts(configured) },
    );
    const diagnostics = new Diagnostics(rows());
    const found = zeroVoltages('axial', row, settings, policy, diagnostics);
    return [found.zeroMeasured, found.zeroConfigured, ...told(diagnostics)];
  };

  it('of a zero are both needed, with their sign, and the direction where they differ', () => {
    expect(zeros(-9.7, -10)).toEqual([-9.7, -10]);
    expect(zeros(null, -10)).toEqual([null, -10, 'zero-voltage-missing channels zeroMeasured absent']);
    expect(zeros(-10, null)).toEqual([-10, null, 'zero-voltage-missing settings zeroConfigured absent']);
    expect(zeros(-9.7, -10, null)).toEqual([-9.7, -10, 'direction-missing channels direction absent']);
    expect(zeros(-10, -10, null)).toEqual([-10, -10]);
    expect(zeros(9.7, -10)).toEqual([9.7, -10, 'zero-voltage-positive channels zeroMeasured value']);
    expect(zeros(-10, 10)).toEqual([-10, 10, 'zero-voltage-positive settings zeroConfigured value']);
    expect(zeros(0, 0)).toEqual([0, 0]);
    const { row, settings } = rows({ zeroMeasured: volts(-9.7) }, { zeroConfigured: volts(-10) });
    const none = { zeroConfigured: null, zeroMeasured: null };
    expect(zeroVoltages('radial', row, settings, policy, new Diagnostics(rows()))).toEqual(none);
    expect(zeroVoltages('axial', row, settings, policy, new Diagnostics(rows())).zeroMeasured).toBe(-9.7);
  });

  it('of a gap have their sign, in V', () => {
    const gap = (given: Amount | null, column: 'gapVoltage' | 'asLeftGapVoltage' = 'gapVoltage') => {
      const diagnostics = new Diagnostics(rows());
      const found = gapVoltageOf(given, column, policy, diagnostics);
      return [
        found,
        ...diagnostics.all.map(({ column: at, values }) => `${at} ${(values as { which: string }).which}`),
      ];
    };
    expect([gap(volts(-10)), gap(amount(-9500, 'mV')), gap(amount(-8)), gap(null), gap(volts(0))]).toEqual([
      [-10],
      [-9.5],
      [-8],
      [null],
      [0],
    ]);
    expect(gap(volts(10))).toEqual([null, 'gapVoltage as found']);
    expect(gap(volts(10), 'asLeftGapVoltage')).toEqual([null, 'asLeftGapVoltage as left']);
  });

  it('of fault limits may stand either way round, or one alone', () => {
    const limits = (high: number | null, low: number | null) =>
      faultLimitsOf(
        rows(
          {},
          { faultHigh: high === null ? null : volts(high), faultLow: low === null ? null : volts(low) },
        ).settings,
      );
    const both = { near: -2, far: -18 };
    expect([limits(-2, -18), limits(-18, -2)]).toEqual([both, both]);
    expect([limits(-2, null), limits(null, -18), limits(null, null)]).toEqual([
      { near: -2, far: null },
      { near: null, far: -18 },
      null,
    ]);
  });
});

describe('the kind of a channel that names none', () => {
  const kind = (row: object, settings: object = {}) => {
    const diagnostics = new Diagnostics(rows());
    const found = kindOfChannel(rows(row, settings), diagnostics);
    const [one] = diagnostics.all;
    return one ? [found, one.invalidates, (one.values as { signs: string[] }).signs.join(', ')] : found;
  };

  it('is radial where nothing in it belongs to another, else asked', () => {
    expect(kind({ measured: amount(200, 'mV/mil') }, { danger: amount(5, 'mil') })).toBe('radial');
    expect(kind({ measured: amount(200), kind: 'axial' })).toBe('axial');
    for (const [row, settings, signs] of [
      [{ zeroMeasured: amount(-10) }, {}, 'zero voltage'],
      [{}, { zeroConfigured: amount(-10) }, 'zero voltage'],
      [{ asLeftZero: amount(-10) }, {}, 'zero voltage'],
      [{ zeroUncertainty: amount(0.1) }, {}, 'zero voltage'],
      [{ loopAtZero: amount(4) }, {}, 'loop current'],
      [{ loopAtSpan: amount(20) }, {}, 'loop current'],
      [{ direction: 'away' }, {}, 'positive direction'],
      [{}, { counterAlert: amount(3) }, 'counter setpoint'],
      [{}, { counterDanger: amount(3) }, 'counter setpoint'],
      [{ measured: amount(100, 'mV/(mm/s)') }, {}, 'unit'],
      [{}, { configured: amount(100, 'mV/g') }, 'unit'],
      [{}, { danger: amount(5, 'mm/s') }, 'unit'],
      [{}, { alert: amount(5, 'mm/s') }, 'unit'],
      [{ direction: 'away', loopAtZero: amount(4) }, {}, 'loop current, positive direction'],
    ] as const)
      expect(kind(row, settings)).toEqual([null, 'row', signs]);
  });
});

describe('what is wrong with a channel', () => {
  const wrong = (column: string, invalidates?: 'row' | 'contradiction' | 'absent' | 'nothing') => {
    const diagnostics = new Diagnostics(rows());
    diagnostics.add('channels', column, 'value-missing', { what: column }, invalidates);
    return diagnostics;
  };

  it('keeps its row from being judged where everything hangs on it', () => {
    for (const column of [
      'kind',
      'measured',
      'uncertainty',
      'coverage',
      'configured',
      'alert',
      'danger',
      'counterAlert',
      'counterDanger',
    ]) {
      expect(wrong(column).invalid(false), column).toBe(true);
      expect(wrong(column, 'absent').invalid(false), column).toBe(false);
      expect(wrong(column).blocking('radial')).toHaveLength(1);
    }
    for (const column of ['zeroMeasured', 'zeroConfigured'])
      expect([wrong(column).invalid(true), wrong(column).invalid(false)]).toEqual([true, false]);
    expect([wrong('location', 'row').invalid(false), wrong('location').invalid(true)]).toEqual([true, false]);
  });

  it('leaves its thresholds incomplete where it bears on whether they act, by the kind of the channel', () => {
    const unusable = ['a value that can’t be used'];
    const by = (column: string) =>
      (['radial', 'axial', 'loop', 'velocity', null] as const).filter(
        (kind) => wrong(column).obstacles(kind).length > 0 && wrong(column).blocking(kind).length > 0,
      );
    for (const column of ['limit', 'fullScale', 'multiplier', 'detection', 'gain', 'gainUncertainty'])
      expect(by(column), column).toEqual(['radial', 'axial', 'loop', 'velocity', null]);
    for (const column of ['gapVoltage', 'faultHigh', 'faultLow'])
      expect(by(column), column).toEqual(['radial', 'axial']);
    for (const column of ['direction', 'zeroUncertainty', 'zeroMeasured', 'zeroConfigured'])
      expect(by(column), column).toEqual(['axial']);
    for (const column of ['loopAtZero', 'loopAtZeroUncertainty', 'loopAtSpan', 'loopAtSpanUncertainty'])
      expect(by(column), column).toEqual(['loop']);
    expect(by('speed')).toEqual([]);
    expect(wrong('limit').obstacles('radial')).toEqual(unusable);
    expect(wrong('bypass').obstacles(null)).toEqual(['the bypass mark is not understood']);
    expect(wrong('bypass').blocking(null)).toHaveLength(1);
    expect(wrong('limit', 'nothing').obstacles('radial')).toEqual([]);
    expect(wrong('limit', 'nothing').blocking('radial')).toEqual([]);
    expect(wrong('location', 'contradiction').obstacles(null)).toEqual(['two values contradict each other']);
    expect(
      [wrong('location', 'contradiction'), wrong('location', 'absent')].map(
        (one) => one.blocking(null).length,
      ),
    ).toEqual([1, 1]);
    expect([new Diagnostics(rows()).obstacles(null), new Diagnostics(rows()).blocking(null)]).toEqual([
      [],
      [],
    ]);
  });

  it('is said once of a cell, and a note says nothing against it', () => {
    const diagnostics = new Diagnostics(rows());
    diagnostics.note('channels', 'measured', 'value-missing', { what: 'x' });
    expect(diagnostics.isSaid('measured')).toBe(false);
    diagnostics.missing('channels', 'measured', 'measured sensitivity');
    diagnostics.missing('channels', 'measured', 'measured sensitivity');
    expect(told(diagnostics)).toEqual([
      'value-missing channels measured nothing',
      'value-missing channels measured absent',
    ]);
    expect(diagnostics.invalid(false)).toBe(false);
  });

  it('begins with what was said of its cells and of both tables', () => {
    const said = (severity: string, column: string) => ({
      rule: 'value-missing',
      severity,
      column,
      values: { what: '' },
    });
    const side = (text: string) => ({ text, place: { sheet: 'S', row: 2, column: 'B' } });
    const found = new Diagnostics(
      rows(
        { diagnostics: [said('warning', 'limit'), said('note', 'speed')] },
        { diagnostics: [said('warning', 'alert')] },
        [{ column: 'limit', inChannels: side('5'), inSettings: side('6') }],
      ),
    );
    expect(told(found)).toEqual([
      'value-missing channels limit value',
      'value-missing channels speed nothing',
      'value-missing settings alert value',
      'tables-contradict channels limit contradiction',
    ]);
  });
});

it('zones are of shaft vibration with a speed, in µm peak to peak (by hand)', () => {
  // 4800, 9000, 13200/√3600 = 80, 150, 220 µm: 5 mil are 127, 6.25 mil 158.75.
  const of = (more: object) =>
    zonesOf(
      { kind: 'radial', speed: 3600, unit: parseUnit('mil'), detection: 'p-p', ...more } as Channel,
      5,
      6.25,
    );
  expect(of({})).toEqual({ zone: 'C', intendedZone: 'B' });
  expect(of({ detection: '0-p' })).toEqual({ zone: 'D', intendedZone: 'D' });
  const none = { zone: null, intendedZone: null };
  for (const more of [{ kind: 'axial' }, { speed: null }, { detection: null }])
    expect(of(more)).toEqual(none);
});
