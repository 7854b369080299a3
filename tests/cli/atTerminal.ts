import { spawnSync } from 'node:child_process';
import { join, resolve } from 'node:path';
import { programOf } from '../tool.ts';

const root = resolve(import.meta.dirname, '../..');

/** Keys as a terminal sends them. */
export const keys = { enter: '\r', down: '\u001b[B', interrupt: '\u0003', eraseLine: '\u0015' } as const;

export interface AtTerminal {
  readonly code: number;
  /** All that stood on the screen, without colours. */
  readonly shown: string;
  /** Steps that were done. */
  readonly done: number;
}

/** Runs the audit command in a folder at a terminal; each step waits for a text on the screen and types. Needs python3. */
export function auditAtTerminal(
  folder: string,
  args: readonly string[],
  steps: readonly (readonly [waitFor: string, type: string])[],
  environment: Readonly<Record<string, string>> = {},
): AtTerminal {
  const env: NodeJS.ProcessEnv = { ...process.env, TERM: 'xterm', NO_COLOR: '1' };
  delete env['CI'];
  delete env['npm_lifecycle_event'];
  const program = [process.execPath, join(root, 'src/run.mjs'), 'audit', ...args];
  const done = spawnSync(
    programOf('python3') ?? 'python3',
    [join(import.meta.dirname, 'atTerminal.py'), JSON.stringify({ args: program, steps })],
    { cwd: folder, encoding: 'utf8', env: { ...env, ...environment } },
  );
  if (done.status !== 0) throw new Error(`the terminal failed: ${done.stderr}`);
  return JSON.parse(done.stdout) as AtTerminal;
}
