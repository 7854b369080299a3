import type { ThresholdResult } from '../../src/audit/model/threshold.ts';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { parsePolicy } from '../../src/audit/model/policy.ts';
import type { ChannelResult, Report } from '../../src/audit/model/report.ts';
import { now } from './golden.ts';
import { layOut, type LaidOut } from './layout.ts';
import {
  broughtTo,
  groupOf,
  isLeft,
  nowOf,
  panelsOf,
  thresholdsOf,
  type PlannedChannel,
  type Worked,
} from './oracle.ts';
import { plans, type Plan } from './planned.ts';
import { runs } from '../seed.ts';

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

function sameThreshold(
  actual: ThresholdResult,
  expected: Worked,
  resolution: number | null,
  unit: number,
  tag: string,
): void {
  const what = `${tag} ${expected.name} ×${expected.multiplier}`;
  for (const key of inLevels) near(actual[key], expected[key], unit, `${what} ${key}`);
  for (const key of plain) near(actual[key], expected[key], 1, `${what} ${key}`);
  // A difference is known only to a part of what it is the difference of.
  expect(actual.shift === null, `${what} shift`).toBe(expected.shift === null);
  const shift = (actual.shift ?? 0) * unit - (expected.shift ?? 0);
  expect(Math.abs(shift), `${what} shift`).toBeLessThanOrEqual(1e-9 * Math.abs(expected.effective ?? 0));
  expect(expected.verdict, `${what} verdict`).toContain(actual.verdict);
  expect(expected.zone, `${what} zone`).toContain(actual.zone);
  expect(expected.intendedZone, `${what} intended zone`).toContain(actual.intendedZone);
  const panels = panelsOf(expected.shown, resolution, unit);
  const onStep = panels.some((one) => {
    const found = actual.panel;
    if (one === null || found === null) return one === found;
    return Math.abs(found - one) <= 1e-9 * Math.abs(one);
  });
  expect(onStep, `${what} panel ${actual.panel}, not ${panels.join(' or ')}`).toBe(true);
  const offered = actual.verdict === 'late' && actual.multiplier === 1 && actual.panel !== null;
  const below = Math.abs(actual.panel ?? 0) <= Math.abs(actual.setpoint ?? 0);
  expect(actual.interimSetpoint, `${what} interim`).toBe(offered && below ? actual.panel : null);
}

function sameChannel(actual: ChannelResult, planned: PlannedChannel, laid: LaidOut, { policy }: Plan): void {
  const { tag, measured, configured } = planned;
  if (measured === null) {
    expect(actual.verdict).toBe('incomplete');
    expect(actual.findings.map(({ rule }) => rule)).toContain('value-missing');
    expect(actual.thresholds.map(({ effective }) => effective)).toEqual([null, null]);
    expect(actual.asFound).toBeNull();
    return;
  }
  const now = nowOf(planned);
  const sensitivity = laid.sensitivities.get(tag)!;
  expect(actual.state).toBe(isLeft(planned) ? 'as left' : 'as found');
  near(actual.sensitivity.configured, configured, sensitivity, `${tag} configured`);
  near(actual.sensitivity.measured, now.measured, sensitivity, `${tag} measured`);
  near(actual.sensitivity.uncertainty, broughtTo(now, policy), 1, `${tag} uncertainty`);
  if (now.kind === 'radial') near(actual.inputs.gapVoltage, now.gapVoltage, 1, `${tag} gap`);
  expect(Math.abs((actual.sensitivity.error ?? NaN) - (now.measured! / configured - 1))).toBeLessThan(1e-9);
  sameThresholds(actual.thresholds, now, laid, policy);
  sameAsFound(actual, planned, laid, policy);
}

function sameThresholds(
  actual: readonly ThresholdResult[],
  channel: PlannedChannel,
  laid: LaidOut,
  policy: Plan['policy'],
): void {
  const expected = thresholdsOf(channel, policy);
  const names = (all: readonly { name: string; multiplier: number }[]) =>
    all.map(({ name, multiplier }) => `${name} ×${multiplier}`);
  expect(names(actual)).toEqual(names(expected));
  expected.forEach((one, index) => {
    sameThreshold(actual[index]!, one, channel.resolution, laid.levels.get(channel.tag)!, channel.tag);
  });
}

