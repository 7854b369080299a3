import { spawn, type ChildProcess } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import process from 'node:process';
import type { Ran } from './run.ts';

const root = resolve(import.meta.dirname, '../..');

/**
 * Starts the audit command as `npm run -s audit --` does, bundled, in a process group of its own; `temporary` is where
 * it keeps temporary files.
 */
export function startAudit(
  folder: string,
  args: readonly string[],
  temporary: string = tmpdir(),
): ChildProcess {
  const env: NodeJS.ProcessEnv = { ...process.env, TMPDIR: temporary };
  delete env['npm_lifecycle_event'];
  const program = [join(root, 'src/run.mjs'), 'audit'];
  return spawn(process.execPath, [...program, ...args], {
    cwd: folder,
    env,
    detached: true,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
}

/** What a started command printed and ended with. */
export function endOf(child: ChildProcess): Promise<Ran> {
  const out: Buffer[] = [];
  const err: Buffer[] = [];
  child.stdout?.on('data', (piece: Buffer) => out.push(piece));
  child.stderr?.on('data', (piece: Buffer) => err.push(piece));
  return new Promise((done) => {
    child.on('close', (code) => {
      done({ code, out: Buffer.concat(out).toString(), err: Buffer.concat(err).toString() });
    });
  });
}

/** Runs the audit command, bundled, in a folder. */
export function runFleet(folder: string, ...args: string[]): Promise<Ran> {
  return endOf(startAudit(folder, args));
}
