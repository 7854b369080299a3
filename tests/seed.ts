import fc from 'fast-check';

/** One seed for every random test, so that a failure comes again; `SEED=7 npm test` for other cases. */
fc.configureGlobal({ seed: Number(process.env['SEED'] ?? 20_261_125) });
