import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { noInputs } from '../../src/audit/judge/channel/inputs.ts';
import { type ChainOverTime, chainOf } from '../../src/audit/judge/replay/chain.ts';
import { channelReplay } from '../../src/audit/judge/replay/channelReplay.ts';
import { replayedChannel } from '../../src/audit/judge/replay/replayedChannel.ts';
import { factorBetween, offsetOf, runningOf } from '../../src/audit/judge/replay/runningChannel.ts';
import { sortedReadings } from '../../src/audit/judge/replay/sortedReadings.ts';
import { defaultPolicy } from '../../src/audit/model/policy.ts';
import type { ChannelResult } from '../../src/audit/model/report.ts';
import { DateCell } from '../../src/cells/cell.ts';
import { book } from './book.ts';
import { now } from './golden.ts';

type Channel = Omit<ChannelResult, 'findings'>;

/** A channel as the report shows it; only what a replay looks at. */
function channel(more: {
  readonly kind?: string;
  readonly sensitivity?: object;
  readonly inputs?: object;
  readonly asFound?: object | null;
  readonly thresholds?: readonly object[];
}): Channel {
  const { kind = 'radial', asFound = null, thresholds = [] } = more;
  return {
    ...{ tag: 'V-1', machine: 'K-1', unit: 'mil', kind, asFound, thresholds },
    sensitivity: { configured: 200, measured: 160, unit: 'mV/mil', ...more.sensitivity },
    inputs: { ...noInputs, ...more.inputs },
  } as unknown as Channel;
}

const found = (measured: number | null, zeroMeasured: number | null = null) => ({
  sensitivity: { configured: 200, measured },
  zeroMeasured,
});
const chain = (of: Channel): ChainOverTime => {
  const known = chainOf(of);
  if (typeof known === 'string') throw new Error(known);
  return known;
};

