import { positive } from './range.ts';

/** A vector of one component (1X): amplitude 0 or above, phase in degrees. */
export interface Phasor {
  readonly amplitude: number;
  readonly phase: number;
}

const DEGREE = Math.PI / 180;

/** A phase as an angle from 0 to below 360 degrees. */
function around(phase: number): number {
  const turned = phase % 360;
  const positivePhase = turned < 0 ? turned + 360 : turned;
  return positivePhase === 360 ? 0 : positivePhase;
}

/**
 * Real vibration without its runout, V·Kc/Km − R·Kc/K_R as vectors: V as shown now, R the slow-roll vector as shown when
 * the chain had the sensitivity `measuredThen`. Both vectors in one unit and detection, sensitivities above 0 in one unit;
 * amplitude and phase `NaN` otherwise. Overall values cannot be subtracted. Source: vector subtraction of one component.
 * Example: 3 at 0° less 4 at 90°, 200 configured, 160 measured → 6.25 at 306.87°.
 */
export function compensated(
  shown: Phasor,
  runout: Phasor,
  configured: number,
  measured: number,
  measuredThen: number,
): Phasor {
  const sound =
    [shown.phase, runout.phase, shown.amplitude, runout.amplitude].every(Number.isFinite) &&
    [configured, measured, measuredThen].every(positive) &&
    shown.amplitude >= 0 &&
    runout.amplitude >= 0;
  if (!sound) return { amplitude: NaN, phase: NaN };
  const [v, r] = [(shown.amplitude * configured) / measured, (runout.amplitude * configured) / measuredThen];
  // Turned so that the runout lies at 0: what is opposite or in phase keeps all its digits.
  const angle = around(shown.phase - runout.phase);
  const [along, across] = [v * cosine(angle) - r, v * sine(angle)];
  const amplitude = Math.hypot(along, across);
  return {
    amplitude,
    phase: amplitude === 0 ? 0 : around(Math.atan2(across, along) / DEGREE + around(runout.phase)),
  };
}

/** Exact at the quarters, where a rounded π would leave a rest. */
function cosine(angle: number): number {
  if (angle % 180 === 90) return 0;
  return angle === 180 ? -1 : Math.cos(angle * DEGREE);
}

function sine(angle: number): number {
  if (angle % 180 === 0) return 0;
  return angle === 270 ? -1 : Math.sin(angle * DEGREE);
}

/** How far the shaft really moves when danger acts on an uncompensated value. */
export interface RealAtDanger {
  /** At the angle given. */
  readonly real: number;
  /** Over all angles. */
  readonly least: number;
  readonly most: number;
}

/**
 * Real movement when an uncompensated value reaches its effective threshold T: −ρ·cos θ + √(T² − ρ²·sin²θ), ρ the real
 * runout R·Kc/K_R and θ its angle to the movement in degrees; between T − ρ and T + ρ. T above 0, ρ from 0 to T, one
 * unit; `NaN` otherwise. Source: law of cosines. Example: T 6.25, ρ 0.75, θ 120° → 6.591; 5.5 to 7.
 */
export function realAtDanger(threshold: number, runout: number, angle: number): RealAtDanger {
  if (!positive(threshold) || !(runout >= 0 && runout <= threshold))
    return { real: NaN, least: NaN, most: NaN };
  const [along, across] = [runout * Math.cos(angle * DEGREE), runout * Math.sin(angle * DEGREE)];
  return {
    real: Math.sqrt((threshold - across) * (threshold + across)) - along,
    least: threshold - runout,
    most: threshold + runout,
  };
}
