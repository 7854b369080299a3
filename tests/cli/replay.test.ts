import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Report } from '../../src/audit/model/report.ts';
import { workbookPath } from '../demo/files.ts';
import { worked, type Worked } from '../method/worked/examples.ts';
import { demo, runAudit, temporaryFolder } from './run.ts';

const folder = temporaryFolder();

function file(name: string, lines: readonly string[]): string {
  const path = join(folder, name);
  writeFileSync(path, lines.join('\n'));
  return path;
}

/** Both tables, with a row a tag: 160 for 200 mV/mil, alert 1 mil, danger 4 mil, and its delay in s. */
function tables(delays: Readonly<Record<string, number>>): readonly string[] {
  const rows = Object.entries(delays);
  return [
    file('channels.csv', [
      'Tag,Kind,Measured sensitivity (mV/mil)',
      ...rows.map(([tag]) => `${tag},radial,160`),
    ]),
    file('settings.csv', [
      'Tag,Configured sensitivity (mV/mil),Alert (mil),Danger (mil),Alert delay (s),Danger delay (s)',
      ...rows.map(([tag, delay]) => `${tag},200,1,4,${delay},${delay}`),
    ]),
  ];
}

function audited(inputs: readonly string[], trend: string, ...more: readonly string[]): Report {
  const { out, err, code } = runAudit(folder, ...inputs, '--replay', trend, '--json', '-', ...more);
  expect(err).toBe('');
  expect(code).toBe(0);
  return JSON.parse(out) as Report;
}

interface Inputs {
  readonly samples: readonly (readonly [time: string, reading: number | null])[];
  readonly delay_s: number;
  readonly max_gap_s?: number;
  readonly mode?: string;
  readonly setpoint: number;
  readonly configured: number;
  readonly measured: number;
  readonly deadband?: number;
}

const inputsOf = ({ inputs }: Worked): Inputs => inputs as unknown as Inputs;
/** How an example reads its record, as the policy says it. */
const policyOf = ({ max_gap_s: maxGap = 86_400, mode }: Inputs): string =>
  JSON.stringify({ replay: { maxGap, between: mode === 'hold' ? 'hold' : 'line' } });

const examples = worked.filter((one) => {
  const { setpoint, configured, measured } = inputsOf(one);
  return one.what === 'replay' && setpoint === 4 && configured === 200 && measured === 160;
});

describe('examples worked by hand, independent of this code, through the command', () => {
  const policies = [...new Set(examples.map((one) => policyOf(inputsOf(one))))];

  it('are most of those there are', () => {
    expect(examples.length).toBeGreaterThan(7);
  });

  it.each(policies)('with %s', (policy) => {
    const all = examples.filter((one) => policyOf(inputsOf(one)) === policy);
    const delays = Object.fromEntries(all.map((one) => [one.id, inputsOf(one).delay_s]));
    const trend = file('trend.csv', [
      'Time,Tag,Value (mil)',
      ...all.flatMap((one) =>
        inputsOf(one).samples.map(([time, reading]) => `${time},${one.id},${reading ?? ''}`),
      ),
    ]);
    const { replay } = audited(tables(delays), trend, '--policy', file('policy.json', [policy]));
    for (const { id, expected } of all) {
      const own = replay?.channels.find(({ tag }) => tag === id);
      const danger = own?.thresholds.find(({ name }) => name === 'danger');
      expect(
        {
          acts: danger?.acted.proven?.time ?? null,
          should_have: danger?.should.proven?.time ?? null,
          earliest_acts: danger?.acted.earliest?.time ?? null,
          earliest_should: danger?.should.earliest?.time ?? null,
        },
        id,
      ).toEqual({
        acts: expected['acts'],
        should_have: expected['should_have'],
        earliest_acts: expected['earliest_acts'],
        earliest_should: expected['earliest_should'],
      });
      const late = expected['late_s'] as number | null;
      if (late === null) expect(danger?.late, id).toBeNull();
      else expect(Math.abs((danger?.late ?? NaN) - late), id).toBeLessThanOrEqual(1e-9 * Math.max(1, late));
    }
  });
});

