import { describe, expect, it } from 'vitest';
import { noInputs } from '../../src/audit/judge/channel/inputs.ts';
import type { JudgedChannel } from '../../src/audit/judge/channel/context.ts';
import { replayBook } from '../../src/audit/judge/replay/replayBook.ts';
import { replayTrend, type TrendReplayed } from '../../src/audit/judge/replay/replayTrends.ts';
import type { PlacedFact } from '../../src/audit/model/findings.ts';
import { parsePolicy, type Policy } from '../../src/audit/model/policy.ts';
import type { ChannelResult } from '../../src/audit/model/report.ts';
import { finish } from '../../src/audit/model/steps.ts';
import { DateCell, type Cell } from '../../src/cells/cell.ts';

type Channel = Omit<ChannelResult, 'findings'>;
type Rows = readonly (readonly Cell[])[];

/** Danger 4 mil with 3 s of delay, on a chain of which 160 of 200 mV/mil are left: 4 mil are shown as 3.2. */
function channel(tag: string, machine = 'K-1', unit: string | null = 'mil', more: object = {}): Channel {
  return {
    ...{ tag, machine, unit, kind: 'radial', detection: 'p-p', asFound: null },
    sensitivity: { configured: 200, measured: 160, unit: 'mV/mil' },
    inputs: { ...noInputs, dangerDelay: 3 },
    thresholds: [{ name: 'danger', setpoint: 4, multiplier: 1 }],
    ...more,
  } as unknown as Channel;
}

function replayed(
  rows: Rows,
  channels: readonly Channel[] = [channel('V-1')],
  policy: Partial<Policy['replay']> = {},
): TrendReplayed {
  const source = { name: 'Trend', from: 'workbook' as const, rows: () => rows };
  return finish(replayTrend(source, channels, parsePolicy({ replay: policy }).replay));
}

/** Seconds after 10:00 on 2026-03-14. */
const START = Date.UTC(2026, 2, 14, 10);
const at = (seconds: number): DateCell => new DateCell((START + 1000 * seconds) / 86_400_000);

/** In a line each: what was found, where, and its values. */
const told = ({ problems }: TrendReplayed): string[] =>
  problems.map(
    ({ rule, severity, sheet, row, column, values }) =>
      `${severity} ${rule} @ ${sheet}!${column}${row} ${JSON.stringify(values)}`,
  );
/** Of each channel that was replayed: when its danger acted and when it should have, s. */
const acted = ({ channels }: TrendReplayed): string[] =>
  channels.map(({ of, result: { thresholds } }) => {
    const [danger] = thresholds;
    const [then, due] = [danger?.acted.proven?.seconds, danger?.should.proven?.seconds];
    return `${of.machine} ${of.tag}: ${danger?.outcome} ${then?.toFixed(9)} ${due?.toFixed(9)}`;
  });

// From 0 to 8 mil in 10 s: 3.2 at 4 s, 4 at 5 s; 3 s later it should have acted, and did.
const late = 'late 8.000000000 7.000000000';

