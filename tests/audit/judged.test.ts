import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { CaseTwo, ExpectedThreshold } from './judged/caseTwo.ts';
import type { ThresholdTruth } from './oracle/judge.ts';
import { usualPolicy } from './oracle/plainChannel.ts';
import { criticalSubjects, truthOf, type Truth } from './oracle/truth.ts';
import type { Report } from '../../src/audit/model/report.ts';
import { auditPages, truthOfReport } from './truthOfReport.ts';

/** Cases that were worked out by hand, held against the audit and against the oracle. */
const folders = readdirSync(new URL('judged/', import.meta.url), { withFileTypes: true });
const cases = await Promise.all(
  folders
    .filter((one) => one.isDirectory())
    .map(async ({ name }): Promise<[string, CaseTwo]> => {
      const { judged } = (await import(`./judged/${name}/case.ts`)) as { judged: CaseTwo };
      return [name, judged];
    }),
);

function same(actual: object, expected: object, what: string): void {
  const given = new Map(Object.entries(actual) as [string, unknown][]);
  for (const [key, value] of Object.entries(expected) as [string, unknown][]) {
    const found = given.get(key);
    if (typeof value === 'number' && typeof found === 'number')
      expect(Math.abs(found - value), `${what} ${key}: ${found}, not ${value}`).toBeLessThan(
        1e-9 * Math.abs(value) + 1e-15,
      );
    else expect(found, `${what} ${key}`).toEqual(value);
  }
}

function sameThreshold(actual: ThresholdTruth | undefined, expected: ExpectedThreshold, what: string): void {
  const { lines, ...numbers } = expected;
  expect(actual, what).toBeDefined();
  same(actual!, numbers, what);
  if (!lines) return;
  expect(actual!.lines.map(({ by }) => by)).toEqual(Object.keys(lines));
  for (const line of actual!.lines) same(line, lines[line.by]!, `${what} ${line.by}`);
}

/** Channels, groups, what is critical and the counts. */
function sameTruth(truth: Truth, one: CaseTwo): void {
  expect(truth.channels.map(({ tag }) => tag).toSorted()).toEqual(Object.keys(one.channels).toSorted());
  for (const channel of truth.channels) {
    const { thresholds = {}, asFound, ...rest } = one.channels[channel.tag]!;
    same(channel, rest, channel.tag);
    if (asFound !== undefined) expect(channel.asFound?.verdict ?? null).toBe(asFound);
    for (const [key, expected] of Object.entries(thresholds)) {
      const own = channel.thresholds.find(
        (at) => key === (at.multiplier === 1 ? at.name : `${at.name} ×${at.multiplier}`),
      );
      sameThreshold(own, expected, `${channel.tag} ${key}`);
    }
  }
  expect(truth.groups).toHaveLength(one.groups?.length ?? 0);
  for (const expected of one.groups ?? []) {
    const group = truth.groups.find(
      (at) =>
        at.threshold === expected.threshold &&
        at.machine === (expected.machine ?? at.machine) &&
        at.multiplier === (expected.multiplier ?? 1),
    );
    same(group ?? {}, expected, `group ${expected.name} ${expected.threshold}`);
  }
  expect(criticalSubjects(truth)).toEqual(one.critical.toSorted());
  same(truth.summary, one.summary ?? {}, 'summary');
  expect(truth.exitCode).toBe(one.critical.length > 0 ? 1 : 0);
}

it('the cases are found', () => {
  expect(cases.length).toBeGreaterThan(15);
});

describe('the oracle, which reads no sheets', () => {
  for (const [name, one] of cases) {
    it(`${name.replaceAll('-', ' ')}: ${one.because}`, () => {
      const truth = truthOf(one.facts, { ...usualPolicy, ...one.policy }, one.notRead);
      sameTruth(truth, one);
      for (const { severity, tag, threshold } of one.attention ?? [])
        expect(truth.attention).toContainEqual(expect.objectContaining({ severity, tag, threshold }));
      for (const { tag } of one.facts)
        expect(
          one.sheets.flatMap(({ rows }) => rows.flat()).filter((cell) => cell === tag).length,
        ).toBeGreaterThan(1);
    });
  }
});

describe('the audit', () => {
  for (const [name, one] of cases) {
    it(`${name.replaceAll('-', ' ')}: ${one.because}`, () => {
      const report = auditPages(one.sheets, { ...usualPolicy, ...one.policy });
      sameTruth(truthOfReport(report), one);
      for (const { severity, tag, threshold, multiplier = 1, ...numbers } of one.attention ?? []) {
        const about = report.attention.filter(
          (at) =>
            at.severity === severity &&
            at.subject.tag === tag &&
            at.subject.threshold === threshold &&
            at.subject.multiplier === multiplier,
        );
        expect(about.map((at) => at.code)).not.toEqual([]);
        const fits = about.filter((at) =>
          Object.entries(numbers).every(([key, value]) => {
            const found = new Map<string, unknown>(Object.entries(at)).get(key);
            return typeof found === 'number' && Math.abs(found - value) <= 1e-9 * Math.abs(value);
          }),
        );
        expect(fits, `${tag} ${threshold} with ${JSON.stringify(numbers)}`).not.toEqual([]);
      }
      const place = ({ sheet, severity }: Pick<Report['notRead'][number], 'sheet' | 'severity'>): string =>
        `${severity} of ${sheet}`;
      expect(report.notRead.map(place).toSorted()).toEqual((one.notRead ?? []).map(place).toSorted());
      for (const { what, text, looksLike, sheet } of one.notRead ?? [])
        if (what === 'column')
          expect(report.notRead).toContainEqual(expect.objectContaining({ what, text, looksLike, sheet }));
    });
  }
});
