import { readdirSync } from 'node:fs';
import type { GoldenCase } from './golden.ts';

/** Every golden case by the name of its folder. */
export async function goldenCases(): Promise<[name: string, golden: GoldenCase][]> {
  const folders = readdirSync(new URL('cases/', import.meta.url)).toSorted();
  return Promise.all(
    folders.map(async (name): Promise<[string, GoldenCase]> => {
      const { golden } = (await import(`./cases/${name}/case.ts`)) as { golden: GoldenCase };
      return [name, golden];
    }),
  );
}
