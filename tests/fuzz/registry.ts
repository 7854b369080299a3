import { commandFaults } from '../faults/fuzzer.ts';
import { damagedFiles } from './damagedFiles.ts';
import type { Fuzzer } from './fuzzer.ts';

/** All that `npm run fuzz` runs, in turn. */
export const fuzzers: readonly Fuzzer[] = [damagedFiles, commandFaults];
