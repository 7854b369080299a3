/** A straight line y = intercept + slope·x with the uncertainties of its fit. */
export interface StraightLine {
  readonly slope: number;
  /** Standard uncertainty of the slope; `NaN` with two points, which leave no degree of freedom. */
  readonly slopeUncertainty: number;
  readonly intercept: number;
  readonly interceptUncertainty: number;
  /** Correlation of intercept and slope. */
  readonly correlation: number;
  /** Residual standard deviation, with n − 2 degrees of freedom. */
  readonly residualDeviation: number;
  readonly count: number;
  readonly meanX: number;
  /** Sum of squares of x about its mean. */
  readonly spreadX: number;
}

/**
 * Least-squares line through points, all of equal weight, with standard uncertainties and correlation. `x` and `y` in
 * any units, as many of one as of the other, at least two different x; `undefined` otherwise. Worked out about the
 * mean of x, which keeps its digits. Source: JCGM 100:2008 H.3, eq. (H.13a) to (H.13g).
 * Example: (1, 3.3), (2, 5.6), (3, 7.1), (4, 9.3), (5, 10.7), (6, 12.1) → slope 1.757, intercept 1.867.
 */
export function straightLine(x: readonly number[], y: readonly number[]): StraightLine | undefined {
  const count = x.length;
  if (count !== y.length || count < 2) return undefined;
  const meanX = mean(x);
  const meanY = mean(y);
  let spreadX = 0;
  let product = 0;
  for (const [at, value] of x.entries()) {
    const off = value - meanX;
    spreadX += off * off;
    product += off * ((y[at] ?? NaN) - meanY);
  }
  if (!(spreadX > 0) || !Number.isFinite(product)) return undefined;
  const slope = product / spreadX;
  const intercept = meanY - slope * meanX;
  const squares = x.reduce((sum, value, at) => {
    const off = (y[at] ?? NaN) - meanY - slope * (value - meanX);
    return sum + off * off;
  }, 0);
  const residualDeviation = count > 2 ? Math.sqrt(squares / (count - 2)) : NaN;
  const squaresOfX = spreadX / count + meanX * meanX;
  return {
    slope,
    slopeUncertainty: residualDeviation / Math.sqrt(spreadX),
    intercept,
    interceptUncertainty: residualDeviation * Math.sqrt(squaresOfX / spreadX),
    correlation: -meanX / Math.sqrt(squaresOfX),
    residualDeviation,
    count,
    meanX,
    spreadX,
  };
}

/**
 * Standard uncertainty of the line at `x`, in the unit of y: of the line itself, or with `reading` of one further
 * reading there. Source: JCGM 100:2008 H.3.4, eq. (H.15), in the form about the mean of x (H.3.5).
 */
export function lineUncertainty(line: StraightLine, x: number, reading = false): number {
  const off = x - line.meanX;
  const share = 1 / line.count + (off * off) / line.spreadX + (reading ? 1 : 0);
  return line.residualDeviation * Math.sqrt(share);
}

/** The mean, with the rounding of the sum taken back once. */
function mean(values: readonly number[]): number {
  const first = values.reduce((sum, value) => sum + value, 0) / values.length;
  return first + values.reduce((sum, value) => sum + (value - first), 0) / values.length;
}
