/**
 * Standard uncertainty of a product x·y of two independent quantities, first order and with the second-order term u_x²u_y²,
 * which is all there is where a best value is 0. Source: JCGM 100:2008 5.1.2 note (read). Example: 0 ± 0.5 times 10 ± 0.2
 * → 5, 5.001.
 */
export function productSpread(
  x: number,
  ux: number,
  y: number,
  uy: number,
): { readonly first: number; readonly second: number } {
  return { first: Math.hypot(y * ux, x * uy), second: Math.hypot(y * ux, x * uy, ux * uy) };
}
