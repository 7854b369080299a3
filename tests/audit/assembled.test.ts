import { describe, expect, it } from 'vitest';
import { assemble } from '../../src/audit/judge/evaluate/assemble.ts';
import { Diagnostics } from '../../src/audit/judge/evaluate/diagnostics.ts';
import type { Kind, MeasuredLoop } from '../../src/audit/model/channel.ts';
import { parsePolicy } from '../../src/audit/model/policy.ts';
import type { PairedRows } from '../../src/audit/read/pairedRows.ts';
import type { Amount } from '../../src/audit/read/rows/rowReader.ts';
import type { AssumedUnit } from '../../src/audit/read/rows/units.ts';
import { parseUnit } from '../../src/units/parse.ts';

const of = (value: number, unit?: string): Amount => ({
  value,
  unit: unit === undefined ? null : parseUnit(unit)!,
});

/** A channel of this kind with these amounts over one of 160 and 200 mV/mil, alert 3 and danger 5 mil. */
function assembled(kind: Kind | null, row: object = {}, settings: object = {}) {
  const paired = {
    row: {
      ...{ row: 7, diagnostics: [], direction: null, batch: '', measured: of(160, 'mV/mil') },
      ...{ runoutAmplitude: null, runoutPhase: null, vectorAmplitude: null, vectorPhase: null },
      ...row,
    },
    settings: {
      ...{
        row: 9,
        diagnostics: [],
        group: '',
        voting: '',
        bypass: false,
        detection: null,
        gainUncertainty: null,
      },
      ...{ configured: of(200, 'mV/mil'), alert: of(3, 'mil'), danger: of(5, 'mil') },
      ...settings,
    },
    contradictions: [],
  } as unknown as PairedRows;
  const diagnostics = new Diagnostics(paired);
  const assumed: AssumedUnit[] = [];
  const found = assemble(paired, kind, diagnostics, parsePolicy({}), (one) => assumed.push(one));
  const said = found.diagnostics.map(({ table, column, rule }) => `${rule} ${table} ${column}`);
  return { ...found, said, assumed };
}

const velocity = {
  row: { measured: of(80, 'mV/(mm/s)') },
  settings: { configured: of(100, 'mV/(mm/s)'), alert: of(5, 'mm/s'), danger: of(7, 'mm/s') },
};

