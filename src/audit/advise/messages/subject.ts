import type { ThresholdName } from '../../model/threshold.ts';
import { timesAtStartUp, trips } from '../../model/threshold.ts';
import type { OfSetpoint } from '../../model/rules/thresholdRules.ts';
import { amount, capital } from '../../model/wording.ts';

interface OfThreshold {
  readonly threshold: ThresholdName | null;
  readonly multiplier: number | null;
  readonly values: OfSetpoint;
}

/** The start of a sentence about a threshold: `Danger 5 mil` or `Danger 5 mil × 3 at start-up`. */
export function subject({ threshold, multiplier, values: { setpoint, unit } }: OfThreshold): string {
  return `${capital(threshold ?? '')} ${amount(setpoint, unit)}${timesAtStartUp(multiplier ?? 1)}`;
}

/** What a threshold does that acts too early: it trips the machine, or it warns. */
export function spurious({ threshold }: Pick<OfThreshold, 'threshold'>): string {
  return `Expect spurious ${threshold !== null && trips(threshold) ? 'trips' : 'alarms'}.`;
}
