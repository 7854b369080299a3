#!/usr/bin/env node
import process from 'node:process';
import { setFlagsFromString } from 'node:v8';
import { runCommand, type Command } from './command.ts';
import { UsageRefused } from './refused.ts';

/** The commands; each is loaded when it is asked for. */
const commands: Readonly<Record<string, () => Promise<Command>>> = {
  audit: async () => (await import('./audit/command.ts')).auditProgram,
  calc: async () => (await import('./calcProgram.ts')).calcProgram,
  bench: async () => (await import('./bench.ts')).benchProgram,
};

const help = `Tripdrift: real alert and danger thresholds of machinery protection.

  tripdrift audit IN.xlsx [options]     audit a workbook
  tripdrift calc '=TRIPDRIFT.…'         work out one formula
  tripdrift bench [--port N]            the spreadsheet page, in a browser

tripdrift audit --help and tripdrift calc --help tell more.
`;

const usage: Command = {
  run([given]) {
    if (given === undefined || given === '--help' || given === '-h') {
      process.stdout.write(help);
      return 0;
    }
    throw new UsageRefused(`'${given}' is no command: choose audit, calc or bench. See --help.`);
  },
  failed: 'tripdrift failed unexpectedly',
};

// A report of 100,000 channels is a large heap that hardly changes: grow it in small steps (about 50 MB less, measured).
setFlagsFromString('--heap-growing-percent=30');

const [name = '', ...args] = process.argv.slice(2);
const load = Object.hasOwn(commands, name) ? commands[name] : undefined;
if (load) await runCommand(await load(), args);
else await runCommand(usage, process.argv.slice(2));
