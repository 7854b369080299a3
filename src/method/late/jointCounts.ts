/**
 * Joint late counts of several groups, each count capped where its group is late: `shares[index]`, the index counting
 * with the sizes as the digits of a number, the first group's count the slowest.
 */
export interface JointCounts {
  readonly sizes: readonly number[];
  readonly shares: Float64Array;
}

/** How many joint states groups of these sizes have. */
export function statesOf(sizes: readonly number[]): number {
  return sizes.reduce((product, size) => product * size, 1);
}

/** Late counts with all from `needed` on as one. */
export function capped(counts: readonly number[], needed: number): number[] {
  const shares = new Array<number>(needed + 1).fill(0);
  for (const [count, share] of counts.entries()) {
    const at = Math.min(count, needed);
    shares[at] = (shares[at] ?? 0) + share;
  }
  return shares;
}

/** Joint counts of groups that share nothing. */
export function independentJoint(groups: readonly (readonly number[])[]): JointCounts {
  const sizes = groups.map((shares) => shares.length);
  let shares: number[] = [1];
  for (const one of groups) shares = shares.flatMap((share) => one.map((other) => share * other));
  return { sizes, shares: Float64Array.from(shares) };
}

/** Joint counts of two lots of members of the same groups that share nothing: sums, capped. */
export function addedJoint({ sizes, shares }: JointCounts, other: JointCounts): JointCounts {
  const sums = new Float64Array(shares.length);
  for (const [i, share] of shares.entries()) {
    if (share === 0) continue;
    for (const [j, more] of other.shares.entries()) {
      if (more === 0) continue;
      const at = indexOfSum(i, j, sizes);
      sums[at] = (sums[at] ?? 0) + share * more;
    }
  }
  return { sizes, shares: sums };
}

function indexOfSum(one: number, other: number, sizes: readonly number[]): number {
  let index = 0;
  let stride = 1;
  for (let at = sizes.length - 1; at >= 0; at--) {
    const size = sizes[at] ?? 1;
    const sum = (Math.floor(one / stride) % size) + (Math.floor(other / stride) % size);
    index += Math.min(sum, size - 1) * stride;
    stride *= size;
  }
  return index;
}

/** The mean over all states of the product of what each group has for its count. */
export function meanOfProduct(
  { sizes, shares }: JointCounts,
  values: readonly (readonly number[])[],
): number {
  let products: number[] = [1];
  for (const [at, size] of sizes.entries()) {
    const own = Array.from({ length: size }, (_, count) => values[at]?.[count] ?? 0);
    products = products.flatMap((product) => own.map((value) => product * value));
  }
  return products.reduce((sum, product, at) => sum + product * (shares[at] ?? 0), 0);
}