describe('readings of a wide table', () => {
  it('are those of the channels that its headers name', () => {
    const of = replayed(
      [
        ['Time (UTC)', ' v-1 (mil)', 'V-2 (mil)'],
        [at(0), 0, 0],
        [at(10), 8, 1],
        [at(20), 8, 1],
      ],
      [channel('V-1'), channel('V-2')],
    );
    expect(acted(of)).toEqual([`K-1 V-1: ${late}`, 'K-1 V-2: not reached undefined undefined']);
    expect(of.channels[0]?.result.thresholds).toMatchObject([
      {
        acted: { proven: { seconds: 8, time: '2026-03-14T10:00:08.000Z' } },
        should: { proven: { seconds: 7, time: '2026-03-14T10:00:07.000Z' } },
        late: 1,
      },
    ]);
    expect(told(of)).toEqual([]);
    expect(of.source).toEqual({
      ...{ name: 'Trend', from: 'workbook', layout: 'wide', zone: 'UTC' },
      ...{ rows: 3, rowsLeftOut: 0, notRead: [] },
    });
  });

  it('are brought to the unit of their channel: 203.2 µm are 8 mil, 4 mil 0-p 8 p-p', () => {
    const rows = (header: string, top: number): Rows => [
      ['Time (UTC)', header],
      [at(0), 0],
      [at(10), top],
      [at(20), top],
    ];
    for (const [header, top] of [
      ['V-1 (µm)', 203.2],
      ['V-1 (mil 0-p)', 4],
      ['V-1 (mm p-p)', 0.2032],
    ] as const) {
      const of = replayed(rows(header, top));
      expect(of.channels[0]?.result.timeline.at(-1)?.shown).toBeCloseTo(8, 12);
      expect(acted(of)).toEqual([`K-1 V-1: ${late}`]);
    }
  });

  it('in a unit of another kind are not replayed', () => {
    const of = replayed(
      [['Title'], ['Time (UTC)', 'V-1 (mm/s)', 'V-2 (mil)'], [at(0), 0, 1], [at(10), 8, 1]],
      [channel('V-1'), channel('V-2')],
    );
    expect(acted(of)).toEqual(['K-1 V-2: not reached undefined undefined']);
    expect(told(of)).toEqual([
      'warning not-replayed @ Trend!A2 {"kind":"unit","tag":"V-1","unit":"mm/s","wanted":"mil"}',
    ]);
    const none = replayed(
      [
        ['Time (UTC)', 'V-1 (mil)'],
        [at(0), 0],
      ],
      [channel('V-1', 'K-1', null)],
    );
    expect(told(none)).toEqual([
      'warning not-replayed @ Trend!A1 {"kind":"unit","tag":"V-1","unit":"mil","wanted":""}',
    ]);
  });

  it('in a unit that is not known are not replayed: they may be anything', () => {
    const of = replayed([
      ['Time (UTC)', 'V-1 (mil*10)'],
      [at(0), 0],
      [at(10), 80],
    ]);
    expect(told(of)).toEqual([
      'warning not-replayed @ Trend!A1 {"kind":"unit","tag":"V-1","unit":"mil*10","wanted":"mil"}',
    ]);
    expect(of.channels).toEqual([]);
    // What else stands in brackets is no unit.
    expect(
      told(
        replayed([
          ['Time (UTC)', 'V-1 (drive end) (mil)'],
          [at(0), 0],
        ]),
      ),
    ).toEqual([]);
    expect(
      told(
        replayed([
          ['Time (UTC)', 'V-1 (drive end)'],
          [at(0), 0],
        ]),
      ),
    ).toEqual(['note trend-unit-assumed @ Trend!A1 {"names":["V-1"]}']);
  });

  it('without a unit are taken in that of their channel, which is noted once', () => {
    const of = replayed(
      [
        ['Time (UTC)', 'V-1', 'V-2', 'V-3 (mil)'],
        [at(0), 0, 0, 0],
        [at(10), 8, 8, 8],
        [at(20), 8, 8, 8],
      ],
      [channel('V-1'), channel('V-2', 'K-1', 'µm'), channel('V-3')],
    );
    expect(acted(of)).toEqual([`K-1 V-1: ${late}`, `K-1 V-2: ${late}`, `K-1 V-3: ${late}`]);
    expect(told(of)).toEqual(['note trend-unit-assumed @ Trend!A1 {"names":["V-1","V-2"]}']);
  });

  it('of a tag that no channel has are not read, which is said at the first', () => {
    const of = replayed([
      ['Time (UTC)', 'V-1 (mil)', 'TI-7 (%)', 'TI-8 (%)'],
      [at(0), 0, 80, 80],
    ]);
    expect(told(of)).toEqual(['warning trend-columns-not-read @ Trend!C1 {"names":["TI-7","TI-8"]}']);
    expect(of.source?.notRead).toEqual(['TI-7', 'TI-8']);
  });

  it('of a tag that several machines have, or one twice, are nobody’s', () => {
    const rows: Rows = [
      ['Time (UTC)', 'V-1 (mil)'],
      [at(0), 0],
      [at(10), 8],
    ];
    for (const other of ['K-1', 'K-2']) {
      const of = replayed(rows, [channel('V-1'), channel('V-1', other)]);
      expect(of.channels).toEqual([]);
      expect(told(of)).toEqual(['warning not-replayed @ Trend!A1 {"kind":"several machines","tag":"V-1"}']);
      expect(of.source?.notRead).toEqual([]);
    }
  });

  it('of a channel of which a setpoint or a sensitivity is not known can not be replayed', () => {
    const rows: Rows = [
      ['Time (UTC)', 'V-1 (mil)'],
      [at(0), 0],
      [at(10), 8],
    ];
    expect(told(replayed(rows, [channel('V-1', 'K-1', 'mil', { thresholds: [] })]))).toEqual([
      'warning not-replayed @ Trend!A1 {"kind":"no setpoint","tag":"V-1"}',
    ]);
    const sensitivity = { configured: 200, measured: null, unit: 'mV/mil' };
    expect(told(replayed(rows, [channel('V-1', 'K-1', 'mil', { sensitivity })]))).toEqual([
      'warning not-replayed @ Trend!A1 {"kind":"no sensitivity","tag":"V-1"}',
    ]);
  });
});

