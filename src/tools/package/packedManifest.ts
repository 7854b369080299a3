import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** Where the checkout's own package.json waits while a package is made. */
const aside = 'package.checkout.json';

/** package.json without the packages that are in the built files already: whoever installs them fetches nothing. */
function packedManifest(text: string): string {
  const manifest = JSON.parse(text) as Record<string, unknown>;
  const bundled = new Set(['dependencies', 'devDependencies', 'optionalDependencies']);
  const rest = Object.fromEntries(Object.entries(manifest).filter(([name]) => !bundled.has(name)));
  return `${JSON.stringify(rest, null, 2)}\n`;
}

/** Puts the package.json that goes into the package in place of the checkout's, which is kept beside it. */
export function swapManifest(root: string): void {
  // One that was not put back after an earlier run, which was ended, is the checkout's.
  restoreManifest(root);
  const path = join(root, 'package.json');
  const text = readFileSync(path, 'utf8');
  writeFileSync(join(root, aside), text);
  const packed = join(root, 'package.packed.json');
  writeFileSync(packed, packedManifest(text));
  renameSync(packed, path);
}

/** Puts the checkout's package.json back. */
export function restoreManifest(root: string): void {
  const kept = join(root, aside);
  if (existsSync(kept)) renameSync(kept, join(root, 'package.json'));
}
