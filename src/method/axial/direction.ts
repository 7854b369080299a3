/** The shaft movement that a position channel counts as positive: towards its probe, or away from it. */
export type Direction = 'toward' | 'away';

/**
 * Sign of the gap voltage's change for positive movement: +1 towards the probe, −1 away from it. Gap voltages are
 * negative and grow more negative with the gap (common practice, no source).
 */
export function signOf(direction: Direction): 1 | -1 {
  return direction === 'toward' ? 1 : -1;
}
