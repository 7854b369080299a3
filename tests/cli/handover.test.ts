import { copyFileSync, existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { demo, runAudit, temporaryFolder } from './run.ts';

const folder = temporaryFolder();
copyFileSync(demo, join(folder, 'in.xlsx'));
const sheetsOf = (name: string) =>
  readWorkbook(name, readFileSync(join(folder, name))).sheets.map((sheet) => sheet.name);

describe('--handover', () => {
  test('writes a workbook of its own, beside the other files asked for', () => {
    const { code, out } = runAudit(
      folder,
      'in.xlsx',
      '--handover',
      'h.xlsx',
      '--out',
      'o.xlsx',
      '--json',
      'r.json',
    );
    expect(code).toBe(0);
    expect(out).toMatch(
      /Written: h\.xlsx, with the sheets 'Hand-over list', 'K-101 Gas compressor', 'K-101 Gas compressor annex'/u,
    );
    expect(sheetsOf('h.xlsx')).toHaveLength(21);
    expect(sheetsOf('o.xlsx')).toContain('Audit summary');
    expect(existsSync(join(folder, 'r.json'))).toBe(true);
    expect(readFileSync(join(folder, 'in.xlsx'))).toEqual(readFileSync(demo));
  });

  test.each([
    [['--handover', 'in.xlsx', '--force'], 'is an input, which is never changed'],
    [['--handover', 'h.xls'], 'must be named .xlsx'],
    [['--handover', 'new.xlsx', '--out', './new.xlsx'], '--out and --handover name the same file, new.xlsx'],
    [['--handover', 'new.xlsx', '--json', 'new.xlsx'], '--handover and --json name the same file, new.xlsx'],
    [['--handover', 'no/new.xlsx'], 'its folder does not exist'],
    [['--handover', 'h.xlsx', '--out', 'other.xlsx'], 'h.xlsx exists'],
  ])('refuses %j in one line, and writes nothing', (options, reason) => {
    const before = readdirSync(folder);
    const { code, err } = runAudit(folder, 'in.xlsx', ...options);
    expect(code).toBe(2);
    expect(err).toContain(reason);
    expect(err.trim().split('\n')).toHaveLength(1);
    expect(readdirSync(folder)).toEqual(before);
  });

  test('replaces a file with --force, and a later audit reads nothing from it', () => {
    expect(runAudit(folder, 'in.xlsx', '--handover', 'h.xlsx', '--force').code).toBe(0);
    const { code, err } = runAudit(folder, 'h.xlsx');
    expect(code).toBe(2);
    expect(err.trim().split('\n')).toHaveLength(1);
  });
});
