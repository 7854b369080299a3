import process from 'node:process';
import { AuditRefused } from '../audit/model/refused.ts';
import { FileRefused } from '../hosts/file/zip/refused.ts';
import { UsageRefused, inWords, isSystemError } from './refused.ts';
import { Stopped } from './stop.ts';
import { plain } from './terminal.ts';

/** What a name on the command line stands for. */
export interface Command {
  /** Does it; the exit code. May throw what `runCommand` puts into one line. */
  readonly run: (args: readonly string[]) => number | Promise<number>;
  /** Begins the line about an error that nobody expected. */
  readonly failed: string;
}

/**
 * Runs a command and sets the exit code: its own; 2 with one line on standard error where it was refused or failed, or
 * where what it prints can't be written; 128 and the number of the signal where the user stopped it. A reader that has
 * read enough and closes the pipe changes nothing of that.
 */
export async function runCommand({ run, failed }: Command, args: readonly string[]): Promise<void> {
  const printing = { failed: false };
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE' || printing.failed) return;
    printing.failed = true;
    process.exitCode = 2;
    process.stderr.write(`Standard output ${inWords(error, 'can not be written')}.\n`);
  });
  // Nobody is left to be told.
  process.stderr.on('error', () => undefined);
  let code: number;
  try {
    code = await run(args);
  } catch (error) {
    code = error instanceof Stopped ? error.exitCode : 2;
    process.stderr.write(`${lineOf(error, failed)}\n`);
  }
  process.exitCode = printing.failed ? 2 : code;
}

/** Why a command came to nothing, in one line for a person; what nobody expected is said to be that. */
export function lineOf(error: unknown, failed: string): string {
  if (error instanceof Stopped) return 'Stopped; nothing was written.';
  if (isSystemError(error)) return plain(`${failed}: ${inWords(error, 'the system refused')}.`, 2000);
  const expected =
    error instanceof AuditRefused || error instanceof FileRefused || error instanceof UsageRefused;
  const message = error instanceof Error ? error.message : String(error);
  return plain(expected ? message : `${failed}: ${message}`, 2000);
}

/** How a person types a command: by npm in a checkout, by its own name where the package is installed. */
export function commandAsTyped(command: 'audit' | 'calc'): string {
  return process.env['npm_lifecycle_event'] === command ? `npm run -s ${command} --` : `tripdrift ${command}`;
}
