import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { AddressRefused } from '../address.ts';
import { checkManifest } from '../manifest/check.ts';
import { buildAddin } from './addinBuild.ts';
import { builtFiles } from './builtFiles.ts';
import { parseOptions } from './options.ts';
import { SOURCE } from './pageBundle.ts';

/** `npm run build -- [--origin https://host.example/tripdrift] [--cdn]` */
try {
  const options = parseOptions(process.argv.slice(2));
  const folder = join(SOURCE, '..', 'dist', 'addin');
  await buildAddin(folder, options);
  const xml = readFileSync(join(folder, 'manifest.xml'), 'utf8');
  const faults = checkManifest(xml, builtFiles(folder, options.address));
  for (const { line, message } of faults) process.stderr.write(`manifest.xml line ${line}: ${message}\n`);
  process.exitCode = faults.length === 0 ? 0 : 1;
  if (faults.length === 0) process.stdout.write(`dist/addin is ready to be served at ${options.address}/\n`);
} catch (error) {
  if (!(error instanceof AddressRefused)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 2;
}
