/** Worst first. */
export const verdicts = ['unreachable', 'late', 'undetermined', 'early', 'incomplete', 'within'] as const;
export type ThresholdVerdict = (typeof verdicts)[number];

export const thresholdNames = ['danger', 'alert', 'counter danger', 'counter alert'] as const;
export type ThresholdName = (typeof thresholdNames)[number];

export type UnreachableReason =
  'above full scale' | 'out of the linear reach' | 'on the other side of zero' | 'outside the fault limits';

/** Why a member of a group can't be counted on. */
export type MemberReason =
  | UnreachableReason
  | 'in bypass'
  | 'marked faulty: its gap voltage is outside the fault limits'
  | 'its bypass mark is not understood'
  | 'its row can’t be used'
  | 'its tag is not unique'
  | 'it is not in the channel list'
  | 'no such setpoint'
  | 'not known'
  | 'its unit does not fit the group';

/** What an effective threshold can be worked out from. */
export type EvidenceName = 'listed sensitivity' | 'calibration record' | 'known vibration';

/** Why a line of evidence gives no threshold, or none that can be relied on. */
export type LineReason =
  | UnreachableReason
  | 'the record does not reach that far'
  | 'the gap voltage lies outside the record'
  | 'the measured zero lies outside the record'
  | 'its uncertainty is 100 % or more';

/** What one piece of evidence says of a threshold, in the channel's unit and detection. */
export interface LineOfEvidence {
  readonly by: EvidenceName;
  /** `null`: by this evidence it can't be shown to act. */
  readonly effective: number | null;
  readonly low: number | null;
  /** `null` without an uncertainty, and where the upper end can't be shown to act. */
  readonly high: number | null;
  readonly verdict: ThresholdVerdict;
  readonly why: LineReason | null;
  /** What the monitor shows when the shaft really moves as far as the plain setpoint, uncertainty counted; not rounded. */
  readonly panel: number | null;
}

/** Optional evidence for want of which something was not judged. */
export type NotJudged = 'reach' | 'uncertainty' | 'curve' | 'limit' | 'full scale';

/** Evidence that is there or needed and can't be used, so that a threshold can't be better than incomplete. */
export type Obstacle =
  | 'a value that can’t be used'
  | 'the record can’t be used'
  | 'the zero voltage was not measured'
  | 'the zero voltage was not measured again'
  | 'the configured zero voltage is missing'
  | 'the direction is missing'
  | 'the kind is not known'
  | 'two values contradict each other'
  | 'the bypass mark is not understood'
  | 'the detection is not known'
  | 'a sensitivity is missing'
  | 'a setpoint is missing';

/** Whether a danger acts beyond the machine's limit: `may` where the upper end of its interval does. */
export type BeyondLimit = 'no' | 'may' | 'yes';

/** What became of a threshold between as found and as left. */
export type ThresholdChange =
  | 'corrected'
  | 'unchanged'
  | `still ${Exclude<ThresholdVerdict, 'within' | 'incomplete'>}`
  | `now ${Exclude<ThresholdVerdict, 'within' | 'incomplete'>}`
  | 'not judged';

/** How widely an effective threshold is known, as a ratio of two quantities. */
export interface Spread {
  /** Of what divides (sensitivity, gain, span of a loop), a fraction of it. */
  readonly ofDivisor: number;
  /** Of the numerator (zero voltage, lower end of a loop), in the unit of the threshold. */
  readonly ofNumerator: number;
  /** Covariance of both, in the unit of the threshold; 0 but for loops. */
  readonly both: number;
}

export interface ThresholdResult {
  readonly name: ThresholdName;
  /** In the channel's unit and detection; counter-direction setpoints of an axial channel are negative. */
  readonly setpoint: number | null;
  readonly multiplier: number;
  /** By the line of evidence that governs, as are all numbers below; `null`: it can't be shown to act. */
  readonly effective: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** What the interval is made of, expanded at the policy's coverage; `null` where the value alone decides. */
  readonly spread: Spread | null;
  /** Later (+) or earlier (−) by, away from zero in the setpoint's own direction. */
  readonly shift: number | null;
  readonly shiftFraction: number | null;
  readonly verdict: ThresholdVerdict;
  readonly governedBy: EvidenceName | null;
  readonly lines: readonly LineOfEvidence[];
  readonly unreachable: readonly UnreachableReason[];
  /** Why it can't be better than incomplete. */
  readonly obstacles: readonly Obstacle[];
  readonly notJudged: readonly NotJudged[];
  /** What became of it since it was found; `null` where it was not measured again. */
  readonly change: ThresholdChange | null;
  /** S·Km/Kc by the listed sensitivity: of the plain setpoint, whatever the multiplier. */
  readonly indicatedAtSetpoint: number | null;
  /** Panel reading to treat as the plain setpoint meant, whatever the multiplier: to the early side, uncertainty counted, the least of all lines. */
  readonly panel: number | null;
  /** Setpoint to enter in the meantime; `null` where none can be offered. */
  readonly interimSetpoint: number | null;
  /** Of a danger, where a limit is given; else `null`. */
  readonly beyondLimit: BeyondLimit | null;
  readonly probabilityBeyondLimit: number | null;
  /** What the shaft really does at the present reading, by the line that puts it farthest; `null` without a reading. */
  readonly real: number | null;
  /** The real value has reached the setpoint meant and the monitor is silent; `null` without a present reading. */
  readonly alreadyThere: boolean | null;
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
  /** Expanded at the policy's coverage factor, as a fraction of the measured sensitivity. */
  readonly uncertainty: number | null;
  /** Coverage factor of that uncertainty. */
  readonly coverage: number | null;
  readonly from: 'channel list' | 'calibration record' | 'known vibration' | null;
}

/**
 * Whether the monitor acts before the panel shows what stands for the level meant, as an early one does: then there is no
 * reading to treat as it that people could see before the trip or alarm itself.
 */
export function actsFirst({
  verdict,
  panel,
  setpoint,
  multiplier,
}: Pick<ThresholdResult, 'verdict' | 'panel' | 'setpoint' | 'multiplier'>): boolean {
  if (verdict !== 'early' || multiplier !== 1 || panel === null || setpoint === null) return false;
  return Math.sign(setpoint) * (panel - setpoint) > 0;
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