describe('a channel in common units (by hand)', () => {
  it('has its levels in the unit of its danger, its sensitivities in that of the configured one', () => {
    const { channel } = assembled(
      'radial',
      {
        measured: of(160 / 25.4, 'mV/µm'),
        limit: of(152.4, 'µm'),
        reading: of(25.4, 'µm'),
        speed: of(60, 'Hz'),
      },
      {
        fullScale: of(254, 'µm'),
        resolution: of(2.54, 'µm'),
        dangerDelay: of(1500, 'ms'),
        multiplier: of(3),
      },
    );
    expect(channel?.measured).toBeCloseTo(160, 10);
    expect(channel?.limit).toBeCloseTo(6, 12);
    expect(channel?.reading).toBeCloseTo(1, 12);
    expect(channel?.fullScale).toBeCloseTo(10, 12);
    expect(channel?.resolution).toBeCloseTo(0.1, 12);
    expect(channel?.speed).toBeCloseTo(3600, 9);
    expect(channel).toMatchObject({
      alert: 3,
      danger: 5,
      dangerDelay: 1.5,
      multiplier: 3,
      detection: 'p-p',
      loop: null,
    });
    expect(assembled('radial').channel).toMatchObject({ multiplier: 1, gain: 1, counterDanger: null });
  });

  it('takes a number without a unit in that of the setpoints, which is told with its row', () => {
    const { channel, assumed } = assembled('radial', { limit: of(6) }, { fullScale: of(10) });
    expect([channel?.limit, channel?.fullScale]).toEqual([6, 10]);
    expect(assumed).toEqual([
      { table: 'settings', column: 'fullScale', unit: 'mil', row: 9 },
      { table: 'channels', column: 'limit', unit: 'mil', row: 7 },
    ]);
  });

  it('grows by so much a day, in whatever unit that is', () => {
    const growth = (amount: Amount) => assembled('radial', { growth: amount }).channel?.growthPerDay;
    expect(growth(of(0.1, 'mil/day'))).toBeCloseTo(0.1, 12);
    expect(growth(of(2.54, 'µm/day'))).toBeCloseTo(0.1, 12);
    expect(growth(of(2.54, 'µm'))).toBeCloseTo(0.1, 12);
    expect(growth(of(0.1))).toBe(0.1);
    const strange = assembled('radial', { growth: of(1, 'mm/s') });
    expect([strange.channel?.growthPerDay, ...strange.said]).toEqual([
      null,
      'unit-does-not-fit channels growth',
    ]);
  });

  it('has a counter setpoint on its other side, where it is a position', () => {
    const counter = { counterAlert: of(15, 'mil'), counterDanger: of(508, 'µm') };
    const position = assembled(
      'axial',
      { zeroMeasured: of(-10, 'V') },
      { ...counter, zeroConfigured: of(-10, 'V') },
    );
    expect(position.channel?.counterAlert).toBe(-15);
    expect(position.channel?.counterDanger).toBeCloseTo(-20, 12);
    expect(position.channel?.detection).toBeNull();
    const radial = assembled('radial', {}, counter);
    expect([radial.channel?.counterDanger, ...radial.said]).toEqual([
      null,
      'counter-setpoint-not-axial settings counterDanger',
    ]);
    expect(assembled('radial', {}, { counterAlert: of(15, 'mil') }).said).toEqual([
      'counter-setpoint-not-axial settings counterAlert',
    ]);
    expect(position.said).toEqual([]);
  });

  it('has a reading below 0 only as a position or a loop', () => {
    const reading = (kind: Kind, more: object = {}) => {
      const { channel, said } = assembled(kind, { reading: of(-2, 'mil'), ...more });
      return [channel?.reading, ...said];
    };
    expect(reading('radial')).toEqual([null, 'value-out-of-range channels reading']);
    expect(reading('axial', { zeroMeasured: of(-10), direction: 'toward' })[0]).toBe(-2);
    expect(reading('loop')).toEqual([-2]);
    expect(assembled('radial', { reading: of(0, 'mil') }).channel?.reading).toBe(0);
  });
});

