/** A reading as it was recorded: local time `YYYY-MM-DD hh:mm:ss`, and what the monitor showed, mil p-p. */
export interface RecordedReading {
  readonly time: string;
  readonly tag: string;
  readonly shown: number;
}

/** The zone by which the station's clocks go. */
export const stationZone = 'America/Chicago';

/** What a level does over minutes: it stands, climbs evenly from one minute to another, and falls as the machine runs down. */
interface Course {
  readonly tag: string;
  readonly level: number;
  readonly climbs: { readonly from: number; readonly perMinute: number };
  /** Minute from which it falls as the machine runs down, and the part that is left after each minute. */
  readonly turns: number;
  readonly left: number;
}

/** Bearing 1 of K-101: 3.2 mil, a real 4, at 23:31:20 and 4 mil at 23:38:00; danger of 1X acts a second later. */
const bearingOne: readonly Course[] = [
  { tag: 'K101-1X', level: 2.12, climbs: { from: 22 + 1 / 3, perMinute: 0.12 }, turns: 39, left: 0.8 },
  { tag: 'K101-1Y', level: 1.92, climbs: { from: 22 + 1 / 3, perMinute: 0.06 }, turns: 39, left: 0.8 },
];

/** Bearing 2 of the same machine in the next night, every five seconds. */
const bearingTwo: readonly Course[] = [
  { tag: 'K101-2X', level: 1.8, climbs: { from: 12, perMinute: 0.25 }, turns: 21.5, left: 0.8 },
  { tag: 'K101-2Y', level: 1.4, climbs: { from: 12, perMinute: 0.08 }, turns: 21.5, left: 0.8 },
];

function shownAt({ level, climbs, turns, left }: Course, minute: number): number {
  const climbed = level + climbs.perMinute * Math.max(0, Math.min(minute, turns) - climbs.from);
  return climbed * left ** Math.max(0, minute - turns);
}

function recorded(
  courses: readonly Course[],
  day: string,
  hour: number,
  minutes: number,
  perMinute: number,
): RecordedReading[] {
  const start = Date.parse(`${day}T00:00:00Z`) + hour * 3_600_000;
  return Array.from({ length: minutes * perMinute + 1 }, (_, step) => step / perMinute).flatMap((minute) =>
    courses.map((course) => ({
      time: new Date(start + Math.round(minute * 60_000)).toISOString().slice(0, 19).replace('T', ' '),
      tag: course.tag,
      shown: Number(shownAt(course, minute).toFixed(3)),
    })),
  );
}

/** Last night on K-101, every twenty seconds: bearing 1 climbed until the machine tripped. */
export const lastNight: readonly RecordedReading[] = recorded(bearingOne, '2026-11-29', 23, 45, 3);

/** What the plant's historian kept of the night before, every five seconds: bearing 2 climbed until the machine tripped. */
export const nightBefore: readonly RecordedReading[] = recorded(bearingTwo, '2026-11-28', 22, 30, 12);
