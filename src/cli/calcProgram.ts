import process from 'node:process';
import { calcCommand } from './calc.ts';
import type { Command } from './command.ts';

/** `calc`: works out one formula and prints its value. */
export const calcProgram: Command = {
  run(args) {
    const { out, error, exitCode } = calcCommand(args);
    process.stdout.write(out);
    process.stderr.write(error);
    return exitCode;
  },
  failed: 'calc failed unexpectedly',
};