describe('a detection', () => {
  it('of shaft vibration is peak to peak where nothing says else; levels follow it (by hand)', () => {
    const limit = (row: object, settings: object) => {
      const { channel, said } = assembled('radial', row, settings);
      return [channel?.detection, channel?.limit, channel?.danger, ...said];
    };
    const peak = { danger: of(5, 'mil 0-p'), alert: of(3, 'mil 0-p') };
    expect(limit({ limit: of(12, 'mil p-p') }, peak)).toEqual(['0-p', 6, 5]);
    expect(limit({ limit: of(6, 'mil') }, peak)).toEqual(['0-p', 6, 5]);
    expect(limit({ limit: of(6, 'mil') }, {})).toEqual(['p-p', 6, 5]);
    // The column overrules the header of the setpoints alone, and that they differ is said.
    const contradicted = 'detection-contradicts-header settings detection';
    expect(limit({ limit: of(6, 'mil 0-p') }, { ...peak, detection: 'p-p' })).toEqual([
      'p-p',
      12,
      5,
      contradicted,
    ]);
    // Where the danger is missing, or says nothing, the alert tells.
    expect(limit({}, { danger: null, alert: of(3, 'mil 0-p') })[0]).toBe('0-p');
    expect(limit({}, { alert: of(3, 'mil 0-p') })[0]).toBe('0-p');
  });

  it('of other sensors is taken only as it is stated: a limit in another way is not compared', () => {
    const sensor = (row: object, settings: object = {}) => {
      const { channel, said } = assembled(
        'velocity',
        { ...velocity.row, ...row },
        { ...velocity.settings, ...settings },
      );
      return [channel?.detection, channel?.limit ?? null, channel?.notCompared.join(), ...said];
    };
    const danger = { danger: of(7, 'mm/s rms'), alert: of(5, 'mm/s rms') };
    expect(sensor({ limit: of(8, 'mm/s') })).toEqual([null, 8, '']);
    expect(sensor({ limit: of(8, 'mm/s rms') }, danger)).toEqual(['rms', 8, '']);
    const notSaid = 'detection-not-said channels limit';
    expect(sensor({ limit: of(8, 'mm/s') }, danger)).toEqual(['rms', null, 'limit', notSaid]);
    expect(sensor({ limit: of(8, 'mm/s rms') })).toEqual([null, null, 'limit', notSaid]);
    expect(sensor({ limit: of(8, 'mm/s') }, { detection: 'rms' })).toEqual(['rms', null, 'limit', notSaid]);
    const fullScale = { fullScale: of(20, 'mm/s') };
    expect(sensor({}, { ...danger, ...fullScale })).toEqual([
      'rms',
      null,
      'full scale',
      'detection-not-said settings fullScale',
    ]);
    // The monitor’s own levels are in the detection of its column; a step of its display needs none.
    expect(sensor({}, { detection: 'rms', ...fullScale })).toEqual(['rms', null, '']);
    expect(sensor({}, { ...danger, resolution: of(0.1, 'mm/s') })).toEqual(['rms', null, '']);
    // An alert that says nothing beside a danger that does.
    expect(sensor({}, { danger: of(7, 'mm/s rms') })).toEqual([
      'rms',
      null,
      '',
      'detection-not-said settings alert',
    ]);
    expect(sensor({}, { alert: of(5, 'mm/s rms') })).toEqual([
      null,
      null,
      '',
      'detection-not-said settings alert',
    ]);
  });

  it('of both sensitivities is one', () => {
    const two = (measured: string, configured: string, kind: Kind = 'velocity') =>
      assembled(
        kind,
        { measured: of(80, measured) },
        { ...velocity.settings, configured: of(100, configured) },
      ).said;
    expect(two('mV/(mm/s rms)', 'mV/(mm/s pk)')).toEqual(['unit-does-not-fit channels measured']);
    expect(two('mV/(mm/s rms)', 'mV/(mm/s)')).toEqual(['unit-does-not-fit channels measured']);
    expect(two('mV/(mm/s rms)', 'mV/(mm/s rms)')).toEqual([]);
    // Of shaft vibration the one that is not stated is peak to peak.
    const radial = (measured: string, configured: string) =>
      assembled('radial', { measured: of(160, measured) }, { configured: of(200, configured) }).said;
    expect(radial('mV/mil p-p', 'mV/mil')).toEqual([]);
    expect(radial('mV/mil 0-p', 'mV/mil')).toEqual(['unit-does-not-fit channels measured']);
  });
});

