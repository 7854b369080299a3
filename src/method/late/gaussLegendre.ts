/** Nodes on [−1, 1] and their weights. */
export interface Quadrature {
  readonly nodes: readonly number[];
  readonly weights: readonly number[];
}

/**
 * The n-point Gauss–Legendre rule, exact for polynomials to degree 2n − 1; n a whole number of 1 or above. Newton's
 * iteration on the Legendre polynomial from its three-term recursion. Source: Abramowitz & Stegun 25.4.29 (from memory).
 * Example: n = 2 → ±1/√3, weights 1.
 */
export function gaussLegendre(n: number): Quadrature {
  const nodes: number[] = [];
  const weights: number[] = [];
  for (let at = 0; at < n; at++) {
    let x = Math.cos((Math.PI * (n - at - 0.25)) / (n + 0.5));
    let slope = NaN;
    for (let turn = 0; turn < 8; turn++) {
      let [before, value] = [1, x];
      for (let degree = 2; degree <= n; degree++)
        [before, value] = [value, ((2 * degree - 1) * x * value - (degree - 1) * before) / degree];
      slope = (n * (x * value - before)) / (x * x - 1);
      x -= value / slope;
    }
    nodes.push(x);
    weights.push(2 / ((1 - x * x) * slope * slope));
  }
  return { nodes, weights };
}
