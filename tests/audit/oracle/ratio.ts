/** Numerator and divisor of where something acts, with expanded uncertainties at one coverage factor (section 17). */
export interface Ratio {
  readonly a: number;
  /** Above 0. */
  readonly b: number;
  readonly ua: number;
  readonly ub: number;
  /** Covariance, on the same expanded scale. */
  readonly uab: number;
}

/** How far a value is inside its interval: (A − T·B)² ≤ u_A² − 2T·u_AB + T²u_B² there. */
function inside({ a, b, ua, ub, uab }: Ratio, t: number): boolean {
  return (a - t * b) ** 2 <= ua ** 2 - 2 * t * uab + (t * ub) ** 2;
}

/** Fieller's interval, its ends looked for by halving from its best value outwards; `null` where it has no end. */
export function intervalOf(ratio: Ratio): readonly [low: number, high: number] | null {
  if (ratio.ub >= ratio.b) return null;
  const best = ratio.a / ratio.b;
  const size = Math.max(Math.abs(best), ratio.ua / ratio.b, 1e-12);
  const [low, high] = [-1, 1].map((way) => {
    let [within, beyond] = [best, best + way * size * 1e-3];
    while (inside(ratio, beyond)) beyond += 2 * (beyond - best);
    for (let step = 0; step < 200; step++) {
      const middle = (within + beyond) / 2;
      if (inside(ratio, middle)) within = middle;
      else beyond = middle;
    }
    return within;
  });
  return [low!, high!];
}
