import { inOrder } from './inOrder.ts';
import { relay } from './relay.ts';
import { type Acts, type ReplaySetting, constantLevel } from './setting.ts';

const DAY = 86_400;

/** A reading at a spreadsheet's time, in days; `NaN` where it is unknown. */
export interface DatedReading {
  readonly day: number;
  readonly reading: number;
}

/**
 * When a setpoint acts on readings of a spreadsheet, as its times (days), in any order; delay and longest gap in s. Times
 * closer than a spreadsheet can tell apart count as one. Source: as `relay`. Example: 1, 3, 5 at 0, 10, 20 s, setpoint 4,
 * delay 3 s → 18 s, in days.
 */
export function tripTime(
  readings: readonly DatedReading[],
  setpoint: number,
  { delay, maxGap, between }: Pick<ReplaySetting, 'delay' | 'maxGap' | 'between'>,
): Acts {
  const days = readings.map(({ day }) => day);
  const origin = days.reduce((least, day) => Math.min(least, day), Infinity);
  const farthest = days.reduce((most, day) => Math.max(most, Math.abs(day)), 0);
  const slack = 4 * Number.EPSILON * Math.max(farthest, delay / DAY) * DAY;
  const watch = relay(constantLevel(setpoint), { delay, maxGap, between, slack, deadband: null });
  const samples = readings.map(({ day, reading }) => ({ time: (day - origin) * DAY, reading }));
  for (const { time, reading } of inOrder(samples)) watch.sample(time, reading);
  const { proven, earliest } = watch.acts();
  return { proven: origin + proven / DAY, earliest: origin + earliest / DAY };
}
