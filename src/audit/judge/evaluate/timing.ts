import {
  levelAtTripDoubling,
  levelAtTripLinear,
  lateByDoubling,
  lateByLinear,
  timeToGoDoubling,
  timeToGoLinear,
} from '../../../method/time.ts';
import type { Channel } from '../../model/channel.ts';
import { trips, type ThresholdName } from '../../model/threshold.ts';

/** A number that applies, or `null`. */
function known(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}

export interface Timing {
  readonly daysLate: number | null;
  readonly daysToGo: number | null;
  readonly levelAtTrip: number | null;
  readonly headroom: number | null;
}

const secondsADay = 86_400;

const none: Timing = { daysLate: null, daysToGo: null, levelAtTrip: null, headroom: null };

/** Days until a difference of levels is grown through evenly; 0 where it is passed already. */
function daysUntil(difference: number, rate: number): number {
  return difference > 0 ? timeToGoLinear(difference, 0, rate) : 0;
}

/**
 * Times and levels that follow from the present growth. Days; the channel's unit. Counted away from zero in the
 * setpoint's own direction; `reading` is the present real level. `null` where growth or reading is not given, where the vibration does not grow, or where a
 * growth per day and a doubling time are both given and so contradict each other.
 */
export function timing(
  channel: Channel,
  name: ThresholdName,
  intended: number,
  effective: number | null,
  reading: number | null,
): Timing {
  if (effective === null) return none;
  const sign = Math.sign(intended);
  const [meant, real] = [intended * sign, effective * sign];
  const level = reading === null ? null : reading * sign;
  const headroom = level === null ? null : real - level;
  const delay = (trips(name) ? channel.dangerDelay : channel.alertDelay) ?? 0;
  const days = delay / secondsADay;
  const { growthPerDay: rate, doublingDays: doubling } = channel;
  if (rate !== null && rate > 0 && doubling === null) {
    return {
      daysLate: known(lateByLinear(real, meant, rate)),
      daysToGo: level === null ? null : known(daysUntil(real - level, rate) + days),
      levelAtTrip: known(sign * levelAtTripLinear(real, rate, days)),
      headroom,
    };
  }
  if (doubling !== null && rate === null && real > 0) {
    return {
      daysLate: known(lateByDoubling(real, meant, doubling)),
      daysToGo: level === null ? null : known(timeToGoDoubling(real, level, doubling) + days),
      levelAtTrip: known(sign * levelAtTripDoubling(real, doubling, days)),
      headroom,
    };
  }
  return { daysLate: null, daysToGo: null, levelAtTrip: null, headroom };
}
