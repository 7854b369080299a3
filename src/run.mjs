// Runs a TypeScript entry of the project on plain Node: bundles it once, and again whenever a source is newer.
// node src/run.mjs src/cli/audit/main.ts [arguments …]
import {
  accessSync,
  constants,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  renameSync,
  statSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join, resolve } from 'node:path';
import process from 'node:process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { setFlagsFromString } from 'node:v8';

const root = resolve(dirname(fileURLToPath(import.meta.url)), '..');
const [entry = '', ...args] = process.argv.slice(2);

/** Time of the newest file below a folder. */
function newest(folder) {
  let latest = 0;
  for (const item of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (item.isFile())
      latest = Math.max(latest, statSync(join(item.parentPath ?? item.path, item.name)).mtimeMs);
  }
  return latest;
}

function writable(folder) {
  try {
    accessSync(folder, constants.W_OK);
    return true;
  } catch {
    return false;
  }
}

const cache = join(root, 'node_modules');
const kept = writable(cache);
const folder = kept ? join(cache, '.cache/tripdrift') : mkdtempSync(join(tmpdir(), 'tripdrift-'));
const bundle = join(folder, `${basename(dirname(entry))}-${basename(entry, '.ts')}.mjs`);
const sources = Math.max(
  newest(join(root, 'src')),
  statSync(join(root, entry)).mtimeMs,
  statSync(join(root, 'package-lock.json')).mtimeMs,
);

if (!existsSync(bundle) || statSync(bundle).mtimeMs < sources) {
  mkdirSync(folder, { recursive: true });
  const { buildSync } = await import('esbuild');
  const fresh = `${bundle}.${process.pid}`;
  buildSync({
    entryPoints: [join(root, entry)],
    outfile: fresh,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    packages: kept ? 'external' : 'bundle',
    logLevel: 'error',
  });
  renameSync(fresh, bundle);
}

// A report of 100,000 channels is a large heap that hardly changes: grow it in small steps (about 50 MB less, measured).
setFlagsFromString('--heap-growing-percent=30');

process.argv.splice(1, process.argv.length - 1, bundle, ...args);
await import(pathToFileURL(bundle).href);
