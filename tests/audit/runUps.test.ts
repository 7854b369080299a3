import { describe, expect, it } from 'vitest';
import type { JudgedChannel } from '../../src/audit/judge/channel/context.ts';
import { noInputs } from '../../src/audit/judge/channel/inputs.ts';
import { responseOf } from '../../src/audit/judge/runup/responseOf.ts';
import { runUpBook } from '../../src/audit/judge/runup/runUpBook.ts';
import { runUpChannel } from '../../src/audit/judge/runup/runUpChannel.ts';
import { atRunningSpeed, lateAtSpeed } from '../../src/audit/judge/runup/runningSpeed.ts';
import { parsePolicy } from '../../src/audit/model/policy.ts';
import type { ChannelResult } from '../../src/audit/model/report.ts';
import type { SpeedSeries } from '../../src/audit/read/runup/readRunUps.ts';
import { parseUnit } from '../../src/units/parse.ts';

type Channel = Omit<ChannelResult, 'findings'>;

interface Given {
  readonly tag?: string;
  readonly machine?: string;
  readonly kind?: string;
  readonly sensitivity?: object;
  readonly inputs?: object;
  readonly thresholds?: readonly object[];
}

const threshold = (name: string, setpoint: number | null, more: object = {}) => ({
  ...{ name, setpoint, multiplier: 1, verdict: 'within' },
  ...more,
});

/** A channel as the report shows it, 160 of 200 mV/mil, danger 4; only what a run-up looks at. */
function channel({ tag = 'V-1', machine = 'K-1', kind = 'radial', ...more }: Given = {}): Channel {
  return {
    ...{ tag, machine, kind, unit: 'mil', detection: 'p-p' },
    thresholds: more.thresholds ?? [threshold('danger', 4)],
    sensitivity: { configured: 200, measured: 160, unit: 'mV/mil', ...more.sensitivity },
    inputs: { ...noInputs, ...more.inputs },
  } as unknown as Channel;
}

function series(
  points: readonly (readonly [number, number])[],
  more: Partial<SpeedSeries> = {},
): SpeedSeries {
  return {
    ...{ tag: 'V-1', machine: '', sheet: 'Run-up', row: 2, column: 'C', amplitudes: 'real', unit: null },
    ...{ unknownUnit: null, multiplierSpeed: null, rate: null, sensor: null },
    points: points.map(([speed, value]) => ({ speed, value })),
    ...more,
  };
}

const ramp = [
  [1000, 0],
  [2000, 8],
] as const;
const mvPerMil = parseUnit('mV/mil')!;

describe('the sensitivity against speed', () => {
  const at = (of: Channel, given: SpeedSeries | undefined, speed: number) => {
    const found = responseOf(of, given);
    return typeof found === 'string' ? found : `${found.from}: ${found.at(speed).toFixed(4)}`;
  };

  it('is one, that of the record, or that of the sensor (by hand)', () => {
    expect(at(channel(), undefined, 1500)).toBe('one sensitivity: 160.0000');
    const record = series(
      [
        [1000, 200],
        [2000, 100],
      ],
      { unit: mvPerMil },
    );
    expect(at(channel(), record, 1500)).toBe('record against speed: 150.0000');
    // 200 mV/mil are 200/25.4 mV/µm.
    const metric = channel({ sensitivity: { unit: 'mV/µm' } });
    expect(at(metric, record, 1000)).toBe(`record against speed: ${(200 / 25.4).toFixed(4)}`);
    // At the corner with ζ = 0.5 it is 1; half of it 0.25/√(0.5625 + 0.25) = 0.27735.
    const sensor = { corner: 600, damping: 0.5, measuredAt: 600 };
    expect(at(channel(), series([], { sensor }), 300)).toBe('corner and damping of the sensor: 44.3760');
  });

  it('is not known where a part is missing or a unit does not fit', () => {
    const sensor = { corner: 600, damping: 0.5, measuredAt: 600 };
    const none = channel({ sensitivity: { measured: null } });
    expect(at(none, undefined, 1)).toBe('no sensitivity');
    expect(at(none, series([], { sensor }), 1)).toBe('no sensitivity');
    expect(at(channel(), series([], { sensor: { ...sensor, measuredAt: null } }), 1)).toBe(
      'no measuring frequency',
    );
    for (const unit of [null, parseUnit('mV/(mm/s)')!])
      expect(at(channel(), series(ramp, { unit }), 1)).toBe('unit');
    expect(at(channel({ sensitivity: { unit: null } }), series(ramp, { unit: mvPerMil }), 1)).toBe('unit');
  });
});

