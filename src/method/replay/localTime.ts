/** What a local time is in UTC: ms since 1970, or why it is none. */
export type UtcTime = number | 'does not exist' | 'ambiguous';

/** A zone's offset from UTC in ms, at a time in UTC; positive east. */
export type OffsetAt = (utc: number) => number;

const QUARTER = 15 * 60_000;
const DAY = 24 * 3_600_000;

/** Whether the computer's time zone data knows a name such as `Europe/Berlin`. */
export function zoneKnown(zone: string): boolean {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: zone }).format(0) !== '';
  } catch {
    return false;
  }
}

/** The offsets of a zone that is known, from the computer's time zone data; they change at quarters of an hour alone. */
export function offsetsOf(zone: string): OffsetAt {
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
  const known = new Map<number, number>();
  return (utc) => {
    const quarter = Math.floor(utc / QUARTER) * QUARTER;
    const so = known.get(quarter);
    if (so !== undefined) return so;
    const part = new Map(format.formatToParts(quarter).map(({ type, value }) => [type, Number(value)]));
    const of = (name: Intl.DateTimeFormatPartTypes): number => part.get(name) ?? NaN;
    const wall = Date.UTC(of('year'), of('month') - 1, of('day'), of('hour'), of('minute'), of('second'));
    known.set(quarter, wall - quarter);
    return wall - quarter;
  };
}

const offsetForm = /^([+-])(\d{2})(?::?(\d{2}))?$/u;
/** Minutes; no clock is farther from UTC. */
const FARTHEST = 14 * 60;

/** `UTC`, `Z`, `GMT` or an offset such as `+01:00`, 14 hours at most, in ms; `null` for any other text. */
export function fixedOffset(text: string): number | null {
  if (/^(?:z|utc|gmt)$/iu.test(text)) return 0;
  const [, sign, hours, minutes = '0'] = offsetForm.exec(text) ?? [];
  const off = Number(hours) * 60 + Number(minutes);
  if (sign === undefined || Number(minutes) > 59 || off > FARTHEST) return null;
  return (sign === '-' ? -1 : 1) * off * 60_000;
}

/** Offsets of a zone as people name it: `UTC`, `+01:00`, `Europe/Berlin`; `null` where the name is none. */
export function offsetAtOf(zone: string): OffsetAt | null {
  const offset = fixedOffset(zone.trim());
  if (offset !== null) return () => offset;
  return zone.includes('/') && zoneKnown(zone.trim()) ? offsetsOf(zone.trim()) : null;
}

/** The times in UTC that a clock of the zone shows as this local time (ms since 1970 as if it were UTC): 0, 1 or 2. */
export function utcOf(local: number, offsetAt: OffsetAt): number[] {
  const offsets = new Set([offsetAt(local - DAY), offsetAt(local + DAY)]);
  return [...offsets]
    .map((offset) => local - offset)
    .filter((utc) => utc + offsetAt(utc) === local)
    .sort((one, other) => one - other);
}

/**
 * Local times of one file in UTC, in the order of the file. A time of the repeated hour is the first or the second one by
 * the file's ascending order: where the clock steps back within the hour, what stands before it is the first, what
 * follows the second; with no such step, or more than one, it is ambiguous. Source: calendar arithmetic with time zone
 * data. Example: 02:59:30, 02:00:00 on the last Sunday of October in Berlin → 00:59:30Z, 01:00:00Z.
 */
export function localToUtc(locals: readonly number[], offsetAt: OffsetAt): UtcTime[] {
  const candidates = locals.map((local) => utcOf(local, offsetAt));
  const times: UtcTime[] = candidates.map(([one, other]) =>
    one === undefined ? 'does not exist' : other === undefined ? one : 'ambiguous',
  );
  for (let from = 0; from < locals.length; from++) {
    if (times[from] !== 'ambiguous') continue;
    let to = from;
    while (times[to + 1] === 'ambiguous') to++;
    const steps = Array.from({ length: to - from }, (_, at) => from + at + 1).filter(
      (at) => (locals[at] ?? NaN) < (locals[at - 1] ?? NaN),
    );
    const [back] = steps;
    if (steps.length === 1 && back !== undefined)
      for (let at = from; at <= to; at++) times[at] = candidates[at]?.[at < back ? 0 : 1] ?? NaN;
    from = to;
  }
  return times;
}
