import { amount, capital } from '../../model/wording.ts';
import type { Channel } from '../../model/channel.ts';
import { timesAtStartUp, type ThresholdName, type ThresholdResult } from '../../model/threshold.ts';

const columns: Readonly<Record<ThresholdName, string>> = {
  alert: 'alert',
  danger: 'danger',
  'counter alert': 'counterAlert',
  'counter danger': 'counterDanger',
};

/** Id of the settings column in which a threshold stands. */
export function columnOfThreshold(name: ThresholdName): string {
  return columns[name];
}

/** Rule names begin with the threshold they are about: `counter danger` → `counter-danger`. */
export function ruleName(name: ThresholdName, what: string): string {
  return `${name.replace(' ', '-')}-${what}`;
}

/** The start of a sentence about a threshold: `Danger 5 mil` or `Danger 5 mil × 3 at start-up`. */
export function subject({ name, setpoint, multiplier }: ThresholdResult, channel: Channel): string {
  return `${capital(name)} ${amount(setpoint ?? NaN, channel.unit.text)}${timesAtStartUp(multiplier)}`;
}
