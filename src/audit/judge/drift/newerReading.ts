import type { Finding } from '../../model/findings.ts';
import { isoDate } from '../../../cells/cell.ts';
import { isSameNumber } from '../../model/sameValue.ts';
import type { Channel } from '../../model/channel.ts';
import { amount, percent } from '../../model/wording.ts';
import type { ChannelReading } from './channelReadings.ts';

/**
 * Says that a history holds a later reading than the one by which the channel was judged, and another one: the verdict is
 * then of the past. Of one day what was left counts before what was found. `undefined` where there is none.
 */
export function newerReading(
  { calibratedOn, measured, configured, sensitivityUnit }: Channel,
  readings: readonly ChannelReading[],
): Finding | undefined {
  if (calibratedOn === null) return undefined;
  const last = readings
    .filter(({ from, day }) => from === 'history' && day > calibratedOn)
    .toSorted((one, other) => other.day - one.day || Number(other.asLeft) - Number(one.asLeft))
    .at(0);
  if (!last || isSameNumber(last.sensitivity, measured)) return undefined;
  const level = (value: number) => amount(value, sensitivityUnit.text);
  return {
    rule: 'history-has-newer-reading',
    severity: 'warning',
    message: `The history has a newer reading: ${level(last.sensitivity)} on ${isoDate(last.day)}, ${percent(last.sensitivity / configured - 1)} off the configured sensitivity. The channel was judged by the ${level(measured)} of ${isoDate(calibratedOn)}, so its verdict may no longer hold. Enter the newer reading in the channel list and audit again.`,
    sheet: last.sheet,
    row: last.row,
    column: last.column,
  };
}
