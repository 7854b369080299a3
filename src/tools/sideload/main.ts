import { execFileSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { SOURCE } from '../addin/pageBundle.ts';
import { PANE_FILE } from '../addin/files.ts';
import { registryBytes } from './registry.ts';
import { parseArgs } from 'node:util';
import { homedir } from 'node:os';

const WINDOWS = String.raw`Windows
  1. Share a folder that you can write to, and run: npm run sideload -- --share \\server\folder
     It copies the manifest there and makes the share a trusted catalog of your Office.
  2. Close every Office program and start Excel.
  3. Home > Add-ins > More Add-ins (older: Insert > My Add-ins) > Shared Folder > Tripdrift > Add.`;

const MAC = `Mac
  1. Run: npm run sideload
     It copies the manifest to ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef
  2. Restart Excel. Insert > the small arrow beside My Add-ins > Tripdrift.`;

const WEB = `Excel on the web
  1. Open a workbook. Home > Add-ins > More Add-ins > Upload My Add-in.
  2. Choose the manifest. It stays in this browser until its data are cleared.`;

/** What a person asked of the sideloading cannot be done: one line for them. */
class SideloadRefused extends Error {
  override readonly name = 'SideloadRefused';
}

interface SideloadOptions {
  /** A network share such as `\\files\addins`. */
  readonly share?: string;
}

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

/**
 * The options of the sideload command.
 * @throws SideloadRefused where an option is unknown, or the share is no network path.
 */
export function parseOptions(args: readonly string[]): SideloadOptions {
  const { share } = parse(args);
  if (share === undefined) return {};
  if (!/^\\\\[^\\/:*?"<>|\r\n]+(\\[^\\/:*?"<>|\r\n]+)+\\?$/.test(share)) {
    throw new SideloadRefused(String.raw`--share ${share}: give a network path such as \\files\addins`);
  }
  return { share: share.replace(/\\$/, '') };
}

function parse(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], options: { share: { type: 'string' } } }).values;
  } catch (error) {
    throw new SideloadRefused(error instanceof Error ? error.message : String(error));
  }
}

/** Where Excel on a Mac looks for manifests. Source: Microsoft, "Sideload Office Add-ins on Mac for testing". */
export function macFolder(home = homedir()): string {
  return join(home, 'Library', 'Containers', 'com.microsoft.Excel', 'Data', 'Documents', 'wef');
}

/** What to do by hand, for each kind of Excel; `manifest` is the path of the built manifest. */
export function steps(manifest: string, address: string): string {
  return [
    `Manifest: ${manifest}`,
    `Its files have to be served at ${address}/ with a certificate that this computer trusts.`,
    WINDOWS,
    MAC,
    WEB,
    `Functions missing afterwards? Restart Excel once; more in ${address}/help.html#when-functions-do-not-register`,
  ].join('\n\n');
}
