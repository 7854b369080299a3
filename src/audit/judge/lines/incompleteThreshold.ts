import type { Obstacle, ThresholdName, ThresholdResult } from '../../model/threshold.ts';

/** A threshold of which nothing can be worked out. */
export function incompleteThreshold(
  name: ThresholdName,
  setpoint: number | null,
  obstacles: readonly Obstacle[],
): ThresholdResult {
  return {
    name,
    setpoint,
    multiplier: 1,
    effective: null,
    low: null,
    high: null,
    spread: null,
    shift: null,
    shiftFraction: null,
    verdict: 'incomplete',
    governedBy: null,
    lines: [],
    unreachable: [],
    obstacles,
    notJudged: [],
    change: null,
    indicatedAtSetpoint: null,
    panel: null,
    interimSetpoint: null,
    beyondLimit: null,
    probabilityBeyondLimit: null,
    real: null,
    alreadyThere: null,
    zone: null,
    intendedZone: null,
    daysLate: null,
    daysToGo: null,
    levelAtTrip: null,
    headroom: null,
  };
}
