import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { SOURCE } from './pageBundle.ts';

/** The project's version in the four numbers of a manifest. */
export function manifestVersion(): string {
  const text = readFileSync(join(SOURCE, '..', 'package.json'), 'utf8');
  const { version } = z.object({ version: z.string().regex(/^\d+\.\d+\.\d+$/) }).parse(JSON.parse(text));
  return `${version}.0`;
}
