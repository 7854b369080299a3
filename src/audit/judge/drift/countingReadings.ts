import { isSameNumber } from '../../model/sameValue.ts';

/** A reading in the unit of its channel. */
export interface DatedValue {
  /** Day counted from 1970-01-01. */
  readonly day: number;
  readonly sensitivity: number;
  readonly asLeft: boolean;
}

/** Readings in the order of their dates, each once, and where they begin to count. */
export interface Counting<T extends DatedValue> {
  readonly readings: readonly T[];
  /** Place of the first that counts. */
  readonly from: number;
  /** What was found before the last correction; `undefined` where there was none. */
  readonly found: T | undefined;
}

/**
 * Brings readings into the order of their dates, as found before as left, and leaves out those that repeat the value of
 * their day. The last as-left reading that differs from what was found on its day is a correction, or, where nothing was
 * found that day, from what was found last, if nothing was left since: an outage may take more than a day. The readings
 * count from it on, itself included. Of equals the first given is kept.
 */
export function countingReadings<T extends DatedValue>(all: readonly T[]): Counting<T> {
  const inOrder = all.toSorted(
    (one, other) => one.day - other.day || Number(one.asLeft) - Number(other.asLeft),
  );
  const readings: T[] = [];
  let from = 0;
  let found: T | undefined;
  let open: T | undefined;
  for (const reading of inOrder) {
    const ofDay = sameDay(readings, reading.day);
    const before = reading.asLeft ? (ofDay.findLast(({ asLeft }) => !asLeft) ?? open) : undefined;
    open = reading.asLeft ? undefined : reading;
    if (ofDay.some(({ sensitivity }) => isSameNumber(sensitivity, reading.sensitivity))) continue;
    if (before && !isSameNumber(before.sensitivity, reading.sensitivity))
      [from, found] = [readings.length, before];
    readings.push(reading);
  }
  return { readings, from, found };
}

function sameDay<T extends DatedValue>(readings: readonly T[], day: number): T[] {
  const ofDay: T[] = [];
  for (let at = readings.length - 1; at >= 0 && readings[at]?.day === day; at--) {
    const reading = readings[at];
    if (reading) ofDay.unshift(reading);
  }
  return ofDay;
}
