/** Tries one random thing after another until it is told to stop. */
export interface Fuzzer {
  readonly name: string;
  /** Gets ready for the cases of a seed; each call tries the next and says what is wrong with it, if anything is. */
  readonly start: (seed: number) => Promise<() => Promise<string | undefined>>;
}

/** Numbers from 0 to below 1 that follow from a seed alone. Source: mulberry32 (public domain). */
function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** The same things in an order that follows from a seed. */
export function shuffled<T>(things: readonly T[], seed: number): T[] {
  const random = randomFrom(seed);
  return things
    .map((thing) => ({ thing, key: random() }))
    .sort((one, other) => one.key - other.key)
    .map(({ thing }) => thing);
}
