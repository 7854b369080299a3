// A sample of the faults that a disk and its system can show a command; all of them are for `npm run fuzz -- MINUTES`.
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { commands } from './commands.ts';
import { everyFault, faultText } from './every.ts';
import { type Fault, withFault } from './faults.ts';

const samples = 12;

let all: readonly Fault[] = [];
beforeAll(async () => {
  all = await everyFault();
});

describe('a command whose file system fails', () => {
  test('is met at every call it makes', () => {
    for (const command of commands) {
      expect(all.filter((fault) => fault.command === command).length, command.name).toBeGreaterThan(50);
    }
  });

  test('changes no input, tears no output, says so in one line and leaves nothing', async () => {
    const { seed = 0 } = fc.readConfigureGlobal();
    const chosen = fc.sample(fc.constantFrom(...all), { numRuns: samples, seed });
    const struck: string[] = [];
    for (const fault of chosen) {
      const { calls, complaints } = await withFault(fault);
      expect(complaints, faultText(fault)).toEqual([]);
      if (calls.includes('fault')) struck.push(faultText(fault));
    }
    // A process of a folder may make its calls in another order than it did when they were counted.
    expect(struck.length).toBeGreaterThan(samples * 0.7);
  }, 240_000);
});
