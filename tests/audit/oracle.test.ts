import type { ThresholdResult } from '../../src/audit/model/threshold.ts';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { parsePolicy } from '../../src/audit/model/policy.ts';
import type { ChannelResult, Report } from '../../src/audit/model/report.ts';
import { now } from './golden.ts';
import { layOut, type LaidOut } from './layout.ts';
import {
  asLeftOf,
  groupAsLeftOf,
  groupOf,
  thresholdsOf,
  type PlannedChannel,
  type Worked,
} from './oracle.ts';
import { plans, type Plan } from './planned.ts';

function audited({ policy }: Plan, { workbook }: LaidOut): Report {
  const { tolerance, rule, coverage, near, far } = policy;
  return audit(workbook, {
    now,
    policy: parsePolicy({ tolerance, rule, coverage, linearVolts: { near, far } }),
  });
}

function near(actual: number | null, expected: number | null, unit: number, what: string): void {
  if (expected === null || actual === null) {
    expect(actual, what).toBe(expected);
    return;
  }
  const off = Math.abs(actual * unit - expected);
  expect(off, `${what}: ${actual * unit} is not ${expected}`).toBeLessThanOrEqual(
    1e-9 * Math.max(Math.abs(expected), 1e-3),
  );
}

/** Numbers that share no unit with the setpoint have a unit of 1. */
const inLevels = [
  'setpoint',
  'effective',
  'low',
  'high',
  'indicatedAtSetpoint',
  'headroom',
  'levelAtTrip',
] as const;
const plain = ['shiftFraction', 'daysLate', 'daysToGo', 'probabilityBeyondLimit'] as const;

function sameThreshold(actual: ThresholdResult, expected: Worked, unit: number, tag: string): void {
  const what = `${tag} ${expected.name} ×${expected.multiplier}`;
  for (const key of inLevels) near(actual[key], expected[key], unit, `${what} ${key}`);
  for (const key of plain) near(actual[key], expected[key], 1, `${what} ${key}`);
  // A difference is known only to a part of what it is the difference of.
  const shift = (actual.shift ?? NaN) * unit - expected.shift;
  expect(Math.abs(shift), `${what} shift`).toBeLessThanOrEqual(1e-9 * Math.abs(expected.effective));
  expect(expected.verdict, `${what} verdict`).toContain(actual.verdict);
  expect(expected.zone, `${what} zone`).toContain(actual.zone);
  expect(expected.intendedZone, `${what} intended zone`).toContain(actual.intendedZone);
  const interim = expected.interimSetpoint.some((one) => {
    const found = actual.interimSetpoint;
    if (one === null || found === null) return one === found;
    return Math.abs(found * unit - one) <= 1e-9 * Math.abs(one);
  });
  expect(interim, `${what} interim ${actual.interimSetpoint} ${expected.interimSetpoint.join()}`).toBe(true);
}

function sameChannel(actual: ChannelResult, planned: PlannedChannel, laid: LaidOut, { policy }: Plan): void {
  const { tag, measured, configured, uncertainty } = planned;
  if (measured === null) {
    expect(actual.verdict).toBe('incomplete');
    expect(actual.findings.map(({ rule }) => rule)).toContain('value-missing');
    expect(actual.thresholds.map(({ effective }) => effective)).toEqual([null, null]);
    expect(actual.asLeft).toBeNull();
    return;
  }
  const unit = laid.levels.get(tag)!;
  near(actual.sensitivity.configured, configured, laid.sensitivities.get(tag)!, `${tag} configured`);
  near(actual.sensitivity.measured, measured, laid.sensitivities.get(tag)!, `${tag} measured`);
  near(actual.sensitivity.uncertainty, uncertainty, 1, `${tag} uncertainty`);
  expect(Math.abs((actual.sensitivity.error ?? NaN) - (measured / configured - 1))).toBeLessThan(1e-9);
  const expected = thresholdsOf(planned, policy);
  const names = (all: readonly { name: string; multiplier: number }[]) =>
    all.map(({ name, multiplier }) => `${name} ×${multiplier}`);
  expect(names(actual.thresholds)).toEqual(names(expected));
  expected.forEach((one, index) => {
    sameThreshold(actual.thresholds[index]!, one, unit, tag);
  });
  sameAsLeft(actual, planned, laid, policy);
}

function sameAsLeft(
  { asLeft, thresholds }: ChannelResult,
  planned: PlannedChannel,
  laid: LaidOut,
  policy: Plan['policy'],
): void {
  const { tag, configured } = planned;
  const expected = asLeftOf(planned, policy);
  expect(asLeft === null, `${tag} as left`).toBe(expected === undefined);
  if (!asLeft || !expected) return;
  near(asLeft.sensitivity.measured, planned.asLeft, laid.sensitivities.get(tag)!, `${tag} as left`);
  near(asLeft.sensitivity.uncertainty, planned.asLeftUncertainty, 1, `${tag} uncertainty as left`);
  near(asLeft.gapVoltage, planned.asLeftGapVoltage, 1, `${tag} gap as left`);
  expect(Math.abs((asLeft.sensitivity.error ?? NaN) - (planned.asLeft! / configured - 1))).toBeLessThan(1e-9);
  expect(asLeft.thresholds).toHaveLength(expected.length);
  expected.forEach((one, index) => {
    const left = asLeft.thresholds[index]!;
    sameThreshold(left, one, laid.levels.get(tag)!, `${tag} as left`);
    const found = thresholds[index]!.verdict;
    const outcome =
      left.verdict === 'within' ? 'cured' : `${found === left.verdict ? 'still' : 'now'} ${left.verdict}`;
    expect(left.change).toBe(found === 'within' && left.verdict === 'within' ? 'unchanged' : outcome);
  });
}