describe('a chain', () => {
  it('shows what is real by its sensitivities and the gain of its monitor (by hand)', () => {
    const { first, later } = chain(channel({}));
    expect([first.shownAt(5), first.realAt(4), first.measured, later]).toEqual([4, 5, 160, null]);
    const gain = chain(channel({ inputs: { gain: 0.5 } })).first;
    expect([gain.shownAt(5), gain.realAt(2)]).toEqual([2, 5]);
  });

  it('of a position moves with its zero, in the unit of its voltages (by hand)', () => {
    // 0.3 V of 160 mV/mil are 1.875 mil: toward, 4 shown are 5 − 1.875 = 3.125 real.
    const zeros = { zeroConfigured: -10, zeroMeasured: -9.7, unitsPerVolt: 1000 };
    const of = (inputs: object) => chain(channel({ kind: 'axial', inputs: { ...zeros, ...inputs } })).first;
    expect(of({ direction: 'toward' }).realAt(4)).toBeCloseTo(3.125, 12);
    expect(of({ direction: 'toward' }).shownAt(3.125)).toBeCloseTo(4, 12);
    expect(of({ direction: 'away' }).realAt(4)).toBeCloseTo(6.875, 12);
    expect(of({ direction: null, zeroMeasured: -10 }).realAt(4)).toBeCloseTo(5, 12);
    // Sensitivities of 0.2 and 0.16 V/mil, at 1 level a volt.
    const volts = chain(
      channel({
        kind: 'axial',
        sensitivity: { configured: 0.2, measured: 0.16 },
        inputs: { ...zeros, unitsPerVolt: 1, direction: 'toward' },
      }),
    ).first;
    expect(volts.realAt(4)).toBeCloseTo(3.125, 12);
  });

  it('of a loop is read by its measured ends, through the sensor before it (by hand)', () => {
    const loop = { at0: 4.2, at100: 20.2, at0Uncertainty: null, at100Uncertainty: null, span: 20 };
    const own = chain(channel({ kind: 'loop', inputs: { loop: { ...loop, isAll: true } } })).first;
    expect(own.shownAt(8)).toBeCloseTo(8.25, 12);
    expect(own.realAt(8.25)).toBeCloseTo(8, 12);
    const behind = chain(channel({ kind: 'loop', inputs: { loop: { ...loop, isAll: false } } })).first;
    expect(behind.shownAt(10)).toBeCloseTo(8.25, 12);
  });

  it('of a loop whose own sensitivity was corrected is as found before (by hand)', () => {
    // Of 20 at 4 to 20 mA: 10 with 160 of 200 left gives 4 + 16·8/20 = 10.4 mA, which is shown as 8.
    const loop = { at0: 4, at100: 20, at0Uncertainty: null, at100Uncertainty: null, span: 20, isAll: true };
    const { first, later } = chain(
      channel({
        kind: 'loop',
        sensitivity: { measured: 200 },
        asFound: found(160),
        inputs: { loop, calibratedOn: '2026-03-14' },
      }),
    );
    expect(first.shownAt(10)).toBeCloseTo(8, 12);
    expect(later?.chain.shownAt(10)).toBeCloseTo(10, 12);
  });

  it('is not known without a sensitivity, a zero where it counts, or the day of a correction', () => {
    for (const sensitivity of [
      { measured: null },
      { configured: null },
      { measured: 0 },
      { configured: 0 },
      { measured: -1 },
    ])
      expect(chainOf(channel({ sensitivity }))).toBe('no sensitivity');
    const zeros = { zeroConfigured: -10, zeroMeasured: -9.7, unitsPerVolt: 1000, direction: 'toward' };
    for (const inputs of [
      { zeroConfigured: null },
      { zeroMeasured: null },
      { unitsPerVolt: null },
      { direction: null },
    ])
      expect(chainOf(channel({ kind: 'axial', inputs: { ...zeros, ...inputs } }))).toBe('no zero voltage');
    expect(chainOf(channel({ kind: 'axial', inputs: zeros, asFound: found(160) }))).toBe('no zero voltage');
    const corrected = { calibratedOn: '2026-03-14' };
    expect(chainOf(channel({ asFound: found(null), inputs: corrected }))).toBe('no sensitivity');
    expect(chainOf(channel({ asFound: found(150) }))).toBe('no day of the correction');
  });

  it('that was corrected is as found before that day, as left from it on', () => {
    const { first, later } = chain(
      channel({
        sensitivity: { measured: 200 },
        asFound: found(160),
        inputs: { calibratedOn: '2026-03-14' },
      }),
    );
    expect([first.measured, later?.chain.measured]).toEqual([160, 200]);
    expect(later?.from).toBe(Date.UTC(2026, 2, 14) / 86_400_000);
  });
});

