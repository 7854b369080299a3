import { sensitivityError } from '../../../method/vibration/sensitivityError.ts';
import type { Channel } from '../../model/channel.ts';
import { linearReachOf } from '../evaluate/reach.ts';
import { evaluateThresholds } from '../evaluate/thresholds.ts';
import { asLeftRules } from '../findings/asLeftRules.ts';
import type { Audited, Say } from '../findings/rule.ts';
import type { Chosen, Usable } from '../records/chooseRecord.ts';
import { evaluateRecord } from '../records/evaluateRecord.ts';
import { changeOf } from '../../model/change.ts';
import { sensitivityOf } from '../channel/inputs.ts';
import { channelVerdict } from '../../model/order.ts';
import type { AsLeftResult } from '../../model/report.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import type { Policy } from '../../model/policy.ts';
import { leftBetween, recordAsLeft, sayOfOtherDays } from './records.ts';
import { asLeftReadings, hasAsLeft, type AsLeftReadings } from './readings.ts';

/**
 * Judges a channel once more as it was left, by the same working as what was found, and says what became of each
 * threshold; `null` where it has no as-left readings or none that can be judged.
 */
export function judgeAsLeft(
  row: ChannelRow,
  chosen: Chosen | undefined,
  found: Audited,
  say: Say,
): AsLeftResult | null {
  const between = leftBetween(row.calibratedOn, chosen, found.today);
  const record = recordAsLeft(chosen, between);
  sayOfOtherDays(chosen, between, say);
  if (!hasAsLeft(row, record)) return null;
  const { channel: asFound, policy } = found;
  const readings = asLeftReadings(row, record, asFound, policy, say);
  if (!readings) return null;
  const channel = channelAsLeft(asFound, readings, record, policy);
  const thresholds = evaluateThresholds(channel, policy).map((threshold, index) => ({
    ...threshold,
    change: changeOf(found.thresholds[index]?.verdict ?? 'incomplete', threshold.verdict),
  }));
  asLeftRules({ found, readings, channel, thresholds }, say);
  return {
    sensitivity: sensitivityOf(channel, sensitivityError(channel.configured, channel.measured)),
    sensitivityFrom: readings.from,
    gapVoltage: readings.gapVoltage,
    linearReach: linearReachOf(channel, policy),
    thresholds,
    verdict: channelVerdict(thresholds),
  };
}

/**
 * The channel with what was read as left. What was not read again stays as found: the measured zero, which no gap voltage
 * stands for, and the gap voltage with the reach about it. The uncertainty belongs to one measurement and does not stay; nor
 * does the present reading, which was shown through the chain as found.
 */
function channelAsLeft(
  found: Channel,
  { sensitivity, uncertainty, coverage, gapVoltage }: AsLeftReadings,
  record: Usable | undefined,
  policy: Policy,
): Channel {
  const channel: Channel = {
    ...found,
    measured: sensitivity,
    uncertainty,
    coverage,
    gapVoltage: gapVoltage ?? found.gapVoltage,
    reading: null,
    recordReach: gapVoltage === null ? found.recordReach : null,
  };
  if (!record || (channel.kind !== 'radial' && channel.kind !== 'axial')) return channel;
  return { ...channel, recordReach: evaluateRecord(record, channel, policy)?.reach ?? null };
}
