// The commands in a checkout that can only be read, as a user who owns nothing of it.
import { spawnSync, type SpawnSyncOptions } from 'node:child_process';
import {
  accessSync,
  chmodSync,
  constants,
  copyFileSync,
  cpSync,
  mkdirSync,
  readdirSync,
  symlinkSync,
} from 'node:fs';
import { join, resolve } from 'node:path';
import process from 'node:process';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demo, runAudit, temporaryFolder } from './run.ts';

const root = resolve(import.meta.dirname, '../..');
const folder = temporaryFolder();
const checkout = join(folder, 'checkout');
const plant = join(folder, 'plant');
const temporary = join(folder, 'temporary');
const home = join(folder, 'home');

/** Root may write anywhere, so it becomes somebody else; anyone else stays who they are. */
const somebody: SpawnSyncOptions = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};

/** Whether that user may read the installed packages and run npm; not so where either lies in a folder that is closed. */
const mayRead =
  process.platform !== 'win32' &&
  spawnSync(
    process.execPath,
    ['-e', `fs.accessSync(${JSON.stringify(join(root, 'node_modules/esbuild/package.json'))})`],
    { ...somebody, cwd: '/', stdio: 'ignore' },
  ).status === 0 &&
  spawnSync('npm', ['--version'], { ...somebody, cwd: '/', stdio: 'ignore' }).status === 0;

function setWritable(path: string, writable: boolean): void {
  chmodSync(path, writable ? 0o755 : 0o555);
  for (const item of readdirSync(path, { withFileTypes: true, recursive: true })) {
    if (!item.isDirectory()) continue;
    chmodSync(join(item.parentPath, item.name), writable ? 0o755 : 0o555);
  }
}

beforeAll(() => {
  for (const path of [folder, checkout, plant, temporary, home]) mkdirSync(path, { recursive: true });
  chmodSync(folder, 0o755);
  for (const path of [temporary, home]) chmodSync(path, 0o777);
  cpSync(join(root, 'src'), join(checkout, 'src'), { recursive: true, preserveTimestamps: true });
  for (const name of ['package.json', 'package-lock.json']) cpSync(join(root, name), join(checkout, name));
  symlinkSync(join(root, 'node_modules'), join(checkout, 'node_modules'));
  for (const name of ['a.xlsx', 'b.xlsx']) copyFileSync(demo, join(plant, name));
});

afterAll(() => {
  setWritable(checkout, true);
});

function npmRun(script: string, ...args: string[]) {
  const { status, stdout, stderr } = spawnSync('npm', ['run', '-s', script, '--', ...args], {
    ...somebody,
    cwd: checkout,
    encoding: 'utf8',
    maxBuffer: 1 << 26,
    env: { PATH: process.env['PATH'], HOME: home, TMPDIR: temporary, npm_config_update_notifier: 'false' },
  });
  return { code: status, out: stdout, err: stderr };
}

function works(): void {
  setWritable(checkout, false);
  if (process.getuid?.() !== 0)
    expect(() => {
      accessSync(checkout, constants.W_OK);
    }).toThrow();
  expect(npmRun('calc', '=TRIPDRIFT.EFFECTIVE(5,200,160)')).toEqual({ code: 0, out: '6.25\n', err: '' });
  const { code, out, err } = npmRun('audit', demo);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toBe(runAudit(folder, demo).out);
  const fleet = npmRun('audit', plant, '--json', '-');
  expect({ code: fleet.code, err: fleet.err }).toEqual({ code: 0, err: '' });
  const { files } = JSON.parse(fleet.out) as { files: readonly { refused: string | null }[] };
  expect(files.map(({ refused }) => refused)).toEqual([null, null]);
  expect(readdirSync(temporary)).toEqual([]);
}

describe.skipIf(!mayRead)(
  `a checkout that can only be read${mayRead ? '' : ' (needs packages and npm that another user may reach)'}`,
  () => {
    test('serves an unprivileged user before anything is built, and leaves nothing behind', () => {
      works();
      expect(readdirSync(checkout)).not.toContain('dist');
    });

    test('serves an unprivileged user from the built file, and leaves nothing behind', () => {
      setWritable(checkout, true);
      const built = spawnSync(process.execPath, ['src/tools/package/main.mjs'], { cwd: checkout });
      expect(built.status).toBe(0);
      works();
      expect(readdirSync(join(checkout, 'dist'))).toEqual(['tripdrift.mjs']);
    });
  },
);