describe('readings of a long table', () => {
  const header = ['Time (UTC)', 'Machine', 'Tag', 'Reading', 'Unit'] as const;
  const both = [channel('V-1'), channel('V-1', 'K-2', 'µm')];

  it('are those of their machine, each in its own unit', () => {
    const of = replayed(
      [
        header,
        [at(0), 'K-1', 'V-1', 0, 'mil'],
        [at(0), 'k-2 ', 'V-1', 0, 'mil'],
        [at(10), 'K-1', 'V-1', 203.2, 'µm'],
        [at(10), 'K-2', 'V-1', 0.02, 'mil'],
        [at(20), 'K-1', 'V-1', 8, 'mil'],
        [at(20), 'K-2', 'V-1', 0.508, 'µm'],
      ],
      both,
    );
    // Of K-2 at most 0.508 µm.
    expect(acted(of)).toEqual([`K-1 V-1: ${late}`, 'K-2 V-1: not reached undefined undefined']);
    const shown = of.channels.map(({ result }) => result.timeline.map((point) => point.shown?.toFixed(9)));
    expect(shown).toEqual([
      ['0.000000000', '8.000000000', '8.000000000'],
      ['0.000000000', '0.508000000', '0.508000000'],
    ]);
    expect(told(of)).toEqual([]);
    expect(of.source).toMatchObject({ layout: 'long', rows: 6 });
  });

  it('that name no machine are nobody’s where several have the tag', () => {
    const of = replayed(
      [header, [at(0), null, 'V-1', 0, 'mil'], [at(1), 'K-2', 'V-1', 1, 'µm'], [at(2), '', 'V-1', 0, 'mil']],
      both,
    );
    expect(told(of)).toEqual(['warning not-replayed @ Trend!C1 {"kind":"several machines","tag":"V-1"}']);
    expect(of.channels.map(({ of: { machine }, result }) => `${machine} ${result.readings}`)).toEqual([
      'K-2 1',
    ]);
  });

  it('of a machine or tag that no channel has are named with it', () => {
    const of = replayed(
      [
        header,
        [at(0), 'K-9', 'V-1', 0, 'mil'],
        [at(0), null, 'TI-7', 0, '%'],
        [at(0), 'K-1', 'V-1', 0, 'mil'],
        [at(1), 'K-9', 'V-1', 0, 'mil'],
      ],
      both,
    );
    expect(told(of)).toEqual(['warning trend-columns-not-read @ Trend!C1 {"names":["K-9 V-1","TI-7"]}']);
  });

  it('have the unit of their row, else that of the header, whether nothing or a blank text stands there', () => {
    const of = replayed(
      [
        ['Time (UTC)', 'Machine', 'Tag', 'Reading (µm)', 'Unit'],
        [at(0), 'K-1', 'V-1', 0, ''],
        [at(10), 'K-1', 'V-1', 203.2, ' '],
        [at(20), 'K-1', 'V-1', 8, 'mil'],
        [at(30), 'K-1', 'V-1', 203.2, null],
      ],
      both,
    );
    expect(acted(of)).toEqual([`K-1 V-1: ${late}`]);
    expect(of.channels[0]?.result.readings).toBe(4);
    expect(told(of)).toEqual([]);
    const strange = replayed([
      ['Time (UTC)', 'Tag', 'Reading (mil*10)'],
      [at(0), 'V-1', 0],
    ]);
    expect(told(strange)).toEqual([
      'warning not-replayed @ Trend!B1 {"kind":"unit","tag":"V-1","unit":"mil*10","wanted":"mil"}',
    ]);
  });

  it('without a unit are noted in the column of readings', () => {
    const of = replayed([header, [at(0), 'K-1', 'V-1', 0, null], [at(1), 'K-1', 'V-1', 0, null]], both);
    expect(told(of)).toEqual(['note trend-unit-assumed @ Trend!D1 {"names":["V-1"]}']);
  });
});

