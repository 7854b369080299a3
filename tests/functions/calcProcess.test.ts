import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const ROOT = join(import.meta.dirname, '..', '..');

describe('npm run -s calc', () => {
  const run = (...args: string[]) =>
    spawnSync('npm', ['run', '-s', 'calc', '--', ...args], { cwd: ROOT, encoding: 'utf8' });

  it('prints a value, a spilled result, an error', () => {
    expect(run('=TRIPDRIFT.EFFECTIVE(5,200,160)')).toMatchObject({ stdout: '6.25\n', stderr: '', status: 0 });
    expect(run('=TRIPDRIFT.BAND({5;10},200,160,0.25)').stdout).toBe(
      '5\t8.333333333333334\n10\t16.666666666666668\n',
    );
    expect(run('=TRIPDRIFT.VOTED({"out",4},2)')).toMatchObject({
      stdout: '',
      stderr: '#N/A Thresholds: 1 of 2 members can act, 2 needed: the group cannot trip.\n',
      status: 2,
    });
    expect(run('=1+')).toMatchObject({ stdout: '', status: 2 });
  });

  it('--list and --help', () => {
    expect(run('--list').stdout).toContain('TRIPDRIFT.ZONE(displacement, speed, [unit])');
    expect(run('--help').stdout).toContain("npm run -s calc -- '=TRIPDRIFT.EFFECTIVE(5,200,160)'");
  });
});
