import type { Band } from '../../../method/range.ts';
import type { Spread } from '../../../method/ratio/acting.ts';
import type { Verdict } from '../../../method/decision/verdict.ts';
import type { Channel } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import type { LineOfEvidence, ThresholdName, UnreachableReason } from '../../model/threshold.ts';

/** The order in which the thresholds of a channel are listed. */
export const inOrder: readonly ThresholdName[] = ['alert', 'danger', 'counter alert', 'counter danger'];

/** A threshold that is to be judged; `setpoint` is signed on axial channels. */
export interface Asked {
  readonly name: ThresholdName;
  readonly setpoint: number;
  readonly multiplier: number;
}

/** A line of evidence with what else is drawn from it. */
export interface Line extends LineOfEvidence {
  readonly reasons: readonly UnreachableReason[];
  /** How widely it is known where the threshold acts, expanded at the policy's coverage; `null`: the value alone decides. */
  readonly spread: Spread | null;
  /** What the shaft really does where the monitor shows this reading. */
  readonly realAt: (reading: number) => number;
}

/** A line that can be shown to act, by its verdict on the numbers and the reasons why it can't be reached. */
export function verdictOf(
  decided: Verdict,
  reasons: readonly UnreachableReason[],
): Pick<Line, 'verdict' | 'why' | 'reasons'> {
  const [why] = reasons;
  return why === undefined
    ? { verdict: decided, why: null, reasons }
    : { verdict: 'unreachable', why, reasons };
}

/** The part of an uncertainty that counts against a reading: all of it under the guarded rule, else none. */
export function counted(uncertainty: number | null, { rule }: Policy): number {
  return rule === 'guarded' && uncertainty !== null ? uncertainty : 0;
}

/** The spread of a threshold whose uncertainty is all of its sensitivity and gain. */
export function plainSpread(uncertainty: number | null): Spread | null {
  return uncertainty === null ? null : { ofDivisor: uncertainty, ofNumerator: 0, both: 0 };
}

/** Ends of a threshold's interval as its verdict takes them: `null` without a spread; `NaN` where it is too wide for any. */
export function endsOf(
  { low, high }: Band,
  spread: Spread | null,
): readonly [low: number | null, high: number | null] {
  return spread === null ? [null, null] : [low, high];
}

/** A number that applies, or `null`. */
export function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}

/** Whether a setpoint, as it acts with its multiplier, lies above what the monitor can show. */
export function isAboveFullScale({ fullScale }: Channel, { setpoint, multiplier }: Asked): boolean {
  return fullScale !== null && exceeds(Math.abs(multiplier * setpoint), fullScale);
}

/** Whether a level lies above a limit by more than the rounding of the arithmetic that led to it. */
export function exceeds(level: number, limit: number): boolean {
  return level > limit + 1e-12 * Math.abs(limit);
}

/** The setpoint of a threshold in the channel's unit; `null` where there is none. */
export function setpointOf(channel: Channel, name: ThresholdName): number | null {
  switch (name) {
    case 'alert':
      return channel.alert;
    case 'danger':
      return channel.danger;
    case 'counter alert':
      return channel.counterAlert;
    case 'counter danger':
      return channel.counterDanger;
  }
}
