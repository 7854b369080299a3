import { fraction, positive } from '../range.ts';
import { normalCdf } from './normal.ts';

/**
 * Probability, 0 to 1, that a setpoint acts later than a limit L: Φ((m·S·Kc/L − Km)/u) with u = U·Km/k, Km taken as
 * normally distributed. Setpoint and limit in one unit, sensitivities in one unit, all above 0; `uncertainty` (expanded,
 * a fraction of Km) in [0, 1), `coverage` (k) above 0; `NaN` otherwise. With U = 0 it is 1 or 0.
 * Source: JCGM 106:2012 7.3, conformance probability for one limit.
 * Example: S 5, L 6, 200 configured, 160 measured, U 0.03, k 2 → 0.997.
 */
export function probabilityLater(
  setpoint: number,
  limit: number,
  configured: number,
  measured: number,
  uncertainty: number,
  coverage: number,
  multiplier: number,
): number {
  if (!positive(setpoint) || !positive(configured) || !positive(multiplier)) return NaN;
  return probabilityLaterOf(multiplier * setpoint * configured, limit, measured, uncertainty, coverage);
}

/**
 * The same for any threshold that is a voltage swing or step over Km: `swing` is T·Km without its sign, for position
 * channels |S·Kc + s·(V0c − V0m)|, in the voltage unit of `measured` (0 or above). Range, error and source as
 * `probabilityLater`.
 */
export function probabilityLaterOf(
  swing: number,
  limit: number,
  measured: number,
  uncertainty: number,
  coverage: number,
): number {
  if (!(swing >= 0 && swing < Infinity) || !positive(limit) || !positive(measured)) return NaN;
  if (!fraction(uncertainty) || !positive(coverage)) return NaN;
  const margin = swing / limit - measured;
  if (uncertainty === 0) return margin > 0 ? 1 : 0;
  return normalCdf((margin * coverage) / (uncertainty * measured));
}
