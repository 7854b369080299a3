import { positive } from '../range.ts';

/**
 * Error of the sensitivity as a fraction of the configured one, Km/Kc − 1. Both in one unit, above 0; `NaN`
 * otherwise. Source: definition of relative error. Example: 200 configured, 160 measured → −0.2.
 */
export function sensitivityError(configured: number, measured: number): number {
  return positive(configured) && positive(measured) ? (measured - configured) / configured : NaN;
}
