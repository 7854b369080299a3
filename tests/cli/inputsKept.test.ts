// No output may be one of the inputs, whatever it is called.
import { spawnSync } from 'node:child_process';
import { linkSync, mkdirSync, readFileSync, readdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import process from 'node:process';
import { describe, expect, test } from 'vitest';
import { runAudit, temporaryFolder, type Ran } from './run.ts';
import { smallWorkbook } from './smallWorkbook.ts';

const run = resolve(import.meta.dirname, '../../src/run.mjs');
const folder = temporaryFolder();
const book = smallWorkbook([{ tag: 'L-1', machine: 'Fan', measured: 160 }]);
const texts = {
  'c.csv': 'Tag,Measured sensitivity (mV/mil)\nX-1,160\n',
  'm.csv': 'Tag,Configured sensitivity (mV/mil),Alert (mil),Danger (mil)\nX-1,200,3,5\n',
  'policy.json': '{"tolerance": 0.1}',
  'map.json': '{}',
};

let count = 0;

/** A new folder with inputs of every kind, and one with other names for each of them. */
function plant(link: (from: string, to: string) => void): { path: string; unchanged: () => void } {
  const path = join(folder, `plant-${count++}`);
  for (const name of [path, join(path, 'in'), join(path, 'other')]) mkdirSync(name);
  const inputs = { ...texts, 'in/a.xlsx': book, 'in/b.xlsx': book };
  for (const [name, content] of Object.entries(inputs)) {
    writeFileSync(join(path, name), content);
    link(join(path, name), join(path, 'other', name.replace('in/', '')));
  }
  symlinkSync(join(path, 'in'), join(path, 'way'));
  return {
    path,
    unchanged() {
      for (const [name, content] of Object.entries(inputs)) {
        expect(readFileSync(join(path, name)), name).toEqual(Buffer.from(content));
        expect(readFileSync(join(path, 'other', name.replace('in/', '')))).toEqual(Buffer.from(content));
      }
      expect(readdirSync(path, { recursive: true }).filter((name) => String(name).endsWith('.part'))).toEqual(
        [],
      );
    },
  };
}

function refused({ code, out, err }: Ran): void {
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toMatch(/^[^\n]*(is an input, which is never changed|folder of the inputs)[^\n]*\n$/u);
}

const kinds = [
  ['hard link', linkSync],
  ['symbolic link', symlinkSync],
] as const;

describe.each(kinds)('with --force, a %s', (_, link) => {
  const cases: readonly (readonly [string, readonly string[]])[] = [
    ['to the workbook', ['in/a.xlsx', '--out', 'other/a.xlsx']],
    ['to the workbook as a copy to share', ['in/a.xlsx', '--share', 'other/a.xlsx']],
    ['to the workbook as the hand-over', ['in/a.xlsx', '--handover', 'other/a.xlsx']],
    ['to the workbook as the report', ['in/a.xlsx', '--json', 'other/a.xlsx']],
    ['to the second table', ['c.csv', 'm.csv', '--json', 'other/m.csv']],
    ['to the policy', ['in/a.xlsx', '--policy', 'policy.json', '--json', 'other/policy.json']],
    ['to the column map', ['in/a.xlsx', '--map', 'map.json', '--json', 'other/map.json']],
    ['to the earlier workbook', ['in/a.xlsx', '--since', 'in/b.xlsx', '--out', 'other/b.xlsx']],
    ['to a workbook of a folder', ['in', '--out', 'other']],
    ['to a folder’s policy', ['in', '--policy', 'policy.json', '--json', 'other/policy.json']],
  ];
  test.each(cases)('%s is no output', (_name, args) => {
    const { path, unchanged } = plant(link);
    refused(runAudit(path, ...args, '--force'));
    unchanged();
  });
});

describe('without any link', () => {
  test.each([
    ['the policy', ['in/a.xlsx', '--policy', 'policy.json', '--json', 'policy.json']],
    ['the earlier workbook', ['in/a.xlsx', '--since', 'in/b.xlsx', '--out', './in/b.xlsx']],
    ['a workbook by another way', ['in/a.xlsx', '--out', 'way/a.xlsx']],
    ['the folder by another way', ['in', '--out', 'way']],
  ])('%s is no output', (_name, args) => {
    const { path, unchanged } = plant(linkSync);
    refused(runAudit(path, ...args, '--force'));
    unchanged();
  });
});

describe('two outputs', () => {
  test.each([
    ['by two ways to one folder', ['--out', 'in/new.xlsx', '--share', 'way/new.xlsx'], 'name the same file'],
    ['that are one file by a link', ['--json', 'one.json', '--share', 'two.xlsx'], 'name the same file'],
    ['but for letter case', ['--out', 'New.xlsx', '--share', 'new.xlsx'], 'differ in letter case alone'],
  ])('%s are refused', (_name, args, why) => {
    const { path, unchanged } = plant(linkSync);
    writeFileSync(join(path, 'one.json'), 'x');
    linkSync(join(path, 'one.json'), join(path, 'two.xlsx'));
    const { code, err } = runAudit(path, 'in/a.xlsx', ...args, '--force');
    expect(code).toBe(2);
    expect(err).toContain(why);
    expect(err.trimEnd()).not.toContain('\n');
    unchanged();
  });

  test('a folder’s report is none of its copies by another name', () => {
    const { path, unchanged } = plant(linkSync);
    mkdirSync(join(path, 'out'));
    writeFileSync(join(path, 'out/a.xlsx'), 'earlier copy');
    linkSync(join(path, 'out/a.xlsx'), join(path, 'report.json'));
    const { code, err } = runAudit(path, 'in', '--out', 'out', '--json', 'report.json', '--force');
    expect(code).toBe(2);
    expect(err).toContain('the workbooks are written there');
    expect(readFileSync(join(path, 'out/a.xlsx'), 'utf8')).toBe('earlier copy');
    unchanged();
  });
});

/** In mounts of its own, which are gone with it. */
function mounted(path: string, args: readonly string[]) {
  const script = 'mount --bind "$1" "$2" && shift 2 && exec "$@"';
  const program = [join(path, 'in'), join(path, 'bound'), process.execPath, run, 'audit', ...args];
  return spawnSync('unshare', ['-rm', 'sh', '-c', script, 'sh', ...program], { cwd: path, encoding: 'utf8' });
}

const mayMount =
  spawnSync('unshare', ['-rm', 'mount', '--bind', folder, folder], { stdio: 'ignore' }).status === 0;

describe.skipIf(!mayMount)(
  `a folder that is mounted a second time${mayMount ? '' : ' (needs the right to mount)'}`,
  () => {
    test.each([
      ['for a workbook', ['in/a.xlsx', '--out', 'bound/a.xlsx']],
      ['for a folder', ['in', '--out', 'bound']],
    ])('holds no output %s', (_name, args) => {
      const { path, unchanged } = plant(linkSync);
      mkdirSync(join(path, 'bound'));
      const { status, stdout, stderr } = mounted(path, [...args, '--force']);
      refused({ code: status, out: stdout, err: stderr });
      unchanged();
    });
  },
);
