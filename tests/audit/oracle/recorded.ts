/**
 * A second working of recorded readings and run-ups from the method alone (sections 18 and 19): it imports nothing of ours and
 * goes about it otherwise, by spells of time instead of a relay, and by looking densely instead of solving.
 */

/** A reading at a time in s; `null` where it is unknown. */
export type Reading = readonly [time: number, value: number | null];

type Span = readonly [from: number, to: number];

/** The spans of time, ends included, through which the value is known to be at or above the level; unknown as said. */
function spansAbove(
  readings: readonly Reading[],
  level: number,
  maxGap: number,
  unknownIsAbove: boolean,
): Span[] {
  const spans: Span[] = [];
  for (const [index, [to, end]] of readings.entries()) {
    if (index === 0) continue;
    const [from, start] = readings[index - 1]!;
    if (start === null || end === null || to - from > maxGap) {
      if (unknownIsAbove) spans.push([from, to]);
      else {
        // Known at its ends alone.
        if (start !== null && start >= level) spans.push([from, from]);
        if (end !== null && end >= level) spans.push([to, to]);
      }
      continue;
    }
    const at = start === end ? NaN : from + ((level - start) / (end - start)) * (to - from);
    if (start >= level && end >= level) spans.push([from, to]);
    else if (end >= level) spans.push([at, to]);
    else if (start >= level) spans.push([from, at]);
  }
  return spans;
}

/** When it acts: the first spell, of spans that touch, that lasts the delay. */
export function actsAt(
  readings: readonly Reading[],
  level: number,
  delay: number,
  maxGap: number,
  unknownIsAbove: boolean,
): number | null {
  // A known value below the level ends a spell of what may be above on either side of it.
  const cuts = new Set(readings.flatMap(([time, value]) => (value !== null && value < level ? [time] : [])));
  let spell: [number, number] | null = null;
  for (const [from, to] of spansAbove(readings, level, maxGap, unknownIsAbove)) {
    if (spell && from <= spell[1] + 1e-9 && !cuts.has(from)) spell[1] = Math.max(spell[1], to);
    else spell = [from, to];
    // A spell that ends in a known value below does not hold to that instant.
    const holds = cuts.has(spell[1]) ? spell[1] - 1e-6 : spell[1];
    if (holds - spell[0] >= delay - 1e-9) return spell[0] + delay;
  }
  return null;
}

/** First speed at which a curve of points, joined straight, is at or above the level; by bisection in each piece. */
export function firstSpeed(
  points: readonly (readonly [speed: number, value: number])[],
  level: number,
): number | null {
  for (const [index, [speed, value]] of points.entries()) {
    if (index === 0) {
      if (value >= level) return speed;
      continue;
    }
    const [before, from] = points[index - 1]!;
    if (value < level) continue;
    let [low, high] = [before, speed];
    for (let step = 0; step < 200; step++) {
      const middle = (low + high) / 2;
      if (from + ((middle - before) / (speed - before)) * (value - from) >= level) high = middle;
      else low = middle;
    }
    return high;
  }
  return null;
}
