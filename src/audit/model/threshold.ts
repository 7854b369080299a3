import type { ThresholdName } from './report.ts';

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