describe('--replay', () => {
  it('reads a long table with decimal commas, zones and qualities, and says what it did not read', () => {
    const trend = file('long.csv', [
      'sep=;',
      'Zeitstempel (Europe/Berlin);Tag;Messwert;Unit;Quality',
      '26.10.2025 02:59:50;V-1;25,4;um;Good',
      '26.10.2025 02:00:00;V-1;76,2;um;Good',
      '26.10.2025 02:00:10;V-1;127,0;um;Good',
      '26.10.2025 02:00:20;V-1;127,0;um;Good',
      '26.10.2025 02:00:30;V-1;0,0;um;Bad',
      '30.03.2025 02:30:00;V-1;1,0;um;Good',
      '26.10.2025 02:00:20;TI-9;20,0;um;Good',
    ]);
    const { replay, problems, basis } = audited(tables({ 'V-1': 3 }), trend);
    const danger = replay?.channels[0]?.thresholds.find(({ name }) => name === 'danger');
    // By hand: 1, 3, 5, 5 mil ten seconds apart over the hour that is put back: 4 at 15 s, 3.2 at 11 s.
    expect(danger?.acted.proven).toEqual({ seconds: 18, time: '2025-10-26T02:00:08.000+01:00' });
    expect(danger?.should.proven?.seconds).toBeCloseTo(14, 9);
    expect(replay?.channels[0]).toMatchObject({
      readings: 5,
      unknown: 1,
      first: '2025-10-26T02:59:50.000+02:00',
    });
    expect(problems.map(({ rule, row, column }) => `${rule} ${column}${row}`)).toEqual([
      'trend-readings-unknown E6',
      'trend-rows-left-out A7',
      'trend-columns-not-read B1',
    ]);
    expect(basis.replayedFrom).toBe('long.csv');
  });

  it('names the zone and the order of dates on the command line, and says so where they are missing', () => {
    const trend = file('slashed.csv', [
      'Time,V-1 (mil)',
      '03/04/2025 10:00:00 PM,1',
      '03/04/2025 10:00:10 PM,5',
    ]);
    const told = audited(tables({ 'V-1': 0 }), trend, '--replay-zone=-05:00', '--replay-dates', 'mdy');
    expect(told.replay?.channels[0]?.first).toBe('2025-03-04T22:00:00.000-05:00');
    const silent = audited(tables({ 'V-1': 0 }), trend);
    expect(silent.replay?.channels).toEqual([]);
    expect(silent.problems.map(({ message }) => message)).toEqual([
      expect.stringMatching(
        /^Rows 2 and 3: '03\/04\/2025 10:00:00 PM' could be two different days; say in the policy/,
      ),
    ]);
  });

  it.each([
    [
      'no-times.csv',
      ['Speed,V-1', '1000,2'],
      /heads recorded readings: a column 'time'.* holds 'Speed', 'V-1'\./,
    ],
    ['empty.csv', [''], /holds no text/],
    ['book.xlsx', ['x'], /come as a text table/],
  ])('refuses %s in one plain line', (name, lines, words) => {
    const { err: stderr, code } = runAudit(folder, ...tables({ 'V-1': 1 }), '--replay', file(name, lines));
    expect(code).toBe(2);
    expect(stderr).toMatch(words);
    expect(stderr.trim().split('\n')).toHaveLength(1);
  });

  it('finds by how many minutes the events of the demo were late, and --verify says what it can’t repeat', () => {
    const out = join(folder, 'out.xlsx');
    const json = join(folder, 'out.json');
    const trend = workbookPath('harbour-station-trend.csv');
    const { out: stdout } = runAudit(folder, demo, '--replay', trend, '--out', out, '--json', json);
    expect(stdout).toContain('K101-1X danger: 6 min 40 s late');
    const { attention } = JSON.parse(readFileSync(json, 'utf8')) as Report;
    const late = attention.filter(
      ({ code, subject }) => code === 'acted-late' && subject.threshold === 'danger',
    );
    expect(late.map(({ severity, headline }) => `${severity}: ${headline}`)).toEqual([
      expect.stringMatching(
        /^critical: K101-1X danger acted 6 min 40 s late on 2026-11-29: at 23:38:01 instead of 23:31:21/,
      ),
      expect.stringMatching(/^critical: K101-2X danger acted 3 min 5 s late on 2026-11-28/),
    ]);
    const check = runAudit(folder, '--verify', out);
    expect(check.code).toBe(0);
    expect(check.out).toContain('The audit replayed the readings of harbour-station-trend.csv');
  });
});