describe('readings out of order of time', () => {
  const header = ['Time (UTC)', 'V-1 (mil)', 'V-2 (mil)'] as const;
  const channels = [channel('V-1'), channel('V-2')];

  it('give what they give in order', () => {
    const of = replayed([header, [at(20), 8, 1], [at(0), 0, 1], [at(10), 8, 1]], channels);
    expect(acted(of)).toEqual([`K-1 V-1: ${late}`, 'K-1 V-2: not reached undefined undefined']);
    expect(of.channels.map(({ result }) => [result.readings, result.first, result.last])).toEqual([
      [3, '2026-03-14T10:00:00.000Z', '2026-03-14T10:00:20.000Z'],
      [3, '2026-03-14T10:00:00.000Z', '2026-03-14T10:00:20.000Z'],
    ]);
    expect(told(of)).toEqual([]);
  });

  it('are those of their channel alone: others are gone through once', () => {
    const long = ['Time (UTC)', 'Tag', 'Reading (µm)'] as const;
    const of = replayed(
      [
        long,
        [at(0), 'V-1', 0],
        [at(20), 'V-2', 203.2],
        [at(10), 'V-1', 203.2],
        [at(0), 'V-2', 0],
        [at(20), 'V-1', 203.2],
        [at(10), 'V-2', 203.2],
      ],
      channels,
    );
    expect(acted(of)).toEqual([`K-1 V-1: ${late}`, `K-1 V-2: ${late}`]);
    expect(of.channels.map(({ result }) => result.readings)).toEqual([3, 3]);
  });

  it('tell what is wrong with them once, however often they are gone through', () => {
    const of = replayed(
      [
        ['Time (UTC)', 'V-1', 'V-2 (g)', 'TI-7'],
        [at(20), 8, 1, 1],
        [at(0), 'none', 1, 1],
        ['yesterday', 8, 1, 1],
      ],
      channels,
    );
    expect(told(of)).toEqual([
      'warning not-replayed @ Trend!A1 {"kind":"unit","tag":"V-2","unit":"g","wanted":"mil"}',
      expect.stringMatching(/^note trend-readings-unknown @ Trend!B3 /),
      expect.stringMatching(/^warning trend-rows-left-out @ Trend!A4 /),
      'warning trend-columns-not-read @ Trend!D1 {"names":["TI-7"]}',
      'note trend-unit-assumed @ Trend!A1 {"names":["V-1"]}',
    ]);
    expect(of.source).toMatchObject({ rows: 3, rowsLeftOut: 1 });
  });

  it('of one instant are the largest, and stand in order', () => {
    const of = replayed([header, [at(0), 0, 1], [at(10), 8, 1], [at(10), 1, 1], [at(20), 8, 1]], channels);
    expect(acted(of)[0]).toBe(`K-1 V-1: ${late}`);
    expect(of.channels[0]?.result.readings).toBe(3);
  });
});

