import normal from '@stdlib/stats-base-dists-normal-cdf';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Report } from '../../src/audit/model/report.ts';
import { chancesOf } from './oracle/stationChances.ts';
import { criticalSubjects, type Truth } from './oracle/truth.ts';
import { runs } from '../seed.ts';
import { mutatedBook, randomBook, type RandomBook } from './stations/randomBook.ts';
import { auditPages, truthOfReport } from './truthOfReport.ts';

/** Everything that the truth says stands in the report, numbers to nine digits of the larger one beside them. */
function same(actual: unknown, expected: unknown, what: string): void {
  if (typeof expected === 'number' && typeof actual === 'number') {
    const off = Math.abs(actual - expected);
    expect(off, `${what}: ${actual}, not ${expected}`).toBeLessThanOrEqual(1e-9 * Math.abs(expected) + 1e-12);
  } else if (Array.isArray(expected) && Array.isArray(actual)) {
    expect(actual.length, `${what}: ${JSON.stringify(actual)}`).toBe(expected.length);
    expected.forEach((one, at) => {
      same(actual[at], one, `${what} ${at}`);
    });
  } else if (typeof expected === 'object' && expected !== null && typeof actual === 'object' && actual) {
    const given = new Map(Object.entries(actual));
    for (const [key, value] of Object.entries(expected)) same(given.get(key), value, `${what} ${key}`);
  } else expect(actual, what).toEqual(expected);
}

function sameChannels(actual: Truth, { channels }: Truth): void {
  const byTag = new Map(actual.channels.map((one) => [one.tag, one]));
  expect([...byTag.keys()].toSorted()).toEqual(channels.map(({ tag }) => tag).toSorted());
  for (const one of channels) {
    const found = byTag.get(one.tag)!;
    const what = (threshold: { name: string; multiplier: number }): string =>
      `${one.tag} ${threshold.name} ×${threshold.multiplier}`;
    const { thresholds, asFound, ...rest } = one;
    // Of a row that can't be used no more is said than that its alert and danger are not known.
    const unused = found.thresholds.every(({ lines }) => lines.length === 0);
    if (unused) {
      expect(
        thresholds.every(({ verdict, effective }) => verdict === 'incomplete' && effective === null),
      ).toBe(true);
      expect(found.verdict).toBe('incomplete');
      continue;
    }
    same(found, rest, one.tag);
    // A setpoint that is missing is so once, whatever the multiplier.
    const listed = thresholds.filter(({ multiplier, setpoint }) => multiplier === 1 || setpoint !== null);
    expect(found.thresholds.map(what)).toEqual(listed.map(what));
    listed.forEach((threshold, at) => {
      same(found.thresholds[at], threshold, what(threshold));
    });
    expect(found.asFound === null, `${one.tag} as found`).toBe(asFound === null);
    if (!asFound) continue;
    same(found.asFound!.verdict, asFound.verdict, `${one.tag} as found`);
    asFound.thresholds
      .filter(({ multiplier, setpoint }) => multiplier === 1 || setpoint !== null)
      .forEach((threshold, at) => {
        same(found.asFound!.thresholds[at], threshold, `${what(threshold)} as found`);
      });
  }
}

/** Where the second pair of tables was read too, its channels are those of the first under other tags, without their records. */
function sameTwins(twins: Truth['channels'], { channels }: Truth): void {
  expect(twins.length).toBe(Math.min(2, channels.length));
  const listed = ({ thresholds }: Truth['channels'][number]) =>
    thresholds.map(({ lines }) => lines.find(({ by }) => by === 'listed sensitivity')?.effective ?? null);
  for (const twin of twins) {
    const own = channels.find(({ tag }) => `${tag}-B` === twin.tag)!;
    const expected = listed(own);
    listed(twin).forEach((effective, at) => {
      // A slip may have spoilt a cell of the first pair alone.
      if (effective !== null && (expected[at] ?? null) !== null)
        same(effective, expected[at], `${twin.tag} ${at}`);
    });
  }
}

function sameGroups(actual: Truth, { groups }: Truth): void {
  const key = (group: Truth['groups'][number]): string =>
    `${group.machine} ${group.name} ${group.threshold} ×${group.multiplier}`.toLowerCase();
  expect(actual.groups.map(key).toSorted()).toEqual(groups.map(key).toSorted());
  for (const group of groups)
    same(
      actual.groups.find((one) => key(one) === key(group)),
      group,
      key(group),
    );
}

