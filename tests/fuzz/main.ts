import process from 'node:process';
import type { Fuzzer } from './fuzzer.ts';
import { fuzzers } from './registry.ts';

/**
 * `npm run fuzz -- MINUTES [PART OF A NAME]`: runs the fuzzers, those of that name alone, for so long; `SEED=7` repeats a
 * run. Ends with 1 where something was found.
 */
const [given = '', part = ''] = process.argv.slice(2);
const minutes = Number(given);
const chosen = fuzzers.filter(({ name }) => name.includes(part));
if (!(minutes > 0) || chosen.length === 0) {
  process.stderr.write(`Give minutes above 0 and, if you like, a part of one of these names:\n`);
  for (const { name } of fuzzers) process.stderr.write(`  ${name}\n`);
  process.exit(2);
}
const seed = Number(process.env['SEED'] ?? Date.now() % 1_000_000);
process.stdout.write(`SEED=${seed}\n`);

/** Runs one fuzzer for its part of the time; what it found. */
async function run({ name, start }: Fuzzer, time: number): Promise<number> {
  const next = await start(seed);
  const end = Date.now() + time;
  let cases = 0;
  let found = 0;
  while (Date.now() < end) {
    cases++;
    const complaint = await next();
    if (complaint === undefined) continue;
    found++;
    process.stdout.write(`found: ${complaint}\n`);
  }
  process.stdout.write(`${name}: ${cases} cases, ${found} found\n`);
  return found;
}

let found = 0;
for (const fuzzer of chosen) found += await run(fuzzer, (minutes * 60_000) / chosen.length);
process.exitCode = found === 0 ? 0 : 1;
