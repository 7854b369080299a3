import { positive } from '../range.ts';

/**
 * What the monitor shows when the shaft really moves `real`, real·Km/Kc, in the unit of `real` (0 or above). Both
 * sensitivities in one unit, above 0; `NaN` otherwise. Source: as `effectiveThreshold`.
 * Example: 5 mil real at 200 configured, 160 measured shows 4 mil.
 */
export function indicated(real: number, configured: number, measured: number): number {
  if (!(real >= 0 && real < Infinity) || !positive(configured) || !positive(measured)) return NaN;
  return (real * measured) / configured;
}