describe('a channel that can not be used', () => {
  it('lacks a unit or has one that does not fit, which is said at its cell', () => {
    const said = (row: object, settings: object = {}, kind: Kind = 'radial') => {
      const { channel, said: all } = assembled(kind, row, settings);
      return [channel === null, ...all];
    };
    expect(said({ measured: of(160) })).toEqual([true, 'unit-missing channels measured']);
    expect(said({}, { configured: of(200) })).toEqual([true, 'unit-missing settings configured']);
    expect(said({}, { danger: of(5), alert: of(3) })).toEqual([true, 'unit-missing settings danger']);
    expect(said({}, { danger: null, alert: of(3) })).toEqual([
      true,
      'value-missing settings danger',
      'unit-missing settings alert',
    ]);
    // One of them names it for both.
    expect(said({}, { danger: of(5) })).toEqual([false]);
    expect(said({ measured: of(160, 'mV/(mm/s)') })).toEqual([true, 'unit-does-not-fit channels measured']);
    expect(said({}, { danger: of(5, 'mm/s') })).toEqual([true, 'unit-does-not-fit settings danger']);
    expect(said({}, {}, 'velocity')).toEqual([true, 'unit-does-not-fit settings configured']);
    expect(said({ limit: of(6, 'mm/s') })).toEqual([false, 'unit-does-not-fit channels limit']);
  });

  it('says what keeps it from being judged', () => {
    const why = (kind: Kind | null, row: object = {}, settings: object = {}) =>
      assembled(kind, row, settings).obstacles;
    expect(why('radial')).toEqual([]);
    expect(why(null)).toEqual(['the kind is not known']);
    expect(why('radial', { measured: null })).toEqual(['a sensitivity is missing']);
    expect(why('radial', {}, { configured: null })).toEqual(['a sensitivity is missing']);
    const volts = { zeroMeasured: of(-9.7, 'V'), direction: 'toward' };
    const zero = { zeroConfigured: of(-10, 'V') };
    expect(why('axial', volts, zero)).toEqual([]);
    expect(why('axial', { ...volts, zeroMeasured: null }, zero)).toEqual([
      'the zero voltage was not measured',
    ]);
    expect(why('axial', volts)).toEqual(['the configured zero voltage is missing']);
    expect(why('axial', { ...volts, direction: null }, zero)).toEqual(['the direction is missing']);
    expect(why('axial', {})).toEqual([
      'the zero voltage was not measured',
      'the configured zero voltage is missing',
    ]);
    expect(why('radial', { limit: of(6, 'mm/s') })).toEqual(['a value that can’t be used']);
    expect(why('axial', { ...volts, limit: of(6, 'mm/s') })).toEqual([
      'a value that can’t be used',
      'the configured zero voltage is missing',
    ]);
  });
});

describe('a slow-roll vector', () => {
  const vectors = (row: object, kind: Kind = 'radial') => {
    const { channel, said } = assembled(kind, row);
    return [channel?.vectors ?? null, ...said];
  };
  const whole = {
    ...{ runoutAmplitude: of(12.7, 'µm'), runoutPhase: of(40) },
    ...{ vectorAmplitude: of(2, 'mil'), vectorPhase: of(100) },
  };

  it('is in the unit of the channel, with the sensitivity it was taken at (by hand)', () => {
    const [found] = vectors({ ...whole, runoutSensitivity: of(200 / 25.4, 'mV/µm') });
    expect(found).toMatchObject({ runoutPhase: 40, now: { amplitude: 2, phase: 100 } });
    expect((found as { runout: number }).runout).toBeCloseTo(0.5, 12);
    expect((found as { measuredThen: number }).measuredThen).toBeCloseTo(200, 9);
    expect(vectors({ ...whole, runoutSensitivity: of(190) })[0]).toMatchObject({ measuredThen: 190 });
    expect(vectors({ ...whole, runoutSensitivity: of(190, 'mV/g') })[0]).toMatchObject({
      measuredThen: null,
    });
    expect(vectors(whole)[0]).toMatchObject({ measuredThen: null });
    expect(vectors({})).toEqual([null]);
    expect(vectors(whole, 'loop')).toEqual([null]);
  });

  it('that is not whole compensates nothing, and what is missing is said', () => {
    const missing = (column: string) => `vector-not-whole channels ${column}`;
    const alone = { runoutAmplitude: of(0.5, 'mil') };
    expect(vectors(alone)).toEqual([{ runout: 0.5, runoutPhase: null, measuredThen: null, now: null }]);
    expect(vectors({ ...whole, runoutAmplitude: null })).toEqual([null, missing('runoutAmplitude')]);
    expect(vectors({ runoutPhase: of(40) })).toEqual([null, missing('runoutAmplitude')]);
    for (const column of ['runoutPhase', 'vectorAmplitude', 'vectorPhase']) {
      const [found, ...said] = vectors({ ...whole, [column]: null });
      expect(found).toMatchObject({ now: null });
      expect(said).toEqual([missing(column)]);
    }
  });
});

