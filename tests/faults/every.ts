import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import process from 'node:process';
import { commands } from './commands.ts';
import { type Fault, kinds, withFault } from './faults.ts';

const root = resolve(import.meta.dirname, '../..');

/** Builds the command line anew where a source is newer. */
function buildCommands(): void {
  spawnSync(process.execPath, ['src/run.mjs', 'calc', '--help'], { cwd: root, stdio: 'ignore' });
}

/** Every fault there can be: each call of the file system that a command makes, each way in which it can fail. */
export async function everyFault(): Promise<readonly Fault[]> {
  buildCommands();
  const faults: Fault[] = [];
  for (const command of commands) {
    const { calls, complaints } = await withFault({ command, at: 0, kind: 'count' });
    if (complaints.length > 0) throw new Error(`${command.name}, without a fault: ${complaints.join('; ')}`);
    for (let at = 1; at <= calls.length; at++) {
      for (const kind of kinds) faults.push({ command, at, kind });
    }
  }
  return faults;
}

/** A fault as a person reads it. */
export function faultText({ command, at, kind }: Fault): string {
  return `${command.name}, call ${at}, ${kind}`;
}
