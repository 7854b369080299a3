import { positive } from './range.ts';

/**
 * Peak-to-peak displacement in m of a sinusoid, v/(π·f), from its 0-to-peak velocity in m/s (0 or above) and frequency
 * in Hz (above 0); `NaN` otherwise. Source: derivative of the sinusoid. Example: 4.788 mm/s at 60 Hz → 25.4 µm.
 */
export function displacementFromVelocity(velocity: number, frequency: number): number {
  return velocity >= 0 && positive(frequency) ? velocity / (Math.PI * frequency) : NaN;
}

/**
 * Peak-to-peak displacement in m of a sinusoid, 2·a/(2π·f)², from its 0-to-peak acceleration in m/s² (0 or above) and
 * frequency in Hz (above 0); `NaN` otherwise. Source: second derivative of the sinusoid.
 * Example: 1.805 m/s² at 60 Hz → 25.4 µm.
 */
export function displacementFromAcceleration(acceleration: number, frequency: number): number {
  return acceleration >= 0 && positive(frequency) ? (2 * acceleration) / (2 * Math.PI * frequency) ** 2 : NaN;
}
