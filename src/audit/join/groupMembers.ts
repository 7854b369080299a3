import { convert } from '../../units/convert.ts';
import { convertDetection } from '../../units/detection.ts';
import type { Detection, Unit } from '../../units/parse.ts';
import type { Channel } from '../evaluate/channel.ts';
import { incompleteThreshold } from '../evaluate/thresholds.ts';
import type { Member } from '../groups/members.ts';
import type { ThresholdName, ThresholdResult } from '../report/types.ts';
import type { Amount } from '../rows/rowReader.ts';
import type { SettingsRow } from '../rows/settingsRow.ts';

/** An audited channel's seat in its voting group. */
export function memberOf(
  tag: string,
  row: number,
  thresholds: readonly ThresholdResult[],
  channel: Channel,
): Member {
  const { group, voting, bypass, limit, unit, detection } = channel;
  return { tag, row, group, voting, bypass, limit, unit, detection, thresholds, notAudited: null };
}

/** A setpoint in the unit, and where its header names one the detection, of its row's danger; `null` where it does not fit. */
function levelIn(
  { value, unit: own }: Amount,
  unit: Unit | null,
  detection: Detection | null,
): number | null {
  if (!own || !unit) return value;
  const level = convert(value, own, unit);
  if (Number.isNaN(level)) return null;
  return own.detection && detection ? convertDetection(level, own.detection, detection) : level;
}

/** Settings of which nothing could be worked out: a member that can't be shown to act. */
export function unaudited(settings: SettingsRow, tag: string, why: string): Member {
  const { row, group, voting, bypass, alert, danger, counterAlert, counterDanger } = settings;
  const unit = danger?.unit ?? alert?.unit ?? null;
  const detection = settings.detection ?? danger?.unit?.detection ?? alert?.unit?.detection ?? null;
  const given = (name: ThresholdName, amount: Amount | null, sign: number) => {
    const level = amount && levelIn(amount, unit, settings.detection === null ? detection : null);
    return level === null ? [] : [incompleteThreshold(name, sign * level)];
  };
  return {
    tag,
    row,
    group,
    voting,
    bypass,
    limit: null,
    unit,
    detection,
    notAudited: why,
    thresholds: [
      ...given('alert', alert, 1),
      ...given('danger', danger, 1),
      ...given('counter alert', counterAlert, -1),
      ...given('counter danger', counterDanger, -1),
    ],
  };
}
