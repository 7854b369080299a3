import { type Objective, SAME, inOrder } from './rankCorrections.ts';

/** The corrections to make first with a budget of so many. */
export interface BestCorrections {
  /** Of greedy ones in the order in which they were chosen, else by tag. */
  readonly tags: readonly string[];
  readonly left: number;
  /** Whether every set was tried, or one after the other was chosen because the sets are too many. */
  readonly how: 'every set' | 'one after the other';
}

/** More sets than this are not tried. */
const MOST_SETS = 20_000;

/**
 * The `budget` corrections (a whole number, 1 or above) that leave the objective least: every set where there are at most
 * 20 000, else greedily. Equal sets: the one whose tags come first. Fewer tags than the budget are all taken. Source:
 * exhaustive; greedy alone is not optimal in general (2oo3 late with 0.7, 0.8, 0.7, once corrected 0, 0.1, 0: greedy ends
 * at 0.07, A and C leave 0).
 */
export function bestCorrections(
  tags: readonly string[],
  budget: number,
  objective: Objective,
): BestCorrections {
  const known = inOrder(tags);
  const size = Math.min(budget, known.length);
  if (setsOf(known.length, size) > MOST_SETS) return greedyCorrections(known, size, objective);
  let best: readonly string[] = [];
  let least = Infinity;
  for (const set of sets(known, size)) {
    const left = objective(new Set(set));
    if (left < least - SAME) [best, least] = [set, left];
  }
  return { tags: best, left: least, how: 'every set' };
}

/** The same, choosing each time what helps most beside those chosen so far; equal ones by tag. */
export function greedyCorrections(
  tags: readonly string[],
  budget: number,
  objective: Objective,
): BestCorrections {
  const open = inOrder(tags);
  const chosen: string[] = [];
  let left = objective(new Set());
  while (chosen.length < budget && open.length > 0) {
    let next = 0;
    let least = Infinity;
    for (const [at, tag] of open.entries()) {
      const value = objective(new Set([...chosen, tag]));
      if (value < least - SAME) [next, least] = [at, value];
    }
    chosen.push(...open.splice(next, 1));
    left = least;
  }
  return { tags: chosen, left, how: 'one after the other' };
}

/** How many sets of `size` out of `count`; `Infinity` beyond what a double counts exactly. */
function setsOf(count: number, size: number): number {
  let product = 1;
  for (let at = 1; at <= Math.min(size, count - size); at++) product = (product * (count - at + 1)) / at;
  return product < 2 ** 53 ? Math.round(product) : Infinity;
}

/** All sets of a size, in the order of the list. */
function* sets(tags: readonly string[], size: number, from = 0): Generator<readonly string[]> {
  if (size === 0) {
    yield [];
    return;
  }
  for (let at = from; at <= tags.length - size; at++)
    for (const rest of sets(tags, size - 1, at + 1)) yield [tags[at] ?? '', ...rest];
}
