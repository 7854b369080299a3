import { positive } from '../range.ts';

/**
 * An expanded uncertainty brought from the coverage factor at which it was given to another, U·k/k_given, in its own
 * unit. Uncertainty 0 or above, both factors above 0; `NaN` otherwise. Source: U = k·u, JCGM 100:2008 6.2.1.
 * Example: 4.5 % at k = 3 is 3 % at k = 2.
 */
export function atCoverage(uncertainty: number, given: number, wanted: number): number {
  if (!(uncertainty >= 0) || !positive(given) || !positive(wanted)) return NaN;
  return given === wanted ? uncertainty : (uncertainty * wanted) / given;
}
