import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Report } from '../../src/audit/model/report.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { runAudit, temporaryFolder } from './run.ts';

const folder = temporaryFolder();
const header = 'Tag,Measured sensitivity (mV/mil),Configured sensitivity (mV/mil),Alert (mil),Danger (mil)';
const put = (name: string, ...lines: string[]): string => {
  writeFileSync(join(folder, name), `${[header, ...lines].join('\n')}\n`);
  return name;
};
const before = put('before.csv', 'X-1,200,200,3,5', 'X-2,160,200,3,5');
const after = put('after.csv', 'X-1,160,200,3,5', 'X-2,200,200,3,6');

describe('--since', () => {
  test('tells what changed and writes its sheet', () => {
    const { code, out } = runAudit(folder, after, '--since', before, '--out', 'after.xlsx');
    expect(code).toBe(0);
    expect(out).toContain(
      'Since before.csv\n  2 now late, 1 changed setting, 2 changed sensitivity, 2 corrected.',
    );
    // By hand: 5·200/160 = 6.25 and 5·200/200 = 5.
    expect(out.replace(/\s+/gu, ' ')).toContain(
      'now late X-1: Danger is late: really trips at 6.25 mil; it was OK at 5 mil before.',
    );
    expect(out).toContain("'Audit changes'");
    const book = readWorkbook('after.xlsx', readFileSync(join(folder, 'after.xlsx')));
    const sheet = book.sheets.find(({ name }) => name === 'Audit changes');
    expect(sheet?.rows[4]?.slice(0, 2)).toEqual(['now late', 'X-1']);
  });

  test('is null in the report without it', () => {
    const report = JSON.parse(runAudit(folder, after, '--json', '-').out) as Report;
    expect(report.since).toBeNull();
  });

  test('audits the tables of the earlier workbook by the policy given', () => {
    writeFileSync(join(folder, 'wide.json'), '{"tolerance": 0.3}');
    const call = [after, '--since', before, '--policy', 'wide.json', '--json', '-'];
    const report = JSON.parse(runAudit(folder, ...call).out) as Report;
    expect(report.since?.counts).toMatchObject({ 'newly late': 0, cured: 0, 'changed sensitivity': 2 });
  });

  test('reads the sheet of results where the earlier workbook holds no tables', () => {
    expect(runAudit(folder, before, '--out', 'before.xlsx').code).toBe(0);
    const book = readWorkbook('before.xlsx', readFileSync(join(folder, 'before.xlsx')));
    const results = book.sheets.find(({ name }) => name === 'Audit results');
    const rows = (results?.rows ?? []).map((row) => ({
      cells: row.map((cell) =>
        cell !== null && typeof cell === 'object' ? undefined : { value: cell, style: 'text' },
      ),
    }));
    const alone = {
      name: 'Results kept',
      widths: [20],
      styles: { text: {} },
      formulas: [],
      rowCount: rows.length,
      rows: () => rows,
      print: { landscape: true },
    };
    writeFileSync(join(folder, 'alone.xlsx'), newWorkbook([alone]));
    const { code, out } = runAudit(folder, after, '--since', 'alone.xlsx');
    expect(code).toBe(0);
    expect(out).toMatch(/Since before\.csv \(sheet 'Results kept', \d{4}-\d\d-\d\d\)\n {2}2 now late/u);
    expect(out).toContain('do not show voting');
  });

  test('is refused in one line, and nothing written, where there is nothing to compare with', () => {
    writeFileSync(join(folder, 'other.csv'), 'a,b\n1,2\n');
    for (const [path, says] of [
      ['other.csv', 'no sheet of earlier results either'],
      ['missing.xlsx', 'missing.xlsx'],
    ] as const) {
      const { code, out, err } = runAudit(folder, after, '--since', path, '--json', 'x.json');
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(err.trimEnd()).not.toContain('\n');
      expect(err).toContain(says);
    }
    expect(() => readFileSync(join(folder, 'x.json'))).toThrow();
  });
});
