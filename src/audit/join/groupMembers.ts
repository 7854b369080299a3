import type { Channel } from '../evaluate/channel.ts';
import type { Member } from '../groups/members.ts';
import { thresholdNames, type ThresholdName, type ThresholdResult } from '../report/types.ts';
import type { SettingsRow } from '../rows/settingsRow.ts';

/** An audited channel's seat in its voting group. Thresholds count without the start-up multiplier. */
export function memberOf(tag: string, thresholds: readonly ThresholdResult[], channel: Channel): Member {
  return {
    tag,
    group: channel.group,
    voting: channel.voting,
    bypass: channel.bypass,
    limit: channel.limit,
    unit: channel.unit,
    detection: channel.detection,
    notAudited: null,
    thresholds:
      channel.group === '' ? [] : thresholds.filter((threshold) => threshold.multiplier === 1).map(seatOf),
  };
}

function seatOf({
  name,
  setpoint,
  effective,
  verdict,
  unreachable,
}: ThresholdResult): Member['thresholds'][number] {
  const acts = verdict !== 'unreachable' && verdict !== 'incomplete';
  return {
    name,
    setpoint,
    effective: acts ? effective : null,
    why: acts ? null : (unreachable[0] ?? 'not known'),
  };
}

/** Settings of which nothing could be worked out: a member that can't be shown to act. */
export function unaudited(settings: SettingsRow, tag: string, why: string): Member {
  const given: Readonly<Record<ThresholdName, number | null>> = {
    alert: settings.alert?.value ?? null,
    danger: settings.danger?.value ?? null,
    'counter alert': settings.counterAlert ? -settings.counterAlert.value : null,
    'counter danger': settings.counterDanger ? -settings.counterDanger.value : null,
  };
  return {
    tag,
    group: settings.group,
    voting: settings.voting,
    bypass: settings.bypass,
    limit: null,
    unit: settings.danger?.unit ?? settings.alert?.unit ?? null,
    detection: settings.detection,
    notAudited: why,
    thresholds: thresholdNames.flatMap((name) =>
      given[name] === null ? [] : [{ name, setpoint: given[name], effective: null, why }],
    ),
  };
}
