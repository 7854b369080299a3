/* eslint-disable no-loss-of-precision -- the coefficients stand as they were published, beyond double precision */

/**
 * Rational approximations of W. J. Cody, Algorithm 715: SPECFUN, ACM Trans. Math. Softw. 19 (1993) 22–30, function
 * ANORM, after his Math. Comp. 23 (1969) 631–637. Coefficients from
 * transcriptions of that routine that agree, the highest power first.
 */
const NEAR_P = [
  0.065682337918207449113, 2.2352520354606839287, 161.02823106855587881, 1067.6894854603709582,
  18154.981253343561249,
] as const;
const NEAR_Q = [
  1, 47.20258190468824187, 976.09855173777669322, 10260.932208618978205, 45507.789335026729956,
] as const;
const MIDDLE_P = [
  1.0765576773720192317e-8, 0.39894151208813466764, 8.8831497943883759412, 93.506656132177855979,
  597.27027639480026226, 2494.5375852903726711, 6848.1904505362823326, 11602.651437647350124,
  9842.7148383839780218,
] as const;
const MIDDLE_Q = [
  1, 22.266688044328115691, 235.38790178262499861, 1519.377599407554805, 6485.558298266760755,
  18615.571640885098091, 34900.952721145977266, 38912.003286093271411, 19685.429676859990727,
] as const;
const FAR_P = [
  0.02307344176494017303, 0.21589853405795699, 0.1274011611602473639, 0.022235277870649807,
  0.001421619193227893466, 2.9112874951168792e-5,
] as const;
const FAR_Q = [
  1, 1.28426009614491121, 0.468238212480865118, 0.0659881378689285515, 0.00378239633202758244,
  7.29751555083966205e-5,
] as const;

const INVERSE_ROOT_TWO_PI = 0.39894228040143267794;
/** The three ranges of the rational approximations. */
const NEAR = 0.66291;
const MIDDLE = Math.sqrt(32);
/** Beyond it the tail is less than the least double. */
const FARTHEST = 40;

/**
 * Φ(z), the standard normal distribution function: the probability of a value at or below z. Any z, no unit;
 * −Infinity → 0, Infinity → 1, `NaN` → `NaN`. Relative error about 1e-15 in both tails. Source: Cody, as named above.
 * Example: Φ(−2) = 0.02275.
 */
export function normalCdf(z: number): number {
  const size = Math.abs(z);
  if (size <= NEAR) {
    const square = z * z;
    return 0.5 + (z * polynomial(NEAR_P, square)) / polynomial(NEAR_Q, square);
  }
  const tail = size <= MIDDLE ? polynomial(MIDDLE_P, size) / polynomial(MIDDLE_Q, size) : farTail(size);
  const beyond = tail === 0 ? 0 : gaussian(size) * tail;
  return z < 0 ? beyond : 1 - beyond;
}

function farTail(size: number): number {
  if (size > FARTHEST) return 0;
  const inverseSquare = 1 / (size * size);
  const correction = (inverseSquare * polynomial(FAR_P, inverseSquare)) / polynomial(FAR_Q, inverseSquare);
  return (INVERSE_ROOT_TWO_PI - correction) / size;
}

/** exp(−z²/2), z split at a sixteenth so that its square carries no rounding into the exponential. */
function gaussian(size: number): number {
  const coarse = Math.trunc(size * 16) / 16;
  const fine = (size - coarse) * (size + coarse);
  return Math.exp(-coarse * coarse * 0.5) * Math.exp(-fine * 0.5);
}

/** Horner's scheme. */
function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (const coefficient of coefficients) sum = sum * x + coefficient;
  return sum;
}
