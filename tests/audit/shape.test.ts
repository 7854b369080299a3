import { expect, it } from 'vitest';
import type { Report } from '../../src/audit/model/report.ts';
import { auditCase } from './golden.ts';
import { goldenCases } from './goldenCases.ts';

/** Keys of each part of a report that other people's scripts lean on; more may be added. */
const keys = {
  report: ['schema', 'input', 'generated', 'policy', 'summary', 'channels', 'groups', 'problems'],
  policy: ['tolerance', 'rule', 'coverage'],
  summary: [
    'channels',
    'late',
    'early',
    'within',
    'undetermined',
    'unreachable',
    'incomplete',
    'groupsThatCannotTrip',
  ],
  channel: [
    'tag',
    'machine',
    'location',
    'kind',
    'unit',
    'detection',
    'sensitivity',
    'thresholds',
    'verdict',
    'findings',
  ],
  sensitivity: ['configured', 'measured', 'unit', 'error', 'uncertainty'],
  threshold: [
    'name',
    'setpoint',
    'multiplier',
    'effective',
    'low',
    'high',
    'shift',
    'shiftFraction',
    'verdict',
    'indicatedAtSetpoint',
    'interimSetpoint',
    'probabilityBeyondLimit',
    'zone',
    'intendedZone',
    'daysLate',
  ],
  finding: ['rule', 'severity', 'message', 'sheet', 'row', 'column'],
  group: ['name', 'voting', 'threshold', 'intended', 'effective', 'canTrip', 'decidedBy'],
  problem: ['sheet', 'row', 'column', 'message'],
} as const;

const worstFirst = ['unreachable', 'late', 'undetermined', 'early', 'incomplete', 'within'];
const reports: [name: string, report: Report, sheets: string[]][] = (await goldenCases())
  .filter(([, golden]) => !golden.refused)
  .map(([name, golden]) => [name, auditCase(golden), golden.book.sheets.map((sheet) => sheet.name)]);

function has(part: object, expected: readonly string[], where: string): void {
  expect(Object.keys(part), where).toEqual(expect.arrayContaining([...expected]));
}

/** Where a value stands that JSON can't hold: undefined, NaN or an infinity. */
function oddities(value: unknown, where: string): string[] {
  if (value === undefined || (typeof value === 'number' && !Number.isFinite(value)))
    return [`${where} ${String(value)}`];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, part]) => oddities(part, `${where}.${key}`));
}

for (const [name, report, sheets] of reports) {
  it(`${name.replaceAll('-', ' ')}: has every key, and null where a number does not apply`, () => {
    has(report, keys.report, 'report');
    expect(report.schema).toBe('tripdrift-report/1');
    expect(report.generated).toBe('2026-01-01T12:00:00.000Z');
    has(report.policy, keys.policy, 'policy');
    has(report.summary, keys.summary, 'summary');
    for (const channel of report.channels) {
      has(channel, keys.channel, channel.tag);
      has(channel.sensitivity, keys.sensitivity, channel.tag);
      expect(channel.thresholds.map((one) => one.name)).toEqual(expect.arrayContaining(['alert', 'danger']));
      for (const threshold of channel.thresholds) has(threshold, keys.threshold, channel.tag);
    }
    for (const group of report.groups) has(group, keys.group, group.name);
    for (const problem of report.problems) has(problem, keys.problem, problem.message);
    expect(oddities(report, 'report')).toEqual([]);
  });

  it(`${name.replaceAll('-', ' ')}: stands worst first, and the summary counts it`, () => {
    const ranks = report.channels.map(({ verdict }) => worstFirst.indexOf(verdict));
    expect(ranks).not.toContain(-1);
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
    const count = (verdict: string) =>
      report.channels.filter((channel) => channel.verdict === verdict).length;
    expect(report.summary).toMatchObject({
      channels: report.channels.length,
      ...Object.fromEntries(worstFirst.map((verdict) => [verdict, count(verdict)])),
      groupsThatCannotTrip: new Set(
        report.groups
          .filter(({ canTrip, threshold }) => !canTrip && threshold.endsWith('danger'))
          .map((group) => group.name),
      ).size,
    });
  });

  it(`${name.replaceAll('-', ' ')}: each finding has a place in the workbook, a severity and a message in plain words`, () => {
    const findings = [...report.channels, ...report.groups].flatMap((part) => part.findings);
    for (const finding of [...findings, ...report.problems]) {
      has(finding, keys.finding, finding.message);
      expect(['critical', 'warning', 'note']).toContain(finding.severity);
      expect(finding.column).toMatch(/^[A-Z]{1,3}$/);
      expect(finding.row).toBeGreaterThan(0);
      expect(finding.message).not.toMatch(/NaN|undefined|null|\[object|Infinity|∞/);
      expect(finding.message).toMatch(/[.]$/);
      expect(sheets).toContain(finding.sheet);
    }
  });
}

it('a danger that is late, can not act or a group that can not trip is critical, an alert is a warning', () => {
  const all = reports.flatMap(([, report]) => report.channels.flatMap(({ findings }) => findings));
  const severities = (rule: RegExp) =>
    new Set(all.filter((one) => rule.test(one.rule)).map((one) => one.severity));
  for (const rule of [
    /^(counter-)?danger-(multiplied-)?(late|above|out-of|on-the|beyond)/,
    /^(counter-)?danger-as-left-(late|unreachable|undetermined)/,
    /^group-(cannot-trip|beyond)/,
  ]) {
    expect(severities(rule)).toEqual(new Set(['critical']));
  }
  for (const rule of [
    /^(counter-)?alert-(late|above|out-of|on-the)/,
    /-early$/,
    /^(counter-)?(danger|alert)-undetermined$/,
    /^(counter-)?alert-as-left-(late|unreachable|undetermined)/,
    /-as-left-worse$/,
    /^group-cannot-act/,
  ]) {
    expect(severities(rule)).toEqual(new Set(['warning']));
  }
});
