/** Days of a Julian year. Source: IAU Style Manual 1989, 5.15 (exact by definition; from memory). */
export const DAYS_PER_YEAR = 365.25;

/** A drift per day as one per Julian year of 365.25 days; any unit. Example: 0.01 mV/mil a day → 3.6525 mV/mil a year. */
export function driftPerYear(perDay: number): number {
  return perDay * DAYS_PER_YEAR;
}