describe('a table', () => {
  it('that has no header of times, or no row, is none', () => {
    expect(
      replayed([
        ['Tag', 'Reading'],
        ['V-1', 1],
      ]),
    ).toEqual({ source: null, channels: [], problems: [] });
    expect(replayed([])).toEqual({ source: null, channels: [], problems: [] });
  });

  it('in which nothing could be replayed says so, unless it is said why', () => {
    const nothing = 'warning not-replayed @ Trend!A1 {"kind":"no reading","source":"Trend"}';
    expect(told(replayed([['Time (UTC)', 'V-1 (mil)']]))).toEqual([nothing]);
    expect(told(replayed([['Time (UTC)', 'V-1']]))).toEqual([
      'note trend-unit-assumed @ Trend!A1 {"names":["V-1"]}',
      nothing,
    ]);
    expect(
      told(
        replayed([
          ['Time (UTC)', 'TI-7 (%)'],
          [at(0), 1],
        ]),
      ),
    ).toEqual(['warning trend-columns-not-read @ Trend!B1 {"names":["TI-7"]}']);
  });

  it('is told by the clock that its header names, else by that of the policy', () => {
    const first = (header: string, cell: Cell, zone: string | null) => {
      const of = replayed(
        [
          [header, 'V-1 (mil)'],
          [cell, 1],
        ],
        undefined,
        { zone },
      );
      return [of.channels[0]?.result.first, of.source?.zone];
    };
    // Central European Time is an hour ahead of UTC in the middle of March.
    expect(first('Time', at(0), 'Europe/Berlin')).toEqual(['2026-03-14T10:00:00.000+01:00', 'Europe/Berlin']);
    expect(first('Time (UTC)', at(0), 'Europe/Berlin')).toEqual(['2026-03-14T10:00:00.000Z', 'UTC']);
    expect(first('Time (+02:00)', at(0), null)).toEqual(['2026-03-14T10:00:00.000+02:00', '+02:00']);
    // A time that names its offset needs none; it is told by the clock of the policy.
    expect(first('Time', '2026-03-14T10:00:00Z', 'Europe/Berlin')).toEqual([
      '2026-03-14T11:00:00.000+01:00',
      null,
    ]);
    expect(first('Time', '2026-03-14T10:00:00Z', null)).toEqual(['2026-03-14T10:00:00.000Z', null]);
    expect(first('Time', at(0), null)).toEqual([undefined, null]);
  });

  it('has its dates read in the order of the policy, else in that which one of them tells', () => {
    const first = (dates: 'day first' | 'month first' | null, ...days: string[]) => {
      const rows = days.map((day) => [`${day} 10:00`, 1]);
      const of = replayed([['Time (UTC)', 'V-1 (mil)'], ...rows], undefined, { dates });
      return [of.channels[0]?.result.first.slice(0, 10), of.source?.rowsLeftOut];
    };
    expect(first('day first', '03/04/2025')).toEqual(['2025-04-03', 0]);
    expect(first('month first', '03/04/2025')).toEqual(['2025-03-04', 0]);
    expect(first(null, '03/04/2025', '13/04/2025')).toEqual(['2025-04-03', 0]);
    expect(first(null, '03/04/2025', '04/13/2025')).toEqual(['2025-03-04', 0]);
    expect(first(null, '03/04/2025')).toEqual([undefined, 1]);
    // Told by no row: 13 is no month.
    expect(first('month first', '03/04/2025', '13/04/2025')).toEqual(['2025-03-04', 1]);
  });

  it('names the first rows of what is wrong, at their column', () => {
    const of = replayed([
      ['Time (UTC)', 'V-1 (mil)', 'Quality'],
      [at(0), 1, 'good'],
      [at(1), 1, 'bad'],
      [at(2), 'x', 'good'],
      [null, 1, 'good'],
      [at(4), 'y', 'good'],
    ]);
    expect(told(of)).toEqual([
      'note trend-readings-unknown @ Trend!C3 {"rows":[3],"count":1,"text":"bad","fault":"bad quality"}',
      'note trend-readings-unknown @ Trend!B4 {"rows":[4,6],"count":2,"text":"x","fault":"no number"}',
      'warning trend-rows-left-out @ Trend!A5 {"rows":[5],"count":1,"text":"","fault":"blank"}',
    ]);
    expect(of.channels[0]?.result).toMatchObject({ readings: 4, unknown: 3 });
  });
});

