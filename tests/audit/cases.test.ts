import { readdirSync } from 'node:fs';
import { describe, it } from 'vitest';
import { check, type GoldenCase } from './golden.ts';

const folder = new URL('cases/', import.meta.url);

describe('golden cases', async () => {
  for (const name of readdirSync(folder)) {
    const { golden } = (await import(`./cases/${name}/case.ts`)) as { golden: GoldenCase };
    it(`${name.replaceAll('-', ' ')}: ${golden.because}`, () => {
      check(golden);
    });
  }
});
