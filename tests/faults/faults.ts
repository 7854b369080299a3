import { spawn } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import process from 'node:process';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { layInputs, notWithin, type FaultyCommand } from './commands.ts';

export const kinds = ['ENOSPC', 'EIO', 'EACCES', 'EMFILE', 'kill'] as const;
type Kind = (typeof kinds)[number];

export interface Fault {
  readonly command: FaultyCommand;
  /** Which call of the file system, counted from 1. */
  readonly at: number;
  readonly kind: Kind | 'count';
}

export interface Outcome {
  /** Names of the calls in the order in which they came; `fault` behind the one that failed. */
  readonly calls: readonly string[];
  /** What went wrong but for the fault; none where the command bore it well. */
  readonly complaints: readonly string[];
}

const root = resolve(import.meta.dirname, '../..');
const oneFile = join(root, 'dist/tripdrift.mjs');
const inject = join(import.meta.dirname, 'inject.mjs');

/** Runs a command in a folder of its own with a fault, and looks at what became of its files. */
export async function withFault(fault: Fault): Promise<Outcome> {
  const folder = mkdtempSync(join(tmpdir(), 'tripdrift-faults-'));
  try {
    return await outcomeIn(folder, fault);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function outcomeIn(folder: string, { command, at, kind }: Fault): Promise<Outcome> {
  const { args, inputs, outputs, within } = command;
  layInputs(folder);
  const temporary = join(folder, 'temporary');
  mkdirSync(temporary);
  for (const [name, earlier] of Object.entries(outputs)) {
    if (earlier !== null) writeFileSync(join(folder, name), earlier);
  }
  const before = new Map(inputs.map((name) => [name, readFileSync(join(folder, name))]));
  const log = join(folder, 'calls');
  const where = within === undefined ? { without: notWithin } : { within };
  const env: NodeJS.ProcessEnv = {
    ...process.env,
    TMPDIR: temporary,
    FAULT: JSON.stringify({ at, kind, log, ...where }),
  };
  delete env['npm_lifecycle_event'];
  const ended = await run(folder, ['--import', inject, oneFile, 'audit', ...args], env);
  const calls = existsSync(log) ? readFileSync(log, 'utf8').split('\n').slice(0, -1) : [];
  const struck = calls.includes('fault');

  const complaints: string[] = [];
  const changed = inputs.filter((name) => !before.get(name)?.equals(readFileSync(join(folder, name))));
  complaints.push(...changed.map((name) => `the input ${name} was changed`));

  const states = Object.entries(outputs).map(
    ([name, earlier]) => [name, stateOf(join(folder, name), earlier)] as const,
  );
  complaints.push(...states.filter(([, state]) => state === 'torn').map(([name]) => `${name} is torn`));
  const killedHere = kind === 'kill' && struck && within === undefined;
  const isFleet = args[0] === 'plant';
  const fresh = states.filter(([, state]) => state === 'new').length;
  if (!isFleet && !killedHere && fresh > 0 && fresh < states.length) {
    complaints.push(
      `some outputs are new and some are not: ${states.map((one) => one.join(' ')).join(', ')}`,
    );
  }
  if (killedHere) return { calls, complaints };

  const failedRemoval = struck && /^(rm|unlink)/u.test(calls[calls.indexOf('fault') - 1] ?? '');
  const left = [...readdirSync(folder, { recursive: true }).map(String)].filter(
    (name) => name.endsWith('.part') || name.startsWith('temporary/'),
  );
  if (left.length > 0 && !failedRemoval) complaints.push(`left behind: ${left.join(', ')}`);

  if (ended.code === command.passes) {
    if (fresh < states.length) complaints.push('ended well without all of its outputs');
    if (ended.err !== '' && !struck) complaints.push(`said: ${ended.err}`);
  } else if (ended.code !== 2) complaints.push(`ended with ${String(ended.code)}: ${ended.err}`);
  else if (!isFleet || ended.out === '') {
    if (!/^[^\n]+\n$/u.test(ended.err)) complaints.push(`no plain line: ${JSON.stringify(ended.err)}`);
    if (/unexpectedly|injected|\bat .*:\d+:\d+/u.test(ended.err)) complaints.push(`not plain: ${ended.err}`);
  }
  return { calls, complaints };
}

/** Whether an output is as it was before, whole and new, or neither. */
function stateOf(path: string, earlier: string | null): 'as before' | 'new' | 'torn' {
  if (!existsSync(path)) return earlier === null ? 'as before' : 'torn';
  const bytes = readFileSync(path);
  if (earlier !== null && bytes.equals(Buffer.from(earlier))) return 'as before';
  try {
    if (path.endsWith('.json')) JSON.parse(bytes.toString());
    else readWorkbook('output.xlsx', bytes);
    return 'new';
  } catch {
    return 'torn';
  }
}

interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

function run(cwd: string, args: readonly string[], env: NodeJS.ProcessEnv): Promise<Ended> {
  const child = spawn(process.execPath, args, {
    cwd,
    env,
    stdio: ['ignore', 'pipe', 'pipe'],
    timeout: 60_000,
  });
  let out = '';
  let err = '';
  child.stdout.on('data', (piece: Buffer) => (out += piece.toString()));
  child.stderr.on('data', (piece: Buffer) => (err += piece.toString()));
  return new Promise((done) => {
    child.on('close', (code) => {
      done({ code, out, err });
    });
  });
}
