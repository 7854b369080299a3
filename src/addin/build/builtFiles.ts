import { existsSync, readFileSync, statSync } from 'node:fs';
import { join, normalize, sep } from 'node:path';

/** Reads a built file by the address under which it will be served; `undefined` where the build has no such file. */
export function builtFiles(folder: string, address: string): (asked: string) => Uint8Array | undefined {
  return (asked) => {
    if (!asked.startsWith(`${address}/`)) return undefined;
    const { pathname } = new URL(asked);
    const below = normalize(
      decodeURIComponent(pathname.slice(new URL(address).pathname.replace(/\/$/, '').length)),
    );
    if (below.split(sep).includes('..')) return undefined;
    const path = join(folder, below);
    return existsSync(path) && statSync(path).isFile() ? readFileSync(path) : undefined;
  };
}