describe('a channel of a record', () => {
  const START = Date.UTC(2026, 2, 14, 10);
  const of = channel({
    sensitivity: { measured: 200 },
    asFound: found(160),
    inputs: { calibratedOn: '2026-03-14' },
  });
  function shown(correctedAt: number, offset = 0, apart = 2) {
    const known = chain(of);
    const replay = channelReplay({
      chain: known,
      correctedAt,
      thresholds: [
        { name: 'danger', setpoint: 4, delay: 3 },
        { name: 'alert', setpoint: 3, delay: 1 },
      ],
      maxGap: null,
      between: 'line',
    });
    for (const [at, reading] of [5, NaN, 1].entries()) replay.sample(START + 1000 * apart * at, reading);
    return replayedChannel(of, known, replay.end()!, 'Trend', () => offset);
  }

  it('says by which sensitivity it was read, and from when another one held', () => {
    expect(shown(START - 1)).toMatchObject({ measured: 200, corrected: null });
    expect(shown(START)).toMatchObject({ measured: 200, corrected: null });
    expect(shown(START + 60_000)).toMatchObject({ measured: 160, corrected: null });
    const from = '2026-03-14T10:00:03.000Z';
    expect(shown(START + 3000)).toMatchObject({ measured: 200, corrected: { from, before: 160 } });
    expect(shown(START + 4000)).toMatchObject({ measured: 200, corrected: { before: 160 } });
  });

  it('draws what was real by the sensitivity of its moment', () => {
    expect(shown(START + 4000).timeline).toEqual([
      { seconds: 0, time: '2026-03-14T10:00:00.000Z', shown: 5, real: 6.25 },
      { seconds: 2, time: '2026-03-14T10:00:02.000Z', shown: null, real: null },
      { seconds: 4, time: '2026-03-14T10:00:04.000Z', shown: 1, real: 1 },
    ]);
  });

  it('tells its times by the clock of its table', () => {
    const { first, last } = shown(START, 3_600_000);
    expect([first, last]).toEqual(['2026-03-14T11:00:00.000+01:00', '2026-03-14T11:00:04.000+01:00']);
    expect(shown(START, -12_600_000).first).toBe('2026-03-14T06:30:00.000-03:30');
    expect(shown(START, 0).first).toBe('2026-03-14T10:00:00.000Z');
  });

  it('says where readings come farther apart than the shortest delay', () => {
    expect([shown(START, 0, 2).shortNotSeen, shown(START, 0, 1).shortNotSeen]).toEqual([true, false]);
    expect(shown(START)).toMatchObject({
      unit: 'mil',
      configured: 200,
      sensitivityUnit: 'mV/mil',
      unknown: 1,
    });
  });
});

describe('what is watched', () => {
  const threshold = (name: string, setpoint: number | null, multiplier = 1) => ({
    name,
    setpoint,
    multiplier,
  });
  const inputs = { alertDelay: 3, dangerDelay: 1 };

  it('is each plain setpoint with its delay, those that trip first', () => {
    const thresholds = [
      threshold('alert', 3),
      threshold('danger', 5),
      threshold('danger', 5, 3),
      threshold('counter danger', null),
    ];
    const running = runningOf(channel({ thresholds, inputs }), defaultPolicy.replay, null, () => undefined);
    running?.replay.sample(0, 1);
    const watched = running?.replay.end()?.thresholds.map(({ name, delay }) => `${name} ${delay}`);
    expect(watched).toEqual(['danger 1', 'alert 3']);
  });

  it('is nothing where no setpoint or no chain is known, which is told', () => {
    const told: unknown[] = [];
    const say = (values: unknown) => told.push(values);
    expect(
      runningOf(channel({ thresholds: [threshold('alert', null)] }), defaultPolicy.replay, null, say),
    ).toBeNull();
    expect(
      runningOf(channel({ sensitivity: { measured: null } }), defaultPolicy.replay, null, say),
    ).toBeNull();
    expect(told).toEqual([
      { kind: 'no setpoint', tag: 'V-1' },
      { kind: 'no sensitivity', tag: 'V-1' },
    ]);
  });

  it('was corrected at midnight of the clock of the table', () => {
    const corrected = channel({
      sensitivity: { measured: 200 },
      asFound: found(160),
      inputs: { calibratedOn: '2026-03-14' },
      thresholds: [threshold('danger', 5)],
    });
    const midnight = (zone: string | null) => {
      const running = runningOf(corrected, defaultPolicy.replay, zone, () => undefined);
      running?.replay.sample(0, 1);
      return running?.replay.end()?.correctedAt;
    };
    expect(midnight(null)).toBe(Date.UTC(2026, 2, 14));
    expect(midnight('Europe/Berlin')).toBe(Date.UTC(2026, 2, 13, 23));
    expect([offsetOf(null)(0), offsetOf('+01:00')(0), offsetOf('no zone')(0)]).toEqual([0, 3_600_000, 0]);
  });
});

