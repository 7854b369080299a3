/**
 * Where a continuous function is 0 between two places at which it has different signs (or is 0), to the last digits of
 * a double; `NaN` where it has one sign at both. Source: T. R. Chandrupatla, Adv. Eng. Softw. 28 (1997) 145–149 (from
 * memory): inverse quadratic steps where they are safe, halving otherwise, always inside the bracket. `atLow` and `atHigh`
 * are the values there, for callers that know them already.
 */
export function bracketedRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  atLow = f(low),
  atHigh = f(high),
): number {
  let [a, b] = [high, low];
  let [fa, fb] = [atHigh, atLow];
  let c: number;
  let fc: number;
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) return NaN;
  let part = 0.5;
  for (;;) {
    const x = a + part * (b - a);
    const fx = f(x);
    if (Math.sign(fx) === Math.sign(fa)) [c, fc] = [a, fa];
    else [c, b, fc, fb] = [b, a, fb, fa];
    [a, fa] = [x, fx];
    const [nearest, value] = Math.abs(fa) < Math.abs(fb) ? [a, fa] : [b, fb];
    const finest = (2 * Number.EPSILON * Math.abs(nearest) + Number.MIN_VALUE) / Math.abs(b - c);
    if (value === 0 || !(finest <= 0.5) || Math.abs(b - a) <= 4 * Number.EPSILON * Math.abs(nearest))
      return nearest;
    part = Math.min(1 - finest, Math.max(finest, nextPart([a, fa], [b, fb], [c, fc])));
  }
}

type Point = readonly [x: number, y: number];

/** Part of the way from a to b of the next place to look: inverse quadratic where it is safe, half otherwise. */
function nextPart([a, fa]: Point, [b, fb]: Point, [c, fc]: Point): number {
  const xi = (a - b) / (c - b);
  const phi = (fa - fb) / (fc - fb);
  const safe = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
  if (!safe) return 0.5;
  return (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb));
}
