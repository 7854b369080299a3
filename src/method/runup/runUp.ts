import { onDelay } from '../onDelay.ts';

/** One point of a run-up, in order of strictly increasing speed. */
export interface RunUpPoint {
  readonly speed: number;
  /** Real amplitude. */
  readonly real: number;
  /** What the monitor shows of it. */
  readonly indicated: number;
}

/** A setpoint on a run-up; amplitudes in the unit of the setpoint, speeds in one unit. */
export interface RunUpSetpoint {
  /** Above 0. */
  readonly setpoint: number;
  /** Set-point multiplier in force below `multiplierSpeed`. */
  readonly multiplier: number;
  /** From here on the plain setpoint holds; `Infinity`: the multiplier holds throughout. */
  readonly multiplierSpeed: number;
  /** Speed run through while the alarm delay lasts: rate times delay, 0 or above. */
  readonly hold: number;
}

/** Where a setpoint acts on a run-up; speeds are `NaN` where it does not within the record. */
export interface RunUpTrip {
  readonly acts: number;
  readonly should: number;
  /** Real amplitude where it acts. */
  readonly realAtTrip: number;
  /** Largest real point, and its speed. */
  readonly peak: number;
  readonly peakSpeed: number;
}

/**
 * At which speed a setpoint acts as the monitor shows the vibration, and at which it should have acted on the real one:
 * points joined linearly, the threshold m·S below the multiplier's speed and S from it on, where it can act at once; with
 * a delay it must hold that long and acts at the end. Points in order of speed, one or more. Source: derivation.
 * Example: real 2, 4.8, 6.4 at 1500, 2000, 2500 r/min, 4 set, 160 of 200 mV → acts 2062.5, should 1857.1.
 */
export function runUpTrip(points: readonly RunUpPoint[], set: RunUpSetpoint): RunUpTrip {
  const acts = actsAt(points, ({ indicated }) => indicated, set);
  const should = actsAt(points, ({ real }) => real, set);
  let [peak, peakSpeed] = [NaN, NaN];
  for (const { speed, real } of points) if (!(real <= peak)) [peak, peakSpeed] = [real, speed];
  return { acts, should, realAtTrip: between(points, acts), peak, peakSpeed };
}

function actsAt(
  points: readonly RunUpPoint[],
  value: (point: RunUpPoint) => number,
  { setpoint, multiplier, multiplierSpeed, hold }: RunUpSetpoint,
): number {
  const last = points.at(-1)?.speed ?? 0;
  const relay = onDelay(hold, 1e-12 * last);
  const levelAt = (speed: number): number => (speed < multiplierSpeed ? multiplier * setpoint : setpoint);
  let before: RunUpPoint | undefined;
  for (const point of points) {
    const [to, end] = [point.speed, value(point)];
    let [from, start] = [before?.speed ?? NaN, before ? value(before) : NaN];
    before = point;
    if (from < multiplierSpeed && multiplierSpeed <= to) {
      const there = start + ((multiplierSpeed - from) / (to - from)) * (end - start);
      const level = multiplier * setpoint;
      relay.line(from, start, multiplierSpeed, there, level);
      relay.piece(multiplierSpeed, multiplierSpeed, there >= level);
      relay.point(multiplierSpeed, there >= setpoint);
      [from, start] = [multiplierSpeed, there];
    }
    if (from < to) relay.line(from, start, to, end, levelAt(from));
    relay.point(to, end >= levelAt(to));
  }
  return relay.acted();
}

/** Real amplitude at a speed inside the record; `NaN` elsewhere. */
function between(points: readonly RunUpPoint[], speed: number): number {
  const above = points.findIndex((point) => point.speed >= speed);
  const [to, from] = [points[above], points[above - 1]];
  if (to?.speed === speed) return to.real;
  if (!to || !from) return NaN;
  return from.real + ((speed - from.speed) / (to.speed - from.speed)) * (to.real - from.real);
}