describe('at running speed', () => {
  const half = { from: 'record against speed', at: (speed: number) => speed / 10 } as const;
  const running = (given: Given) => atRunningSpeed(channel({ inputs: { speed: 1600 }, ...given }), half);

  it('each plain setpoint acts by the sensitivity there (by hand)', () => {
    const thresholds = [
      threshold('alert', 3),
      threshold('danger', 4),
      threshold('danger', 4, { multiplier: 3 }),
      threshold('counter danger', null),
    ];
    expect(running({ thresholds })?.atSpeed).toEqual({
      ...{ speed: 1600, sensitivity: 160 },
      thresholds: [
        { name: 'alert', effective: 3.75 },
        { name: 'danger', effective: 5 },
      ],
    });
  });

  it('is not known without a speed or a sensitivity there, and not of a position', () => {
    for (const given of [
      { inputs: {} },
      { inputs: { speed: 0 } },
      { sensitivity: { configured: null } },
      { kind: 'axial' },
    ])
      expect(running(given)).toBeNull();
  });

  it('what is within by one sensitivity and late there is said (by hand)', () => {
    const of = (verdict: string, tolerance: number) => {
      const one = channel({
        inputs: { speed: 1600 },
        thresholds: [
          threshold('danger', 4, { multiplier: 3, verdict: 'late' }),
          threshold('danger', 4, { verdict }),
        ],
      });
      return lateAtSpeed(one, atRunningSpeed(one, half)!, parsePolicy({ tolerance })).map(
        ({ rule, severity, values }) =>
          [rule, severity, (values as { effective: number }).effective].join(' '),
      );
    };
    // It acts at 5; 4/0.75 = 5.33, 4/0.85 = 4.71.
    expect(of('within', 0.15)).toEqual(['late-at-running-speed critical 5']);
    expect(of('within', 0.25)).toEqual([]);
    expect(of('late', 0.15)).toEqual([]);
  });
});