describe('what is found of a channel', () => {
  /** Facts added to a channel whose danger has this verdict; an alert and a danger at start-up have others. */
  function foundOf(readings: readonly Cell[], verdict: string, measured = 160) {
    const thresholds = [
      { name: 'alert', setpoint: 90, multiplier: 1, verdict: 'early' },
      { name: 'danger', setpoint: 12, multiplier: 3, verdict: 'unreachable' },
      { name: 'danger', setpoint: 4, multiplier: 1, verdict },
    ];
    const sensitivity = { configured: 200, measured, unit: 'mV/mil' };
    const own = {
      result: channel('V-1', 'K-1', 'mil', { thresholds, sensitivity }),
      setpointPlace: (name: string) => ({ sheet: 'Monitor', row: 2, column: name === 'danger' ? 'D' : 'C' }),
      ofVerdicts: [] as PlacedFact[],
    };
    const rows: Rows = [
      ['Time (UTC)', 'V-1 (mil)'],
      ...readings.map((cell, index) => [at(10 * index), cell]),
    ];
    const source = { name: 'Trend', from: 'workbook' as const, rows: () => rows };
    const judged = [own as unknown as JudgedChannel];
    const { replay, problems } = finish(replayBook([source], judged, parsePolicy({})));
    expect([replay?.channels.length, problems]).toEqual([1, []]);
    return own.ofVerdicts.map(
      ({ rule, severity, threshold, column, values }) =>
        `${severity} ${threshold} ${rule} @ ${column} ${JSON.stringify(values)}`,
    );
  }
  const levels = '"source":"Trend","setpoint":4,"shouldActAt":3.2,"unit":"mil"';

  it('is as grave as its own threshold’s verdict makes it: late within the tolerance is a note', () => {
    const values = `{${levels},"late":1,"acted":"2026-03-14T10:00:08.000Z","should":"2026-03-14T10:00:07.000Z"}`;
    expect(foundOf([0, 8, 8], 'late')).toEqual([`critical danger replay-acted-late @ D ${values}`]);
    expect(foundOf([0, 8, 8], 'within')).toEqual([`note danger replay-acted-late @ D ${values}`]);
  });

  it('tells what should have been, what was too early, and what is not known', () => {
    // 3.5 shown is 4.375 real, from the start.
    expect(foundOf([3.5, 3.5], 'late')).toEqual([
      `critical danger replay-did-not-act @ D {${levels},"should":"2026-03-14T10:00:03.000Z"}`,
    ]);
    // Of 250 mV/mil 4 real is 5 shown: at 6.25 s, and acted at 8 s.
    expect(foundOf([0, 8, 8], 'early', 250)).toEqual([
      `note danger replay-acted-early @ D {${levels.replace('3.2', '5')},"acted":"2026-03-14T10:00:08.000Z"}`,
    ]);
    // Beyond 3.2 from the start; at 4 at last.
    expect(foundOf([3.5, 3.5, 4], 'late')).toEqual([
      `warning danger replay-not-proven @ D {${levels},"should":"2026-03-14T10:00:03.000Z"}`,
    ]);
    // Beyond 3.2 from 17.1 s, and beyond 4, to the end at 20 s.
    expect(foundOf([1, 1, 4.1], 'late')).toEqual([
      `note danger replay-not-proven @ D {${levels},"should":null}`,
    ]);
    expect(foundOf([1, 1, 1], 'late')).toEqual([]);
  });

  it('is nothing without a table', () => {
    expect(finish(replayBook([], [], parsePolicy({})))).toEqual({ replay: null, problems: [] });
  });
});

describe('the policy of a replay', () => {
  // 0, 8, 8 at 0, 10, 20 s: held, 8 from 10 s on; both act at 13 s.
  it('holds each reading until the next, or leaves gaps unknown', () => {
    const rows: Rows = [
      ['Time (UTC)', 'V-1 (mil)'],
      [at(0), 0],
      [at(10), 8],
      [at(20), 8],
    ];
    expect(acted(replayed(rows, undefined, { between: 'hold' }))).toEqual([
      'K-1 V-1: as set 13.000000000 13.000000000',
    ]);
    expect(replayed(rows, undefined, { maxGap: 5 }).channels[0]?.result.maxGap).toBe(5);
    // What was sorted is replayed by the same.
    const mixed: Rows = [rows[0]!, rows[3]!, rows[1]!, rows[2]!];
    expect(acted(replayed(mixed, undefined, { between: 'hold' }))).toEqual([
      'K-1 V-1: as set 13.000000000 13.000000000',
    ]);
    expect(replayed(mixed, undefined, { maxGap: 5 }).channels[0]?.result.maxGap).toBe(5);
  });
});
