/** Whether a level lies above a limit by more than the rounding of the arithmetic that led to it. */
export function exceeds(level: number, limit: number): boolean {
  return level > limit + 1e-12 * Math.abs(limit);
}
