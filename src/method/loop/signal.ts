/** What a loop current says before it says a value. */
export type LoopSignal = 'failure' | 'undefined band' | 'measurement';

/**
 * Meaning of a loop current in mA: at most 3.6 or at least 21 a failure, 3.8 to 20.5 a measurement, between them
 * neither. `undefined` where the current is not a number. Source: NAMUR NE 43 (3.6 and 21 second-hand, 3.8 and 20.5
 * from memory). Example: 3.5 mA → failure.
 */
export function loopSignal(current: number): LoopSignal | undefined {
  if (Number.isNaN(current)) return undefined;
  if (current <= 3.6 || current >= 21) return 'failure';
  return current >= 3.8 && current <= 20.5 ? 'measurement' : 'undefined band';
}
