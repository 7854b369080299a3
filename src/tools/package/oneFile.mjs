// The command line as one file for plain Node, with everything it needs in it.
import { mkdirSync, readdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { randomBytes } from 'node:crypto';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = resolve(dirname(fileURLToPath(import.meta.url)), '../../..');

/** Where the built command line lies. */
export const oneFile = join(root, 'dist/tripdrift.mjs');

/** Packages written for an older kind of module ask for Node's own ones this way. */
const banner = 'const require = (name) => process.getBuiltinModule(name);';

/**
 * An entry of the project and all that it imports as the text of one module, and the names of the packages in it.
 * @param {string} [entry] path below the project
 * @returns {Promise<{ text: string, packages: string[] }>}
 */
export async function bundled(entry = 'src/cli/main.ts') {
  const { build } = await import('esbuild');
  const { outputFiles, metafile } = await build({
    entryPoints: [entry],
    absWorkingDir: root,
    outfile: oneFile,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    banner: { js: banner },
    legalComments: 'none',
    metafile: true,
    write: false,
    logLevel: 'error',
  });
  const inputs = Object.values(metafile.outputs).flatMap((output) => Object.keys(output.inputs));
  return { text: outputFiles[0].text, packages: [...new Set(inputs.flatMap(packageOf))] };
}

function packageOf(path) {
  const [, ...inside] = `/${path}`.split('/node_modules/');
  const name = /^(?:@[^/]+\/)?[^/]+/.exec(inside.at(-1) ?? '')?.[0];
  return name === undefined ? [] : [name];
}

/** Whether the built file is there and no source is newer. */
export function isFresh() {
  try {
    return statSync(oneFile).mtimeMs >= newestSource();
  } catch {
    return false;
  }
}

function newestSource() {
  let latest = statSync(join(root, 'package-lock.json')).mtimeMs;
  for (const item of readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true })) {
    if (item.isFile())
      latest = Math.max(latest, statSync(join(item.parentPath ?? item.path, item.name)).mtimeMs);
  }
  return latest;
}

/**
 * Puts the text of the built file in its place, whole or not at all.
 * @param {string} text
 * @throws Error of the system where that can not be written
 */
export function keep(text) {
  mkdirSync(dirname(oneFile), { recursive: true });
  const fresh = `${oneFile}.${randomBytes(16).toString('hex')}`;
  try {
    writeFileSync(fresh, text, { mode: 0o755 });
    renameSync(fresh, oneFile);
  } catch (error) {
    rmSync(fresh, { force: true });
    throw error;
  }
}
