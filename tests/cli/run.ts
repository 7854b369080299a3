import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll } from 'vitest';

const root = resolve(import.meta.dirname, '../..');

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the audit command in a folder, as `npm run -s audit --` does. */
export function runAudit(folder: string, ...args: string[]): Ran {
  const program = [join(root, 'src/run.mjs'), 'audit'];
  const env = { ...process.env };
  delete env['npm_lifecycle_event'];
  const done = spawnSync(process.execPath, [...program, ...args], {
    cwd: folder,
    encoding: 'utf8',
    env,
    maxBuffer: 1 << 28,
  });
  return { code: done.status, out: done.stdout, err: done.stderr };
}

/** The demo workbook of the project. */
export const demo = join(root, 'workbooks/harbour-station.xlsx');

/** A folder of its own for a test file, removed at its end. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'tripdrift-cli-'));
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });
  return folder;
}