describe('a channel on a run-up', () => {
  const one = { from: 'one sensitivity', at: () => 160 } as const;
  const judged = (of: Channel, given: SpeedSeries, factor = 1) => runUpChannel(of, given, one, factor);

  it('shows what is real, or is really what is shown, in the unit of the channel (by hand)', () => {
    const points = (given: SpeedSeries, factor?: number) =>
      judged(channel(), given, factor)?.points.map(({ real, shown }) => [real, shown]);
    expect(points(series(ramp))).toEqual([
      [0, 0],
      [8, 6.4],
    ]);
    expect(points(series(ramp, { amplitudes: 'indicated' }))).toEqual([
      [0, 0],
      [10, 8],
    ]);
    expect(points(series(ramp), 0.5)).toEqual([
      [0, 0],
      [4, 3.2],
    ]);
  });

  it('leaves out speeds at which its sensitivity is not known; of two points there must be two left', () => {
    const upTo = (most: number) =>
      ({ from: 'one sensitivity', at: (speed: number) => (speed > most ? NaN : 160) }) as const;
    const three = series([...ramp, [3000, 9]]);
    expect(runUpChannel(channel(), three, upTo(2500), 1)?.points).toHaveLength(2);
    expect(runUpChannel(channel(), three, upTo(1500), 1)).toBeNull();
    expect(judged(channel(), series(ramp, { amplitudes: null }))).toBeNull();
    expect(judged(channel({ sensitivity: { configured: null } }), series(ramp))).toBeNull();
  });

  it('has each setpoint above 0, those that trip first; multiplied ones below their speed, or both where none is said', () => {
    const thresholds = [
      threshold('alert', 2),
      threshold('danger', 4),
      threshold('danger', 4, { multiplier: 2 }),
      threshold('counter danger', -4),
      threshold('counter alert', null),
    ];
    const of = (more: Partial<SpeedSeries>, inputs: object = {}) =>
      judged(channel({ thresholds, inputs }), series(ramp, more))?.thresholds.map(
        ({ name, multiplier, multiplierSpeed, hold }) => [name, multiplier, multiplierSpeed, hold].join(' '),
      );
    expect(of({})).toEqual(['danger 1  0', 'danger 2  0', 'alert 1  0']);
    expect(of({ multiplierSpeed: 1500 })).toEqual(['danger 2 1500 0', 'alert 1  0']);
    const delays = { alertDelay: 3, dangerDelay: 1 };
    expect(of({ rate: 50 }, delays)).toEqual(['danger 1  50', 'danger 2  50', 'alert 1  150']);
    expect(of({}, delays)?.[0]).toBe('danger 1  0');
  });

  it('acts late, early, for nothing, not at all or as set (by hand)', () => {
    const of = (measured: number, setpoint: number) => {
      const own = channel({ thresholds: [threshold('danger', setpoint)] });
      const response = { from: 'one sensitivity', at: () => measured } as const;
      const [only] = runUpChannel(own, series(ramp), response, 1)?.thresholds ?? [];
      return [only?.outcome, only?.acts, only?.should, only?.realAtTrip];
    };
    // 8 mil in 1000 r/min: 4 real at 1500, shown as 4 where it is 5 real, at 1625, or 3.2, at 1400.
    expect(of(160, 4)).toEqual(['late', 1625, 1500, 5]);
    expect(of(250, 4)).toEqual(['early', 1400, 1500, 3.2]);
    expect(of(200, 4)).toEqual(['as set', 1500, 1500, 4]);
    expect(of(160, 7)).toEqual(['no action', null, 1875, null]);
    expect(of(250, 9)).toEqual(['false', 1900, null, 7.2]);
    expect(of(200, 9)).toEqual(['not reached', null, null, null]);
  });
});

