import { manifestXml } from '../manifest/manifest.ts';
import { functionsMetadata } from './functionsBuild.ts';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { SOURCE } from './pageBundle.ts';

/** The manifest of this version of the project for the place where its files are served. */
export function currentManifest(address: string): string {
  const { name } = functionsMetadata(address);
  return manifestXml({ address, version: manifestVersion(), metadataFile: name });
}

/** The project's version in the four numbers of a manifest. */
function manifestVersion(): string {
  const text = readFileSync(join(SOURCE, '..', 'package.json'), 'utf8');
  const { version } = z.object({ version: z.string().regex(/^\d+\.\d+\.\d+$/) }).parse(JSON.parse(text));
  return `${version}.0`;
}
