import fc from 'fast-check';
import { expect, it } from 'vitest';
import { audit } from '../../../src/audit/audit.ts';
import { parsePolicy } from '../../../src/audit/model/policy.ts';
import type { ChannelResult } from '../../../src/audit/model/report.ts';
import { now } from '../golden.ts';
import { layOut, type Layout, layouts, lengths } from './layOut.ts';
import { diceOf, planned, type PlannedChannel } from './plan.ts';
import { acts, dynamicMean, work } from './working.ts';
import { runs } from '../../seed.ts';

/** To 9 digits of the number, or of what is large beside it. */
function same(actual: number | null | undefined, expected: number | null, what: string, beside = 0): void {
  if (expected === null || actual === null || actual === undefined) {
    expect(actual, what).toBe(expected);
    return;
  }
  const off = Math.abs(actual - expected);
  const allowed = 1e-9 * Math.max(Math.abs(expected), beside);
  expect(off, `${what} is ${actual}, not ${expected}`).toBeLessThanOrEqual(allowed);
}

/** The record of what was found, where a record as left counts now, and the check that counts now. */
function sameRecord(report: ChannelResult, channel: PlannedChannel, gapUnit: string): void {
  const { tag } = channel;
  const { dynamic, state } = report;
  const record = report.asFound?.record ?? report.record;
  const unit = lengths[gapUnit]!;
  const worked = work(channel);
  const perUnit = 1000 * unit;
  expect(record, tag).not.toBeNull();
  expect(record?.gapUnit).toBe(gapUnit);
  expect(record?.series).toBe(worked.record.series || 'as found');
  expect(record?.temperature).toBe(worked.record.temperature);
  expect(record?.points).toHaveLength(worked.record.points.length);
  const average = worked.average * perUnit;
  if (worked.whole) {
    same(record?.average, average, `${tag} average`);
    same(record?.averageUncertainty, worked.averageUncertainty * perUnit, `${tag} u(average)`, average);
  }
  const span = record?.span ?? { from: NaN, to: NaN };
  const off = worked.deviations(span.from * unit, span.to * unit);
  if (worked.whole) {
    same(span.from * unit, worked.record.points[0]![0], `${tag} span`, unit);
    same(span.to * unit, worked.record.points.at(-1)![0], `${tag} span`);
  }
  record?.points.forEach((point, at) => {
    const [gap, volts] = worked.record.points[at]!;
    const step = worked.incremental[at];
    same(point.gap, gap / unit, `${tag} gap ${at}`);
    same(point.volts, volts, `${tag} volts ${at}`);
    same(point.incremental, step === undefined ? null : step * perUnit, `${tag} incremental ${at}`);
    same(point.deviation, off[at]! / unit, `${tag} deviation ${at}`, gap / unit);
  });
  same(record?.operatingGap, worked.operatingGap && worked.operatingGap / unit, `${tag} operating gap`);
  const { alert, danger, multiplier } = channel;
  const multipliers = multiplier === 1 ? [1] : [1, multiplier];
  for (const [name, setpoint] of [['alert', alert] as const, ['danger', danger] as const]) {
    for (const times of multipliers) {
      const found = record?.thresholds.find((one) => one.name === name && one.multiplier === times);
      // A position that was left by a record alone has no zero to be read off it.
      const zeroGone = channel.axial && state === 'as left' && !report.asFound?.record;
      const expected = zeroGone ? undefined : acts(channel, worked, times * setpoint);
      const what = `${tag} ${name} ×${times}`;
      expect(found === undefined, what).toBe(expected === undefined);
      if (!expected) continue;
      same(found?.onCurve, expected.onCurve, `${what} on the curve`, channel.axial ? 40 : 0);
      same(found?.largestIndicated, expected.largest, `${what} largest indication`, 1);
    }
  }
  const ofCheck = dynamicMean(channel);
  // A check of what was found tells nothing of a channel that was measured again.
  const counts = state === 'as found';
  same(dynamic?.sensitivity ?? null, counts ? ofCheck && ofCheck * 25_400 : null, `${tag} check`);
  expect(dynamic?.levels ?? 0).toBe(counts ? channel.levels.length : 0);
}

/** What may be said of records that are well laid out. */
const mayBeSaid = /^(record-sorted|several-records|record-without-gap-voltage)$/u;

/** Blocks name no temperature. */
const withTemperatures: readonly Layout[] = ['long', 'long below long', 'beside the list'];

function agrees(layout: Layout): void {
  const one = fc.property(fc.gen(), (gen) => {
    const dice = diceOf(gen);
    const channels = planned(dice, withTemperatures.includes(layout));
    const { workbook, units } = layOut(channels, layout, dice);
    const report = audit(workbook, { now, policy: parsePolicy({ curve: 'linear' }) });
    expect(report.problems).toEqual([]);
    expect(report.channels).toHaveLength(channels.length);
    for (const channel of channels) {
      const found = report.channels.find(({ tag }) => tag === channel.tag)!;
      sameRecord(found, channel, units.get(channel.tag)!);
      const aboutReading = found.findings.filter(
        ({ rule }) => /^record-|^several-/u.test(rule) && !/disagrees/u.test(rule),
      );
      for (const { rule } of aboutReading) expect(rule).toMatch(mayBeSaid);
    }
  });
  fc.assert(one, { seed: 20_260_101, numRuns: runs(120) });
}

it.each(layouts)('records laid out at random, %s, give the numbers of a second working', agrees);
