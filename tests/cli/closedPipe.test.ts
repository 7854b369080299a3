// What reads the output may stop reading; what the command found is no other for that.
import { spawn, spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, openSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import process from 'node:process';
import { beforeAll, describe, expect, test } from 'vitest';
import { smallWorkbook } from './smallWorkbook.ts';
import { demo, runAudit, temporaryFolder } from './run.ts';

const run = resolve(import.meta.dirname, '../../src/run.mjs');
const folder = temporaryFolder();
const sound = smallWorkbook([{ tag: 'S-1', machine: 'Fan', measured: 201 }]);
const full = '/dev/full';

beforeAll(() => {
  mkdirSync(join(folder, 'plant'));
  copyFileSync(demo, join(folder, 'plant/demo.xlsx'));
  writeFileSync(join(folder, 'sound.xlsx'), sound);
  // A copy whose results are of another policy than what it says: the edit is enough to fail the check.
  runAudit(folder, 'sound.xlsx', '--out', 'checked.xlsx');
});

interface Ended {
  readonly code: number | null;
  readonly err: string;
}

/** Runs a command whose output nobody reads: the pipe is closed before it can print. */
function unread(args: readonly string[]): Promise<Ended> {
  const child = spawn(process.execPath, [run, ...args], { cwd: folder, stdio: ['ignore', 'pipe', 'pipe'] });
  child.stdout.destroy();
  let err = '';
  child.stderr.on('data', (piece: Buffer) => (err += piece.toString()));
  return new Promise((done) => {
    child.on('close', (code) => {
      done({ code, err });
    });
  });
}

describe('a closed pipe', () => {
  test.each([
    ['a failed gate stays failed', 1, ['audit', demo, '--strict', '--json', '-']],
    ['so it does in the summary', 1, ['audit', demo, '--strict']],
    ['and for a folder', 1, ['audit', 'plant', '--strict', '--json', '-']],
    ['and for a folder’s summary', 1, ['audit', 'plant', '--strict']],
    ['a passed one stays passed', 0, ['audit', 'sound.xlsx', '--strict', '--json', '-']],
    ['a check that finds nothing stays clean', 0, ['audit', '--verify', 'checked.xlsx']],
    ['an error among the cells of a result stays one', 2, ['calc', '={1,2}/{1,0}']],
    ['a value stays one', 0, ['calc', '=1+1']],
    ['help stays help', 0, ['audit', '--help']],
  ])('%s', async (_, code, args) => {
    const ended = await unread(args);
    expect(ended.code).toBe(code);
    if (code < 2) expect(ended.err).toBe('');
  });
});

describe.skipIf(!existsSync(full))('output that can not be written', () => {
  test.each([
    ['audit', ['audit', demo, '--json', '-']],
    ['calc', ['calc', '=1+1']],
  ])('ends %s with exit code 2 and one line', (_, args) => {
    const { status, stderr } = spawnSync(process.execPath, [run, ...args], {
      cwd: folder,
      encoding: 'utf8',
      stdio: ['ignore', openSync(full, 'w'), 'pipe'],
    });
    expect(status).toBe(2);
    expect(stderr).toBe('Standard output can not be written: the disk is full.\n');
  });
});
