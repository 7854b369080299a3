/**
 * Slopes at the points of a piecewise cubic that is monotone wherever its points are: Fritsch–Butland in the middle (a
 * harmonic mean weighted by the steps, 0 at a turn), three-point slopes kept to the data's direction at the ends. `x`
 * strictly rising, two points or more; slopes in units of y per unit of x. Source: F. N. Fritsch, J. Butland, SIAM J.
 * Sci. Stat. Comput. 5 (1984) 300–304, weights 2h_k + h_(k−1) and h_k + 2h_(k−1); ends as in the published PCHIP.
 */
export function monotoneSlopes(x: readonly number[], y: readonly number[]): number[] {
  const steps = x.slice(1).map((value, at) => value - (x[at] ?? NaN));
  const slopes = steps.map((step, at) => ((y[at + 1] ?? NaN) - (y[at] ?? NaN)) / step);
  const step = (at: number): number => steps[at] ?? NaN;
  const slope = (at: number): number => slopes[at] ?? NaN;
  if (steps.length === 1) return [slope(0), slope(0)];
  const end = steps.length - 1;
  return x.map((_, at) => {
    if (at === 0) return endSlope(step(0), step(1), slope(0), slope(1));
    if (at > end) return endSlope(step(end), step(end - 1), slope(end), slope(end - 1));
    const [before, after] = [slope(at - 1), slope(at)];
    if (!(before * after > 0)) return 0;
    const ofBefore = 2 * step(at) + step(at - 1);
    const ofAfter = step(at) + 2 * step(at - 1);
    return (ofBefore + ofAfter) / (ofBefore / before + ofAfter / after);
  });
}

function endSlope(step: number, next: number, slope: number, nextSlope: number): number {
  const three = ((2 * step + next) * slope - step * nextSlope) / (step + next);
  if (Math.sign(three) !== Math.sign(slope)) return 0;
  const turns = Math.sign(slope) !== Math.sign(nextSlope);
  return turns && Math.abs(three) > 3 * Math.abs(slope) ? 3 * slope : three;
}
