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
  let a = high;
  let b = low;
  let fa = atHigh;
  let fb = atLow;
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) return NaN;
  let part = 0.5;
  for (;;) {
    const x = a + part * (b - a);
    const fx = f(x);
    const isSameSide = Math.sign(fx) === Math.sign(fa);
    const c = isSameSide ? a : b;
    const fc = isSameSide ? fa : fb;
    if (!isSameSide) {
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;
    const isNearer = Math.abs(fa) < Math.abs(fb);
    const nearest = isNearer ? a : b;
    const value = isNearer ? fa : fb;
    const finest = (2 * Number.EPSILON * Math.abs(nearest) + Number.MIN_VALUE) / Math.abs(b - c);
    if (value === 0 || !(finest <= 0.5) || Math.abs(b - a) <= 4 * Number.EPSILON * Math.abs(nearest))
      return nearest;
    part = Math.min(1 - finest, Math.max(finest, nextPart(a, fa, b, fb, c, fc)));
  }
}

/** Part of the way from a to b of the next place to look: inverse quadratic where it is safe, half otherwise. */
function nextPart(a: number, fa: number, b: number, fb: number, c: number, fc: number): number {
  const xi = (a - b) / (c - b);
  const phi = (fa - fb) / (fc - fb);
  const safe = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
  if (!safe) return 0.5;
  return (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb));
}