describe('readings', () => {
  it('are brought to the unit and detection of their channel, or can not be (by hand)', () => {
    expect(factorBetween('µm', 'mil', null)).toBeCloseTo(1 / 25.4, 12);
    expect(factorBetween('mil 0-p', 'mil', 'p-p')).toBe(2);
    expect(factorBetween('mil p-p', 'mil', '0-p')).toBe(0.5);
    expect(factorBetween('mm/s rms', 'mm/s', '0-p')).toBeCloseTo(Math.SQRT2, 12);
    expect(factorBetween('mm/s 0-p', 'mm/s', 'rms')).toBeCloseTo(Math.SQRT1_2, 12);
    expect(factorBetween('mil 0-p', 'mil', null)).toBe(1);
    expect(factorBetween('mil', 'mil', 'p-p')).toBe(1);
    for (const [given, wanted] of [
      ['mm/s', 'mil'],
      ['furlong', 'mil'],
      ['mil', 'furlong'],
      ['mil', null],
    ] as const)
      expect(factorBetween(given, wanted, null)).toBeNull();
  });

  it('that come out of order are sorted, those of one instant as they came, however many there are', () => {
    const sorted = sortedReadings();
    const times = Array.from({ length: 3000 }, (_, at) => (at * 7919) % 1500);
    for (const [at, time] of times.entries()) sorted.add(time, at);
    const each: [number, number][] = [];
    sorted.each((time, reading) => each.push([time, reading]));
    expect(each).toEqual(
      times.map((time, at): [number, number] => [time, at]).toSorted((a, b) => a[0] - b[0] || a[1] - b[1]),
    );
  });
});

describe('recorded readings of several channels', () => {
  // 10 s from 0 to 10 and 10 s at 10, danger 5, delay 1 s; E reaches 4.5 at most, which is beyond 5 in truth.
  const measured = { A: 200, B: 220, C: 195, D: 160, E: 160, F: 160 };
  const time = (seconds: number) => new DateCell(Date.UTC(2025, 5, 1, 10, 0, seconds) / 86_400_000);
  const tags = Object.keys(measured);
  const report = audit(
    book(
      ['Channels', [['Tag', 'Measured sensitivity (mV/mil)'], ...Object.entries(measured)]],
      [
        'Monitor',
        [
          ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Danger delay (s)'],
          ...tags.map((tag) => [tag, 200, 90, 5, 1]),
        ],
      ],
      [
        'Trend',
        [
          ['Time (UTC)', ...tags.map((tag) => `${tag} (mil)`)],
          [time(0), 0, 0, 0, 0, 0, 0],
          [time(10), 10, 10, 10, 10, 4.5, 1],
          [time(20), 10, 10, 10, 10, 4.5, 1],
        ],
      ],
    ),
    { now },
  );

  it('stand with the gravest first, of equals the worse outcome; findings are as grave', () => {
    const outcomes = report.replay?.channels.map(({ tag, thresholds }) => `${tag} ${thresholds[0]?.outcome}`);
    // C is within the tolerance: that it acted late by a little is a note.
    expect(outcomes).toEqual(['E did not act', 'D late', 'C late', 'B early', 'A as set', 'F not reached']);
    const found = report.channels.flatMap(({ tag, findings }) =>
      findings.flatMap(({ rule, severity }) =>
        rule.startsWith('danger-replay') ? [`${tag} ${rule} ${severity}`] : [],
      ),
    );
    expect(found.toSorted()).toEqual([
      'B danger-replay-acted-early note',
      'C danger-replay-acted-late note',
      'D danger-replay-acted-late critical',
      'E danger-replay-did-not-act critical',
    ]);
  });

  it('are told with their source and what was read of it', () => {
    expect(report.replay?.sources).toMatchObject([
      { name: 'Trend', from: 'workbook', layout: 'wide', notRead: [] },
    ]);
    expect(report.replay?.channels.every(({ source }) => source === 'Trend')).toBe(true);
  });
});
