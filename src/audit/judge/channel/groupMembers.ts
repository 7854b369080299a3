import type { ThresholdName, ThresholdResult } from '../../model/threshold.ts';
import type { Channel } from '../../model/channel.ts';
import { incompleteThreshold } from '../evaluate/thresholds.ts';
import type { Member } from '../groups/members.ts';
import type { Amount } from '../../read/rows/rowReader.ts';
import type { SettingsRow } from '../../read/rows/settingsRow.ts';
import { writtenSetpoints } from './writtenSetpoints.ts';

/** An audited channel's seat in its voting group. */
export function memberOf(
  tag: string,
  row: number,
  thresholds: readonly ThresholdResult[],
  asLeft: readonly ThresholdResult[] | null,
  channel: Channel,
): Member {
  const { group, voting, bypass, limit, unit, detection } = channel;
  return { tag, row, group, voting, bypass, limit, unit, detection, thresholds, asLeft, notAudited: null };
}

/** Settings of which nothing could be worked out: a member that can't be shown to act. */
export function unaudited(settings: SettingsRow, tag: string, why: string): Member {
  const { row, group, voting, bypass, alert, danger, counterAlert, counterDanger } = settings;
  const written = writtenSetpoints(settings);
  const given = (name: ThresholdName, amount: Amount | null, sign: number) => {
    const level = written.level(amount);
    return level === null ? [] : [incompleteThreshold(name, sign * level)];
  };
  return {
    tag,
    row,
    group,
    voting,
    bypass,
    limit: null,
    unit: written.unit,
    detection: written.detection,
    asLeft: null,
    notAudited: why,
    thresholds: [
      ...given('alert', alert, 1),
      ...given('danger', danger, 1),
      ...given('counter alert', counterAlert, -1),
      ...given('counter danger', counterDanger, -1),
    ],
  };
}
