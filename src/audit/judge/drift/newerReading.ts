import { factOf, type PlacedFact } from '../../model/findings.ts';
import { isoDate } from '../../../cells/cell.ts';
import { isSameNumber } from '../../model/sameValue.ts';
import type { Channel } from '../../model/channel.ts';
import type { ChannelReading } from './channelReadings.ts';

/**
 * Says that a history holds a later reading than the one by which the channel was judged, and another one: the verdict is
 * then of the past. Of one day what was left counts before what was found. `undefined` where there is none.
 */
export function newerReading(
  { calibratedOn, measured, configured, sensitivityUnit }: Channel,
  readings: readonly ChannelReading[],
): PlacedFact | undefined {
  if (calibratedOn === null) return undefined;
  const last = readings
    .filter(({ from, day }) => from === 'history' && day > calibratedOn)
    .toSorted((one, other) => other.day - one.day || Number(other.asLeft) - Number(one.asLeft))
    .at(0);
  if (!last || isSameNumber(last.sensitivity, measured)) return undefined;
  const { sensitivity, day, sheet, row, column } = last;
  const values = {
    sensitivity,
    on: isoDate(day),
    off: sensitivity / configured - 1,
    measured,
    calibratedOn: isoDate(calibratedOn),
    unit: sensitivityUnit.text,
  };
  return { ...factOf('history-has-newer-reading', 'warning', values), sheet, row, column };
}
