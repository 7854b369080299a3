import type { Severity } from './findings.ts';
import { trips, type ThresholdName, type ThresholdVerdict } from './threshold.ts';

/**
 * How grave a threshold's verdict is: a danger that is late, can't act, is uncertain or not known is critical, an early one
 * a warning; an alert trips nothing. `null`: it acts as set.
 */
export function severityOf(name: ThresholdName, verdict: ThresholdVerdict): Exclude<Severity, 'note'> | null {
  if (verdict === 'within') return null;
  return trips(name) && verdict !== 'early' ? 'critical' : 'warning';
}

/** Gravest first. */
export const severities: readonly Severity[] = ['critical', 'warning', 'note'];
