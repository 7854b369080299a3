import { normalCdf } from '../decision/normal.ts';
import { type Band, NO_BAND, fraction, positive } from '../range.ts';
import { type Ratio, ratioBand, ratioBeyond } from '../ratio/ratio.ts';
import { type Direction, signOf } from './position.ts';
import { axialEffective } from './threshold.ts';

/** A position setpoint with what is known of its chain; uncertainties expanded, at one coverage factor. */
export interface PositionSetpoint {
  /** Signed, not 0, in the displacement unit of the sensitivities. */
  readonly setpoint: number;
  /** mV per unit of displacement, above 0. */
  readonly configured: number;
  readonly measured: number;
  /** V. */
  readonly zeroConfigured: number;
  readonly zeroMeasured: number;
  readonly direction: Direction;
  /** Of the measured sensitivity, a fraction of it in [0, 1). */
  readonly uncertainty: number;
  /** Of the measured zero voltage, in V, 0 or above. */
  readonly zeroUncertainty: number;
}

/**
 * The effective position as the ratio of S·Kc + s·(V0c − V0m), in mV, and Km; `undefined` for an input out of range.
 * Source: as `axialEffective`; the zero voltage and the sensitivity are measured independently.
 */
export function positionRatio(of: PositionSetpoint, coverage: number): Ratio | undefined {
  const { setpoint, configured, measured, zeroConfigured, zeroMeasured, direction } = of;
  const effective = axialEffective(setpoint, configured, measured, zeroConfigured, zeroMeasured, direction);
  if (Number.isNaN(effective) || !fraction(of.uncertainty) || !positive(coverage)) return undefined;
  if (!(of.zeroUncertainty >= 0 && of.zeroUncertainty < Infinity)) return undefined;
  return {
    a: setpoint * configured + signOf(direction) * 1000 * (zeroConfigured - zeroMeasured),
    b: measured,
    ua: (1000 * of.zeroUncertainty) / coverage,
    ub: (of.uncertainty * measured) / coverage,
    uab: 0,
  };
}

/**
 * Span of the position at which a setpoint acts, with sensitivity and zero voltage both uncertain: signed, `low` ≤ `high`,
 * at the coverage factor at which both uncertainties are given. Both `NaN` for an input out of range. Source: Fieller;
 * without an uncertainty of the zero it is `axialBand`. Example: 20 mil toward, 200 configured, 190 measured, −10 and
 * −9.7 V, U 0.03, 0.1 V → 18.70 to 20.28 mil.
 */
export function uncertainZeroBand(of: PositionSetpoint, coverage: number): Band {
  const ratio = positionRatio(of, coverage);
  return ratio ? ratioBand(ratio, coverage) : NO_BAND;
}

/** How likely a position setpoint acts beyond a limit, and how likely already at rest. */
export interface PositionChances {
  readonly later: number;
  readonly atRest: number;
}

/**
 * Probabilities, 0 to 1, that a position setpoint acts beyond `limit` on its own side (above 0, its sign that of the
 * setpoint), and that it acts at rest, on the other side of zero. Both `NaN` for an input out of range. Source: as
 * `ratioBeyond`. Example: as `uncertainZeroBand`, limit 21 mil → 0.0001 later, 0 at rest.
 */
export function positionChances(of: PositionSetpoint, limit: number, coverage: number): PositionChances {
  const ratio = positionRatio(of, coverage);
  if (!ratio || !positive(limit)) return { later: NaN, atRest: NaN };
  const side = Math.sign(of.setpoint);
  const own = { ...ratio, a: side * ratio.a };
  const atRest = ratio.ua === 0 ? Number(own.a < 0) : normalCdf(-own.a / ratio.ua);
  return { later: ratioBeyond(own, limit), atRest };
}
