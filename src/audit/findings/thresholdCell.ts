import type { ThresholdName, ThresholdResult } from '../report/types.ts';
import { amount, capital } from '../report/wording.ts';
import type { Channel } from '../evaluate/channel.ts';

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

/** Whether a threshold trips the machine, rather than warning of it. */
export function trips(name: ThresholdName): boolean {
  return name.endsWith('danger');
}

/** The start of a sentence about a threshold: `Danger 5 mil` or `Danger 5 mil × 3 at start-up`. */
export function subject({ name, setpoint, multiplier }: ThresholdResult, channel: Channel): string {
  const times = multiplier === 1 ? '' : ` × ${multiplier} at start-up`;
  return `${capital(name)} ${amount(setpoint ?? NaN, channel.unit.text)}${times}`;
}
