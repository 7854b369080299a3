// Several outputs are written all or none, and what a stopped run was not done with goes with it.
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { newToken, partOf } from '../../src/cli/staging.ts';
import { writeAll, type Output } from '../../src/cli/writeAll.ts';
import { UsageRefused } from '../../src/cli/refused.ts';
import { stationSheets } from '../bench/station.ts';
import { runAudit, temporaryFolder } from './run.ts';
import { endOf, startAudit } from './runFleet.ts';
import { smallWorkbook } from './smallWorkbook.ts';

const folder = temporaryFolder();
const small = smallWorkbook([{ tag: 'L-1', machine: 'Fan', measured: 160 }]);

function plant(book: Uint8Array = small): string {
  const path = mkdtempSync(join(folder, 'plant-'));
  writeFileSync(join(path, 'in.xlsx'), book);
  return path;
}

const partsIn = (path: string) => readdirSync(path).filter((name) => name.endsWith('.part'));

describe('several outputs', () => {
  test('are none where one has no place, and what was there stays', () => {
    const path = plant();
    mkdirSync(join(path, 'report.json'));
    writeFileSync(join(path, 'out.xlsx'), 'earlier');
    const { code, err } = runAudit(
      path,
      ...['in.xlsx', '--out', 'out.xlsx', '--handover', 'new.xlsx', '--json', 'report.json', '--force'],
    );
    expect({ code, err }).toEqual({ code: 2, err: 'report.json: is a folder, not a file.\n' });
    expect(readFileSync(join(path, 'out.xlsx'), 'utf8')).toBe('earlier');
    expect(readdirSync(path).sort()).toEqual(['in.xlsx', 'out.xlsx', 'report.json']);
  });

  test('get what they held back byte for byte and as the same file', async () => {
    const path = plant();
    writeFileSync(join(path, 'first'), 'earlier');
    mkdirSync(join(path, 'second'));
    const inode = statSync(join(path, 'first')).ino;
    const output = (name: string): Output => ({
      given: join(path, name),
      write(put) {
        put('new');
      },
    });
    await expect(writeAll([output('first'), output('third'), output('second')])).rejects.toThrow(
      UsageRefused,
    );
    expect(readFileSync(join(path, 'first'), 'utf8')).toBe('earlier');
    expect(statSync(join(path, 'first')).ino).toBe(inode);
    expect(existsSync(join(path, 'third'))).toBe(false);
    expect(partsIn(path)).toEqual([]);
  });

  test('are staged under names that nobody can guess', () => {
    expect(newToken()).toMatch(/^[0-9a-f]{32}$/u);
    expect(newToken()).not.toBe(newToken());
    const long = 'x'.repeat(250);
    expect(Buffer.byteLength(partOf(long, newToken()))).toBeLessThan(255);
  });
});

// 3,000 channels: their sheets take long enough to write that a signal comes in the midst of it.
const large = newWorkbook(stationSheets(3000));

/** Waits until the first unfinished file stands there. */
async function unfinished(path: string): Promise<void> {
  while (partsIn(path).length === 0) await new Promise((again) => setTimeout(again, 3));
}

describe('a run that is stopped while it writes', () => {
  test.each([
    ['SIGINT', 130],
    ['SIGTERM', 143],
    ['SIGHUP', 129],
  ] as const)('by %s ends with %i and leaves nothing', async (signal, code) => {
    const path = plant(large);
    const child = startAudit(path, ['in.xlsx', '--out', 'out.xlsx', '--json', 'report.json']);
    const end = endOf(child);
    await unfinished(path);
    child.kill(signal);
    expect(await end).toEqual({ code, out: '', err: 'Stopped; nothing was written.\n' });
    expect(readdirSync(path)).toEqual(['in.xlsx']);
  });

  test('by no signal that it hears: the next run names what it left, in one line', async () => {
    const path = plant(large);
    const child = startAudit(path, ['in.xlsx', '--out', 'out.xlsx']);
    const end = endOf(child);
    await unfinished(path);
    child.kill('SIGKILL');
    await end;
    writeFileSync(join(path, 'of another program.part'), 'x');
    writeFileSync(join(path, 'small.xlsx'), small);
    const [left = ''] = partsIn(path).filter((name) => name.startsWith('out.xlsx.'));
    expect(existsSync(join(path, 'out.xlsx'))).toBe(false);
    const next = runAudit(path, 'small.xlsx', '--out', 'out.xlsx');
    expect(next.code).toBe(0);
    expect(next.err).toBe(
      `Left unfinished by a run that was killed: ${join(path, left)}. Delete what no other audit is still writing.\n`,
    );
    expect(partsIn(path)).toContain(left);

    mkdirSync(join(path, 'fleet'));
    writeFileSync(join(path, 'fleet/small.xlsx'), small);
    mkdirSync(join(path, 'copies'));
    writeFileSync(join(path, 'copies', left), 'half');
    const fleet = runAudit(path, 'fleet', '--out', 'copies');
    expect(fleet.code).toBe(0);
    expect(fleet.err).toContain(join(path, 'copies', left));
    expect(fleet.err.trimEnd()).not.toContain('\n');
  });
});
