/** A point of a record: s, and the reading, `NaN` where it is unknown. */
export interface TimelinePoint {
  readonly time: number;
  readonly reading: number;
}

/** Readings kept for a drawing: as many as there are while they are few, else the lowest and highest of each stretch. */
interface Thinned {
  readonly add: (time: number, reading: number) => void;
  readonly points: () => TimelinePoint[];
}

interface Stretch {
  lowAt: number;
  low: number;
  highAt: number;
  high: number;
  unknownAt: number;
}

/** Keeps at most `most` (even) stretches of equal numbers of readings. */
function thinned(most: number): Thinned {
  let stretches: Stretch[] = [];
  let [width, filled] = [1, 0];
  const halve = (): void => {
    stretches = stretches.flatMap((one, index) => {
      const next = stretches[index + 1];
      return index % 2 === 0 && next ? [joined(one, next)] : [];
    });
    width *= 2;
  };
  return {
    add: (time, reading) => {
      let last = stretches.at(-1);
      if (!last || filled === width) {
        if (stretches.length === most) halve();
        last = { lowAt: NaN, low: Infinity, highAt: NaN, high: -Infinity, unknownAt: NaN };
        stretches.push(last);
        filled = 0;
      }
      filled++;
      if (Number.isNaN(reading)) {
        if (Number.isNaN(last.unknownAt)) last.unknownAt = time;
        return;
      }
      if (reading < last.low) [last.lowAt, last.low] = [time, reading];
      if (reading > last.high) [last.highAt, last.high] = [time, reading];
    },
    points: () =>
      stretches.flatMap(({ lowAt, low, highAt, high, unknownAt }) =>
        [
          { time: lowAt, reading: low },
          ...(highAt === lowAt ? [] : [{ time: highAt, reading: high }]),
          { time: unknownAt, reading: NaN },
        ]
          .filter(({ time }) => !Number.isNaN(time))
          .sort((one, other) => one.time - other.time),
      ),
  };
}

function joined(one: Stretch, next: Stretch): Stretch {
  const low = next.low < one.low ? next : one;
  const high = next.high > one.high ? next : one;
  return {
    lowAt: low.lowAt,
    low: low.low,
    highAt: high.highAt,
    high: high.high,
    unknownAt: Number.isNaN(one.unknownAt) ? next.unknownAt : one.unknownAt,
  };
}

/** Stretches that are kept of a whole record, and of what follows the event. */
const stretches = 120;
/** Readings that are kept before the event, and after the monitor acted or the level fell again. */
const around = 60;

/** Readings about an event, kept as they go by in memory that does not grow with them. */
export interface Timeline {
  readonly sample: (time: number, reading: number) => void;
  /** The event begins: the threshold acted, or should have. */
  readonly begin: () => void;
  readonly began: () => boolean;
  /** The event is over: a few readings more are kept. */
  readonly end: () => void;
  readonly points: () => TimelinePoint[];
}

/** Keeps the readings about an event, and where there is none all of them, thinned, if `asked`. */
export function timeline(asked: boolean): Timeline {
  const whole = asked ? thinned(stretches) : null;
  const [times, readings] = [new Float64Array(around), new Float64Array(around)];
  let kept = 0;
  let after: Thinned | null = null;
  let [next, left] = [0, Infinity];
  const before = (): TimelinePoint[] =>
    Array.from({ length: kept }, (_, at) => {
      const place = (next - kept + at + around) % around;
      return { time: times[place] ?? NaN, reading: readings[place] ?? NaN };
    });
  return {
    sample: (time, reading) => {
      if (after) {
        if (left <= 0) return;
        left--;
        after.add(time, reading);
        return;
      }
      whole?.add(time, reading);
      times[next] = time;
      readings[next] = reading;
      next = (next + 1) % around;
      if (kept < around) kept++;
    },
    begin: () => {
      after ??= thinned(stretches);
    },
    began: () => after !== null,
    end: () => {
      left = Math.min(left, around);
    },
    points: () => (after ? [...before(), ...after.points()] : (whole?.points() ?? [])),
  };
}