/** Chances of groups and machines; the ends of an interval are where the oracle has the group acted with Φ(∓k). */
function sameChances(report: Report, { facts, policy }: RandomBook): void {
  const { groups, machines } = chancesOf(facts, policy);
  for (const { of, chance, actedAt } of groups) {
    const what = `${of.machine} ${of.name} ${of.threshold} ×${of.multiplier}`;
    const found = report.groups.find(
      ({ machine, name, threshold, multiplier }) =>
        machine === of.machine &&
        name.toLowerCase() === of.name.toLowerCase() &&
        threshold === of.threshold &&
        multiplier === of.multiplier,
    )?.chance;
    expect(found === null, what).toBe(chance === null);
    if (!found || !chance) continue;
    same(found, chance, what);
    for (const [level, at] of [
      [found.low, -policy.coverage],
      [found.high, policy.coverage],
    ] as const) {
      if (level === null) continue;
      expect(actedAt(level * (1 - 1e-9)), what).toBeLessThanOrEqual(normal(at, 0, 1) + 1e-12);
      expect(actedAt(level * (1 + 1e-9)), what).toBeGreaterThanOrEqual(normal(at, 0, 1) - 1e-12);
    }
    expect(found.low === null, what).toBe(!of.canTrip);
  }
  expect(report.machines.map(({ machine }) => machine).toSorted()).toEqual(
    machines.map(({ machine }) => machine).toSorted(),
  );
  for (const one of machines)
    same(
      report.machines.find(({ machine }) => machine === one.machine),
      one,
      one.machine,
    );
}

function sameNotRead({ notRead }: Report, truth: Truth): void {
  for (const { what, text, looksLike, severity, sheet } of truth.notRead) {
    if (what === 'column') {
      const column = { what, looksLike, severity, sheet };
      expect(notRead).toContainEqual(expect.objectContaining(column));
      expect(notRead.some((one) => one.text.startsWith(text))).toBe(true);
    } else expect(notRead).toContainEqual(expect.objectContaining({ severity, sheet }));
  }
  for (const { sheet, what } of notRead) {
    expect(truth.notRead.some((one) => one.sheet === sheet)).toBe(true);
    expect(what).not.toBe('value');
  }
}

function audited({ pages, policy, mayBeRefused }: RandomBook): Report | undefined {
  try {
    return auditPages(pages, policy);
  } catch (error) {
    expect(mayBeRefused, String(error)).toBe(true);
    expect(error).toHaveProperty('name', 'AuditRefused');
    return undefined;
  }
}

it('the audit of a random workbook says what is true of it', () => {
  let audits = 0;
  const property = fc.property(fc.gen(), (gen) => {
    const random = randomBook(gen);
    const report = audited(random);
    if (!report || random.closeCall) return;
    audits++;
    const { truth } = random;
    const actual = truthOfReport(report);
    const twins = actual.channels.filter(({ tag }) => tag.endsWith('-B'));
    if (twins.length > 0) {
      sameTwins(twins, truth);
      // Where two tables contradict each other, all of that channel waits for an answer.
      for (const { tag, verdict } of truth.channels)
        expect(['incomplete', verdict]).toContain(actual.channels.find((one) => one.tag === tag)?.verdict);
      return;
    }
    sameChannels(actual, truth);
    sameGroups(actual, truth);
    if (audits <= 150) sameChances(report, random);
    sameNotRead(report, truth);
    expect(criticalSubjects(actual)).toEqual(criticalSubjects(truth));
    expect(actual.exitCode).toBe(truth.exitCode);
    same(actual.summary, truth.summary, 'summary');
  });
  fc.assert(property, { seed: 20_260_101, numRuns: runs(600) });
  expect(audits).toBeGreaterThan(runs(600) / 2);
}, 900_000);

it('an input changed so that danger is late or does not act is critical, and named', () => {
  const property = fc.property(fc.gen(), (gen) => {
    const mutated = mutatedBook(gen);
    if (!mutated || mutated.closeCall) return;
    const report = auditPages(mutated.pages, mutated.policy);
    const actual = truthOfReport(report);
    expect(criticalSubjects(actual), mutated.mutation).toContain(mutated.subject);
    expect(criticalSubjects(actual)).toEqual(criticalSubjects(mutated.truth));
    for (const { headline, doNext, subject } of report.attention) {
      expect(headline).not.toMatch(/NaN|undefined|null|∞/u);
      expect(doNext).not.toBe('');
      if (subject.tag !== '') expect(headline).toContain(subject.tag);
    }
  });
  fc.assert(property, { seed: 20_260_101, numRuns: runs(400) });
}, 300_000);