describe('the measured ends of a loop', () => {
  const own = { measured: of(0.8, 'mA/(mm/s)') };
  const settings = { configured: of(0.8, 'mA/(mm/s)'), alert: of(5, 'mm/s'), danger: of(7, 'mm/s') };
  const loop = (row: object, more: object = {}) => {
    const { channel, said } = assembled('loop', { ...own, ...row }, { ...settings, ...more });
    return [channel?.loop ?? null, ...said];
  };
  const ends = { loopAtZero: of(4.05, 'mA'), loopAtSpan: of(19.8, 'mA') };
  const notUsed = (column: string) => `loop-ends-not-used channels ${column}`;

  it('span what the configured sensitivity says, or the full scale behind a sensor (by hand)', () => {
    const uncertain = { loopAtZeroUncertainty: of(0.04, 'mA'), loopAtSpanUncertainty: of(0.06, 'mA') };
    const [found, ...said] = loop({ ...ends, ...uncertain, rowCoverage: of(3) });
    expect(found).toMatchObject({ at0: 4.05, at100: 19.8, isAll: true });
    const { span, at0Uncertainty, at100Uncertainty } = found as MeasuredLoop;
    // 16 mA at 0.8 mA/(mm/s) are 20 mm/s; k = 3 is brought to 2.
    expect(span).toBeCloseTo(20, 12);
    expect(at0Uncertainty).toBeCloseTo(0.08 / 3, 12);
    expect(at100Uncertainty).toBeCloseTo(0.04, 12);
    expect(said).toEqual([]);
    // 20.32 mA/(in/s) are 0.8 mA/(mm/s).
    const [inches] = loop(
      { ...ends, measured: of(20.32, 'mA/(in/s)') },
      { configured: of(20.32, 'mA/(in/s)') },
    );
    expect((inches as { span: number }).span).toBeCloseTo(20, 9);
    const sensor = [
      { ...ends, measured: of(95, 'mV/(mm/s)') },
      { configured: of(100, 'mV/(mm/s)') },
    ] as const;
    expect(loop(sensor[0], { ...sensor[1], fullScale: of(25, 'mm/s') })).toEqual([
      { at0: 4.05, at100: 19.8, at0Uncertainty: null, at100Uncertainty: null, span: 25, isAll: false },
    ]);
    expect(loop(...sensor)).toEqual([null, notUsed('loopAtSpan')]);
  });

  it('are both needed, the upper one above the lower, and go with the listed sensitivity', () => {
    expect(loop({})).toEqual([null]);
    expect(loop({ loopAtZero: ends.loopAtZero })).toEqual([null, notUsed('loopAtSpan')]);
    expect(loop({ loopAtSpan: ends.loopAtSpan })).toEqual([null, notUsed('loopAtZero')]);
    const unreadable = { rule: 'value-not-a-number', severity: 'warning', column: 'loopAtZero', values: {} };
    expect(loop({ loopAtSpan: ends.loopAtSpan, diagnostics: [unreadable] })).toEqual([
      null,
      'value-not-a-number channels loopAtZero',
    ]);
    expect(loop({ loopAtZero: of(12, 'mA'), loopAtSpan: of(12, 'mA') })).toEqual([
      null,
      notUsed('loopAtSpan'),
    ]);
    // 0.8·15.75/16 = 0.7875, which 0.7 is off by 11 %.
    expect(loop({ ...ends, measured: of(0.7, 'mA/(mm/s)') }).slice(1)).toEqual([notUsed('loopAtSpan')]);
    expect(loop({ ...ends, measured: of(0.76, 'mA/(mm/s)') }).slice(1)).toEqual([]);
  });
});
