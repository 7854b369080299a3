import { readdirSync } from 'node:fs';
import { expect, it } from 'vitest';
import type { CaseTwo, ExpectedThreshold } from './judged/caseTwo.ts';
import type { ThresholdTruth } from './oracle/judge.ts';
import { usualPolicy } from './oracle/plainChannel.ts';
import { criticalSubjects, truthOf } from './oracle/truth.ts';

/** The oracle against cases that were worked out by hand. */
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

it('the cases are found', () => {
  expect(cases.length).toBeGreaterThan(15);
});

for (const [name, one] of cases) {
  it(`${name.replaceAll('-', ' ')}: ${one.because}`, () => {
    const truth = truthOf(one.facts, { ...usualPolicy, ...one.policy }, one.notRead);
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
    for (const { severity, tag, threshold } of one.attention ?? [])
      expect(truth.attention).toContainEqual(expect.objectContaining({ severity, tag, threshold }));
    same(truth.summary, one.summary ?? {}, 'summary');
    expect(truth.exitCode).toBe(one.critical.length > 0 ? 1 : 0);
    for (const { tag } of one.facts)
      expect(
        one.sheets.flatMap(({ rows }) => rows.flat()).filter((cell) => cell === tag).length,
      ).toBeGreaterThan(1);
  });
}
