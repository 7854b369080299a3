import type { ThresholdResult } from '../../audit/model/threshold.ts';
import type { ChannelResult } from '../../audit/model/report.ts';
import { roundToEarlySide } from '../../method/roundToEarlySide.ts';
import { decimalsFor } from '../look/significant.ts';
import { zeroShift } from '../results/workings.ts';
import { isAxial } from '../results/column.ts';
import type { Line } from '../results/line.ts';

/** Real displacement by which a moved zero shifts every threshold of a channel, in its unit; 0 where there is none. */
export function zeroShiftOf(line: Line): number {
  return isAxial(line) ? (zeroShift(line) ?? 0) : 0;
}

/**
 * What the panel shows when the shaft really reaches the level that a threshold was meant for, m·S: (m·S − Z)·Km/Kc in
 * the channel's unit, Z the shift of the zero. `null` where the threshold was not worked out or the panel's number can't
 * be leaned on: above its full scale, out of the linear reach, or off the measured curve.
 * Example: 5 mil at 200 configured, 160 measured → 4 mil.
 */
export function onPanel(line: Line): number | null {
  const { channel, threshold, worked } = line;
  const { configured, measured } = channel.sensitivity;
  if (!worked || configured === null || measured === null || threshold.setpoint === null) return null;
  if (threshold.unreachable.some((why) => why !== 'on the other side of zero')) return null;
  if (leavesCurve(channel, threshold)) return null;
  const shown = ((threshold.multiplier * threshold.setpoint - zeroShiftOf(line)) * measured) / configured;
  const { fullScale } = channel.inputs;
  return fullScale !== null && Math.abs(shown) > fullScale ? null : shown;
}

/** Whether the measured curve of the chain says otherwise than its one sensitivity. */
function leavesCurve({ findings }: ChannelResult, { name }: ThresholdResult): boolean {
  const about = `${name.replace(' ', '-')}-curve-`;
  return findings.some(({ rule }) => rule.startsWith(about));
}

/**
 * A number of the panel's that is reached no later than the level it stands for, in three or so digits. `sign` is that of
 * the setpoint: a panel that counts down towards a negative one is rounded up.
 */
export function roundedForPanel(shown: number, sign: number): number {
  const step = 10 ** -Math.max(0, decimalsFor(shown) - 1);
  if (shown * sign >= 0) return roundToEarlySide(shown, step);
  return Number((sign * Math.floor((sign * shown) / step) * step).toPrecision(12));
}
