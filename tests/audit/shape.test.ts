import { expect, it } from 'vitest';
import type { Report } from '../../src/audit/model/report.ts';
import { auditCase } from './golden.ts';
import { goldenCases } from './goldenCases.ts';

/** Keys of each part of a report that other people's scripts lean on; more may be added. */
const keys = {
  report: [
    'schema',
    'input',
    'generated',
    'policy',
    'summary',
    'attention',
    'channels',
    'groups',
    'notRead',
    'problems',
  ],
  policy: ['tolerance', 'rule', 'coverage'],
  summary: [
    'channels',
    'late',
    'early',
    'within',
    'undetermined',
    'unreachable',
    'incomplete',
    'inBypass',
    'groupsThatCannotTrip',
    'notRead',
  ],
  channel: [
    'tag',
    'machine',
    'location',
    'kind',
    'unit',
    'detection',
    'state',
    'inBypass',
    'sensitivity',
    'thresholds',
    'verdict',
    'asFound',
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
    'governedBy',
    'lines',
    'notJudged',
    'indicatedAtSetpoint',
    'panel',
    'interimSetpoint',
    'probabilityBeyondLimit',
    'zone',
    'intendedZone',
    'daysLate',
  ],
  line: ['by', 'effective', 'low', 'high', 'verdict', 'why'],
  finding: ['rule', 'severity', 'threshold', 'multiplier', 'values', 'message', 'sheet', 'row', 'column'],
  group: [
    'machine',
    'name',
    'voting',
    'threshold',
    'multiplier',
    'intended',
    'effective',
    'canTrip',
    'decidedBy',
  ],
  attention: [
    'severity',
    'code',
    'subject',
    'set',
    'real',
    'panel',
    'limit',
    'unit',
    'headline',
    'doNext',
    'places',
  ],
  subject: ['machine', 'tag', 'threshold', 'multiplier', 'group'],
  notRead: ['what', 'text', 'looksLike', 'severity', 'sheet', 'row', 'column'],
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
    expect(report.schema).toBe('tripdrift-report/2');
    expect(report.generated).toBe('2026-01-01T12:00:00.000Z');
    has(report.policy, keys.policy, 'policy');
    has(report.summary, keys.summary, 'summary');
    for (const channel of report.channels) {
      has(channel, keys.channel, channel.tag);
      has(channel.sensitivity, keys.sensitivity, channel.tag);
      expect(channel.thresholds.map((one) => one.name)).toEqual(expect.arrayContaining(['alert', 'danger']));
      for (const threshold of [...channel.thresholds, ...(channel.asFound?.thresholds ?? [])]) {
        has(threshold, keys.threshold, channel.tag);
        for (const line of threshold.lines) has(line, keys.line, channel.tag);
      }
      expect(channel.asFound === null).toBe(channel.state === 'as found');
    }
    for (const group of report.groups) has(group, keys.group, group.name);
    for (const entry of report.attention) {
      has(entry, keys.attention, entry.headline);
      has(entry.subject, keys.subject, entry.headline);
    }
    for (const unread of report.notRead) has(unread, keys.notRead, unread.text);
    for (const problem of report.problems) has(problem, keys.problem, problem.message);
    expect(oddities(report, 'report')).toEqual([]);
  });

  it(`${name.replaceAll('-', ' ')}: stands worst first, and the summary counts it`, () => {
    const ranks = report.channels.map(({ verdict, inBypass }) =>
      inBypass === true ? 0 : worstFirst.indexOf(verdict),
    );
    expect(ranks).not.toContain(-1);
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
    const count = (verdict: string) =>
      report.channels.filter((channel) => channel.inBypass !== true && channel.verdict === verdict).length;
    expect(report.summary).toMatchObject({
      channels: report.channels.length,
      ...Object.fromEntries(worstFirst.map((verdict) => [verdict, count(verdict)])),
      inBypass: report.channels.filter(({ inBypass }) => inBypass === true).length,
      notRead: report.notRead.length,
      critical: report.attention.filter(({ severity }) => severity === 'critical').length,
      warnings: report.attention.filter(({ severity }) => severity === 'warning').length,
      groupsThatCannotTrip: new Set(
        report.groups
          .filter(({ canTrip, threshold }) => !canTrip && threshold.endsWith('danger'))
          .map(({ machine, name: own }) => JSON.stringify([machine, own])),
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

for (const [name, report, sheets] of reports) {
  it(`${name.replaceAll('-', ' ')}: what needs action is said in plain words, at places of the workbook, gravest first`, () => {
    for (const { headline, doNext, places, severity, code } of report.attention) {
      expect(['critical', 'warning']).toContain(severity);
      for (const text of [headline, doNext]) {
        expect(text).not.toMatch(/NaN|undefined|null|\[object|Infinity|∞/);
        expect(text).toMatch(/[.]$/);
      }
      expect(places.length, code).toBeGreaterThan(0);
      for (const place of places) expect(sheets).toContain(place.sheet);
    }
    const graves = report.attention
      .filter(({ code }) => code !== 'past-danger' && code !== 'past-alert')
      .map(({ severity }) => severity);
    expect(graves).toEqual(graves.toSorted());
    for (const channel of report.channels) {
      const said = report.attention.some(({ subject }) => subject.tag === channel.tag);
      if (channel.verdict !== 'within' || channel.inBypass === true) expect(said, channel.tag).toBe(true);
    }
    expect(report.attention.filter(({ code }) => code === 'not-read')).toHaveLength(report.notRead.length);
  });
}

it('a danger that is late, can not act or a group that can not trip is critical, an alert is a warning', () => {
  const all = reports.flatMap(([, report]) => report.channels.flatMap(({ findings }) => findings));
  const severities = (rule: RegExp) =>
    new Set(all.filter((one) => rule.test(one.rule)).map((one) => one.severity));
  for (const rule of [
    /^(counter-)?danger-(multiplied-)?(late|above|out-of|on-the|beyond)/,
    /^(counter-)?danger-undetermined$/,
    /^(counter-)?danger-may-be-beyond-limit$/,
    /^group-(cannot-trip|beyond)/,
  ]) {
    expect(severities(rule)).toEqual(new Set(['critical']));
  }
  for (const rule of [
    /^(counter-)?alert-(late|above|out-of|on-the)/,
    /^(counter-)?(alert|danger)-(multiplied-)?early$/,
    /^(counter-)?alert-undetermined$/,
    /-as-left-worse$/,
    /^group-cannot-act/,
  ]) {
    expect(severities(rule)).toEqual(new Set(['warning']));
  }
});
