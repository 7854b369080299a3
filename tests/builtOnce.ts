import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { setTimeout as pause } from 'node:timers/promises';

/** Where a run of the tests keeps for its workers what was built, so that nothing is built twice. */
const kept = 'TRIPDRIFT_TEST_BUILDS';

/** Called once, before the tests are collected; what it gives removes the builds. */
export default function keepBuilds(): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'tripdrift-builds-'));
  process.env[kept] = folder;
  return () => {
    rmSync(folder, { recursive: true, force: true });
  };
}

/**
 * The folder of pages that tests look at, built by the first that asks while the others wait. Outside of a run of tests it is
 * built anew and goes with the process.
 */
export async function builtOnce(name: string, build: (folder: string) => Promise<void>): Promise<string> {
  const builds = process.env[kept];
  if (builds === undefined) {
    const alone = mkdtempSync(join(tmpdir(), `tripdrift-${name}-`));
    process.once('exit', () => {
      rmSync(alone, { recursive: true, force: true });
    });
    await build(alone);
    return alone;
  }
  const folder = join(builds, name);
  const ready = `${folder}.ready`;
  const failed = `${folder}.failed`;
  if (madeByUs(`${folder}.begun`)) {
    try {
      await build(folder);
      writeFileSync(ready, '');
    } catch (error) {
      writeFileSync(failed, '');
      throw error;
    }
  }
  while (!existsSync(ready)) {
    if (existsSync(failed))
      throw new Error(`${name} could not be built; the first file that asked for it says why`);
    await pause(100);
  }
  return folder;
}

/** Whether this worker is the first to make a folder. */
function madeByUs(folder: string): boolean {
  try {
    mkdirSync(folder);
    return true;
  } catch {
    return false;
  }
}
