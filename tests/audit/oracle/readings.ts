/** How the oracle reads the method where its text allows more than one reading. */
export interface Readings {
  /** Verdict of a position that acts on the other side of zero. */
  readonly actsAtRest: 'unreachable' | 'early';
  /** Whether a record or check from before a correction still counts beside the sensitivity as left. */
  readonly foundEvidenceServesAsLeft: boolean;
  /** Whether any line of evidence beyond the machine's limit counts, or the governing one alone. */
  readonly anyLineBeyondLimit: boolean;
  /** Which line gives the real value of the present reading. */
  readonly realValueBy: 'worst line' | 'governing line';
  /** What a threshold under start-up multiplication is meant to be at, for its panel level. */
  readonly panelOfMultiplied: 'setpoint' | 'multiplied setpoint';
}

export const readings: Readings = {
  actsAtRest: 'unreachable',
  foundEvidenceServesAsLeft: false,
  anyLineBeyondLimit: true,
  realValueBy: 'worst line',
  panelOfMultiplied: 'setpoint',
};
