/** The shape of an invented probe's curve. Gaps in mil, volts negative. */
export interface ProbeCurve {
  /** mV per mil in the middle of the range. */
  readonly sensitivity: number;
  /** V that a straight line of that sensitivity would have at no gap. */
  readonly offset: number;
  /** Part by which the sensitivity is lower at a gap of 10 mil; fades within some mil. */
  readonly nearLoss?: number;
  /** Part by which the sensitivity is lower at the largest gap that the probe still sees well. */
  readonly farLoss?: number;
  /** That gap; 90 mil where nothing else is said. */
  readonly farGap?: number;
}

const near = { gap: 10, fades: 6 } as const;
const farFades = 8;
/** Millivolts by which one reading after another is off, as of a voltmeter with a last digit of 1 mV. */
const scatter = [2, -3, 1, 4, -2, 0, -4, 3, 1, -1, 2, -2, 3, -3, 0, 1, -1] as const;

/** Gaps of a record in mil: every 5 mil from 10 to 90. */
export const recordGaps: readonly number[] = Array.from({ length: 17 }, (_, step) => 10 + 5 * step);

/** Volts read at the gaps of a record, to the millivolt; `first` lets records scatter each in its own way. */
export function readVolts(curve: ProbeCurve, first: number, gaps: readonly number[] = recordGaps): number[] {
  const { sensitivity, offset, nearLoss = 0.02, farLoss = 0.03, farGap = 90 } = curve;
  return gaps.map((gap, at) => {
    const bend =
      nearLoss * near.fades * Math.exp((near.gap - gap) / near.fades) -
      farLoss * farFades * Math.exp((gap - farGap) / farFades);
    const volts = offset - (sensitivity / 1000) * (gap + bend);
    const millivolts = Math.round(1000 * volts) + (scatter[(at + first) % scatter.length] ?? 0);
    return millivolts / 1000;
  });
}
