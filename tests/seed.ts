import fc from 'fast-check';

/** `RUNS=20`: long random tests take no more than 20 cases, and none looks for a smaller case than the one that failed. */
const most = process.env['RUNS'];

/** One seed for every random test, so that a failure comes again; `SEED=7 npm test` for other cases. */
fc.configureGlobal({ seed: Number(process.env['SEED'] ?? 20_261_125), endOnFailure: most !== undefined });

/** How many cases a long random test takes, `usual` ones or fewer. */
export function runs(usual: number): number {
  return Math.min(usual, Number(most ?? usual));
}