const worstFirst = ['unreachable', 'late', 'undetermined', 'early', 'incomplete', 'within'];

function sameGroups(report: Report, { channels, policy }: Plan, laid: LaidOut): void {
  let found = 0;
  for (const name of new Set(channels.map(({ group }) => group))) {
    if (name === null) continue;
    const members = channels.filter(({ group }) => group === name);
    for (const threshold of ['danger', 'alert', 'counter danger', 'counter alert']) {
      const expected = groupOf(members, policy, threshold, Number(members[0]!.voting![0]));
      const group = report.groups.find((one) => one.name === name && one.threshold === threshold);
      expect(group === undefined, `${name} ${threshold}`).toBe(expected === undefined);
      if (!group || !expected) continue;
      found++;
      const first = members.find((member) =>
        threshold.startsWith('counter') ? counterOf(member, threshold) !== null : true,
      )!;
      const unit = laid.levels.get(first.tag)!;
      near(group.intended, expected.intended, unit, `${name} ${threshold} intended`);
      near(group.effective, expected.effective, unit, `${name} ${threshold} effective`);
      expect(group.canTrip).toBe(expected.effective !== null);
      expect(expected.decidedBy).toEqual(expect.arrayContaining([...group.decidedBy]));
      expect(group.decidedBy.length > 0).toBe(group.canTrip);
      const left = groupAsLeftOf(members, policy, threshold, Number(members[0]!.voting![0]));
      expect(group.asLeft === null, `${name} ${threshold} as left`).toBe(left === undefined);
      if (!group.asLeft || !left) continue;
      near(group.asLeft.effective, left.effective, unit, `${name} ${threshold} effective as left`);
      expect(group.asLeft.canTrip).toBe(left.effective !== null);
      expect(left.decidedBy).toEqual(expect.arrayContaining([...group.asLeft.decidedBy]));
      expect(group.asLeft.decidedBy.length > 0).toBe(group.asLeft.canTrip);
    }
  }
  expect(report.groups).toHaveLength(found);
}

function counterOf(member: PlannedChannel, threshold: string): number | null {
  return threshold === 'counter danger' ? member.counterDanger : member.counterAlert;
}

function sameReport(plan: Plan): void {
  const laid = layOut(plan);
  const report = audited(plan, laid);
  expect(report.channels).toHaveLength(plan.channels.length);
  for (const planned of plan.channels) {
    const actual = report.channels.find(({ tag }) => tag === planned.tag);
    expect(actual, planned.tag).toBeDefined();
    sameChannel(actual!, planned, laid, plan);
    if (planned.measured === null) continue;
    const verdicts = actual!.thresholds.map(({ verdict }) => worstFirst.indexOf(verdict));
    expect(actual!.verdict).toBe(worstFirst[Math.min(...verdicts)]);
  }
  const ranks = report.channels.map(({ verdict }) => worstFirst.indexOf(verdict));
  expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
  expect(report.problems.filter(({ rule }) => rule !== 'units-mixed')).toEqual([]);
  sameGroups(report, plan, laid);
}

it('every number, verdict and group of a random workbook in a random layout agrees with a second working from the formulas', () => {
  fc.assert(fc.property(plans, sameReport), { seed: 20_260_101, numRuns: 400 });
});

it('the random workbooks reach every verdict, layout and kind of channel', () => {
  const seen = new Set<string>();
  for (const plan of fc.sample(plans, { seed: 20_260_101, numRuns: 200 })) {
    seen.add(layOut(plan).what);
    for (const channel of plan.channels) {
      seen.add(channel.kind);
      if (channel.measured === null) seen.add('incomplete');
      for (const { verdict } of channel.measured === null ? [] : thresholdsOf(channel, plan.policy))
        for (const one of verdict) seen.add(one);
      for (const { verdict } of asLeftOf(channel, plan.policy) ?? [])
        for (const one of verdict) seen.add(`${one} as left`);
    }
  }
  const asLeft = worstFirst.filter((one) => one !== 'incomplete').map((one) => `${one} as left`);
  const all = [
    ...worstFirst,
    ...asLeft,
    'two sheets',
    'spreadsheet tables',
    'side by side',
    'stacked',
    'one table',
  ];
  expect([...seen]).toEqual(expect.arrayContaining([...all, 'radial', 'axial', 'velocity', 'acceleration']));
});
