export const verdicts = ['unreachable', 'late', 'undetermined', 'early', 'incomplete', 'within'] as const;
/** Worst first, as `verdicts` lists them. */
export type ThresholdVerdict = (typeof verdicts)[number];

export const thresholdNames = ['danger', 'alert', 'counter danger', 'counter alert'] as const;
export type ThresholdName = (typeof thresholdNames)[number];

export type UnreachableReason = 'above full scale' | 'out of the linear reach' | 'on the other side of zero';

export interface ThresholdResult {
  readonly name: ThresholdName;
  /** In the channel's unit and detection; counter-direction setpoints of an axial channel are negative. */
  readonly setpoint: number | null;
  readonly multiplier: number;
  readonly effective: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** Later (+) or earlier (−) by, away from zero in the setpoint's own direction. */
  readonly shift: number | null;
  readonly shiftFraction: number | null;
  readonly verdict: ThresholdVerdict;
  readonly unreachable: readonly UnreachableReason[];
  readonly indicatedAtSetpoint: number | null;
  readonly interimSetpoint: number | null;
  readonly probabilityBeyondLimit: number | null;
  readonly zone: string | null;
  readonly intendedZone: string | null;
  /** Days by which it acts later at the present growth; negative: earlier. */
  readonly daysLate: number | null;
  /** Days until the real level reaches the effective threshold, alarm delay included. */
  readonly daysToGo: number | null;
  /** Real level when the relay acts, after the alarm delay. */
  readonly levelAtTrip: number | null;
  /** Real displacement left between the present real level and the effective threshold. */
  readonly headroom: number | null;
}

export interface SensitivityResult {
  readonly configured: number | null;
  readonly measured: number | null;
  readonly unit: string | null;
  /** Km/Kc − 1. */
  readonly error: number | null;
  /** Expanded, as a fraction of the measured sensitivity. */
  readonly uncertainty: number | null;
  readonly coverage: number | null;
}

/** Whether a threshold trips the machine rather than warns. */
export function trips(name: ThresholdName): boolean {
  return name.endsWith('danger');
}

/** A threshold by its name and, where there is one, its start-up multiplier: `danger × 3`. */
export function thresholdName({ name, multiplier }: Named): string {
  return multiplier === 1 ? name : `${name} × ${multiplier}`;
}

/** A start-up multiplier as it stands behind a setpoint in a sentence: ` × 3 at start-up`; nothing for the plain setpoint. */
export function timesAtStartUp(multiplier: number): string {
  return multiplier === 1 ? '' : ` × ${multiplier} at start-up`;
}

interface Named {
  readonly name: ThresholdName;
  readonly multiplier: number;
}
