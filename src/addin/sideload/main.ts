import { execFileSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { SOURCE } from '../build/pageBundle.ts';
import { PANE_FILE } from '../files.ts';
import { SideloadRefused, parseOptions } from './options.ts';
import { registryBytes } from './registry.ts';
import { macFolder, steps } from './steps.ts';

/** `npm run sideload [-- --share \\server\folder]`: does what can be done on this computer, and says the rest. */
const DIST = join(SOURCE, '..', 'dist');
const MANIFEST = join(DIST, 'addin', 'manifest.xml');

try {
  const { share } = parseOptions(process.argv.slice(2));
  if (!existsSync(MANIFEST)) throw new SideloadRefused('Nothing is built yet: run "npm run build" first.');
  say(steps(MANIFEST, addressOf(readFileSync(MANIFEST, 'utf8'))));
  if (process.platform === 'darwin') copyTo(macFolder());
  if (share !== undefined) trustShare(share);
} catch (error) {
  if (!(error instanceof SideloadRefused)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 2;
}

function trustShare(share: string): void {
  const file = join(DIST, 'trust-share.reg');
  writeFileSync(file, registryBytes(share));
  say(`Written: ${file}`);
  if (process.platform !== 'win32') return;
  copyTo(share);
  execFileSync('reg', ['import', file], { stdio: 'inherit' });
}

function copyTo(folder: string): void {
  try {
    mkdirSync(folder, { recursive: true });
    copyFileSync(MANIFEST, join(folder, 'tripdrift-manifest.xml'));
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new SideloadRefused(`The manifest could not be copied to ${folder}: ${why}`);
  }
  say(`Copied the manifest to ${folder}`);
}

function addressOf(xml: string): string {
  const page = new RegExp(`DefaultValue="(https://[^"]+)/${PANE_FILE}"`).exec(xml);
  if (page?.[1] === undefined)
    throw new SideloadRefused(`${MANIFEST} names no pane: run "npm run build" again.`);
  return page[1];
}

function say(text: string): void {
  process.stdout.write(`\n${text}\n`);
}