describe('the run-ups of a workbook', () => {
  function judged(given: Given = {}): JudgedChannel {
    const result = channel(given);
    const setpointPlace = () => ({ sheet: 'Monitor', row: 2, column: 'D' });
    return { result, facts: [], ofVerdicts: [], setpointPlace } as unknown as JudgedChannel;
  }
  function book(
    channels: readonly JudgedChannel[],
    runUps: readonly SpeedSeries[],
    responses: readonly SpeedSeries[] = [],
  ) {
    const { runUps: found, problems } = runUpBook(
      { runUps, responses, remarks: [] },
      channels,
      parsePolicy({}),
    );
    return {
      found,
      said: problems.map(({ values }) => values),
      order: found?.channels.map(({ tag }) => tag) ?? [],
    };
  }

  it('are none where there are none', () => {
    expect(book([judged()], []).found).toBeNull();
  });

  it('are of the channel that tag and machine name, or of none, which is said', () => {
    const two = [judged({ machine: 'K-1' }), judged({ machine: 'K-2' })];
    expect(
      book(two, [series(ramp, { machine: ' k-2 ' })]).found?.channels.map(({ machine }) => machine),
    ).toEqual(['K-2']);
    expect(book(two, [series(ramp)]).said).toEqual([{ kind: 'several machines', tag: 'V-1' }]);
    expect(book(two, [series(ramp, { machine: 'K-3' })]).said).toEqual([{ kind: 'no channel', tag: 'V-1' }]);
    expect(book([judged()], [series(ramp, { tag: 'v-1' })]).order).toEqual(['V-1']);
  });

  it('that can not be judged say why', () => {
    const why = (given: Given, more: Partial<SpeedSeries> = {}) =>
      book([judged(given)], [series(ramp, more)]).said;
    const tag = 'V-1';
    expect(why({}, { amplitudes: null })).toEqual([{ kind: 'real or indicated', tag }]);
    expect(why({ kind: 'axial' })).toEqual([{ kind: 'position', tag }]);
    expect(why({ sensitivity: { measured: null } })).toEqual([{ kind: 'no sensitivity', tag }]);
    expect(why({ sensitivity: { configured: null } })).toEqual([{ kind: 'no sensitivity', tag }]);
    expect(why({ thresholds: [threshold('danger', null)] })).toEqual([{ kind: 'no setpoint', tag }]);
    expect(why({ thresholds: [threshold('danger', null), threshold('alert', 3)] })).toEqual([]);
    expect(why({}, { unit: parseUnit('mm/s')! })).toEqual([
      { kind: 'unit', tag, unit: 'mm/s', wanted: 'mil' },
    ]);
    expect(why({}, { unit: parseUnit('µm')! })).toEqual([]);
    const record = series(
      [
        [1000, 160],
        [1800, 160],
      ],
      { unit: mvPerMil },
    );
    const three = series([
      [1000, 0],
      [1500, 4],
      [2000, 8],
    ]);
    expect(book([judged()], [three], [record]).said).toEqual([{ kind: 'beyond the record', tag }]);
    expect(
      book(
        [judged()],
        [series(ramp)],
        [
          series(
            [
              [500, 160],
              [600, 160],
            ],
            { unit: mvPerMil },
          ),
        ],
      ).said,
    ).toEqual([{ kind: 'beyond the record', tag }]);
  });

  it('use the response that is given, or say why not', () => {
    const of = (response: SpeedSeries) => {
      const { found, said } = book([judged()], [series(ramp)], [response]);
      return [found?.channels[0]?.sensitivityFrom, ...said];
    };
    expect(
      of(
        series(
          [
            [0, 160],
            [3000, 160],
          ],
          { unit: mvPerMil },
        ),
      ),
    ).toEqual(['record against speed']);
    expect(of(series([[0, 160]], { unit: parseUnit('mV/g')! }))).toEqual([
      'one sensitivity',
      { kind: 'unit', tag: 'V-1', unit: 'mV/g', wanted: 'mV/mil' },
    ]);
    expect(of(series([], { sensor: { corner: 600, damping: 0.5, measuredAt: null } }))).toEqual([
      'one sensitivity',
      { kind: 'no measuring frequency', tag: 'V-1' },
    ]);
  });

  it('stand with the gravest first, of equals the worse outcome', () => {
    const of = (tag: string, measured: number, verdict = 'late') =>
      judged({ tag, sensitivity: { measured }, thresholds: [threshold('danger', 7, { verdict })] });
    // 7 real at 1875: A as set; B early; C late, a note where it is within; D late; E shows 6.4 at most, no action.
    const channels = [of('A', 200), of('B', 230), of('C', 190, 'within'), of('D', 190), of('E', 160)];
    const { order } = book(
      channels,
      ['A', 'B', 'C', 'D', 'E'].map((tag) => series(ramp, { tag })),
    );
    expect(order).toEqual(['E', 'D', 'C', 'B', 'A']);
    const facts = channels.map(({ ofVerdicts }) =>
      ofVerdicts.map(({ rule, severity }) => `${rule} ${severity}`).join(),
    );
    expect(facts).toEqual([
      '',
      'run-up-early note',
      'run-up-late note',
      'run-up-late critical',
      'run-up-no-action critical',
    ]);
  });

  it('say what a threshold does with its numbers (by hand)', () => {
    const late = judged({ thresholds: [threshold('danger', 4, { verdict: 'late' })] });
    book([late], [series(ramp)]);
    expect(late.ofVerdicts[0]?.values).toMatchObject({
      ...{ source: 'Run-up', setpoint: 4, unit: 'mil', multiplier: 1, multiplierSpeed: null },
      ...{ acts: 1625, should: 1500, realAtTrip: 5 },
    });
    const never = judged({ thresholds: [threshold('danger', 7)] });
    book([never], [series([...ramp, [3000, 1]])]);
    expect(never.ofVerdicts[0]?.values).toMatchObject({
      should: 1875,
      peak: 8,
      peakSpeed: 2000,
      shownAtPeak: 6.4,
    });
    // A multiplied threshold has its own verdict.
    const multiplied = judged({
      thresholds: [threshold('danger', 2), threshold('danger', 2, { multiplier: 2, verdict: 'late' })],
    });
    book([multiplied], [series(ramp)]);
    expect(multiplied.ofVerdicts.map(({ rule, severity }) => `${rule} ${severity}`)).toEqual([
      'run-up-late note',
      'run-up-late critical',
    ]);
  });
});