function sameAsFound(
  { asFound, thresholds }: ChannelResult,
  planned: PlannedChannel,
  laid: LaidOut,
  policy: Plan['policy'],
): void {
  const { tag } = planned;
  expect(asFound !== null, `${tag} as found`).toBe(isLeft(planned));
  if (!asFound) return;
  near(asFound.sensitivity.measured, planned.measured, laid.sensitivities.get(tag)!, `${tag} as found`);
  near(asFound.sensitivity.uncertainty, broughtTo(planned, policy), 1, `${tag} uncertainty as found`);
  near(asFound.gapVoltage, planned.gapVoltage, 1, `${tag} gap as found`);
  sameThresholds(asFound.thresholds, planned, laid, policy);
  thresholds.forEach(({ verdict: left, change }, index) => {
    const found = asFound.thresholds[index]!.verdict;
    if (found === 'incomplete' || left === 'incomplete') expect(change).toBe('not judged');
    else if (left === 'within') expect(change).toBe(found === 'within' ? 'unchanged' : 'corrected');
    else expect(change).toBe(`${found === left ? 'still' : 'now'} ${left}`);
  });
}

const worstFirst = ['unreachable', 'late', 'undetermined', 'early', 'incomplete', 'within'];

function sameGroups(report: Report, { channels, policy }: Plan, laid: LaidOut): void {
  let found = 0;
  for (const name of new Set(channels.map(({ group }) => group))) {
    if (name === null) continue;
    const members = channels.filter(({ group }) => group === name);
    for (const threshold of ['danger', 'alert', 'counter danger', 'counter alert']) {
      const votes = Number(members[0]!.voting![0]);
      const expected = groupOf(members.map(nowOf), policy, threshold, votes);
      const group = report.groups.find(
        (one) => one.name === name && one.threshold === threshold && one.multiplier === 1,
      );
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
      const then = members.some(isLeft) ? groupOf(members, policy, threshold, votes) : undefined;
      expect(group.asFound === null, `${name} ${threshold} as found`).toBe(then === undefined);
      if (!group.asFound || !then) continue;
      near(group.asFound.effective, then.effective, unit, `${name} ${threshold} effective as found`);
      expect(group.asFound.canTrip).toBe(then.effective !== null);
      expect(then.decidedBy).toEqual(expect.arrayContaining([...group.asFound.decidedBy]));
      expect(group.asFound.decidedBy.length > 0).toBe(group.asFound.canTrip);
    }
  }
  expect(report.groups.filter(({ multiplier }) => multiplier === 1)).toHaveLength(found);
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
  const ranks = report.channels.map(({ verdict, inBypass }) =>
    inBypass === true ? 0 : worstFirst.indexOf(verdict),
  );
  expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
  expect(report.problems.filter(({ rule }) => rule !== 'units-mixed')).toEqual([]);
  expect(report.notRead).toEqual([]);
  sameGroups(report, plan, laid);
}

it('every number, verdict and group of a random workbook in a random layout agrees with a second working from the formulas', () => {
  fc.assert(fc.property(plans, sameReport), { seed: 20_260_101, numRuns: runs(400) });
}, 300_000);

it('the random workbooks reach every verdict, layout and kind of channel', () => {
  const seen = new Set<string>();
  for (const plan of fc.sample(plans, { seed: 20_260_101, numRuns: 200 })) {
    seen.add(layOut(plan).what);
    for (const channel of plan.channels) {
      seen.add(channel.kind);
      if (channel.measured === null) seen.add('incomplete');
      for (const { verdict } of channel.measured === null ? [] : thresholdsOf(channel, plan.policy))
        for (const one of verdict) seen.add(one);
      for (const { verdict } of isLeft(channel) ? thresholdsOf(nowOf(channel), plan.policy) : [])
        for (const one of verdict) seen.add(`${one} as left`);
    }
  }
  const asLeft = worstFirst.map((one) => `${one} as left`);
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
