import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { cellsOf } from '../hosts/file/patch/patched.ts';
import { partText } from '../hosts/file/write/parts.ts';
import { sharedBook } from '../share/sharedBook.ts';
import { demo, runAudit, temporaryFolder } from './run.ts';

const folder = temporaryFolder();
const original = sharedBook();
writeFileSync(join(folder, 'book.xlsx'), original);
writeFileSync(join(folder, 'table.csv'), 'Tag,Measured sensitivity (mV/mil)\nX-1,160\n');

describe('--share', () => {
  test('alone copies a workbook without any table that could be audited, and leaves it as it was', () => {
    const { code, out, err } = runAudit(folder, 'book.xlsx', '--share', 'copy.xlsx');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain('Written: copy.xlsx, a copy to share.\n25 formulas became values, kept in notes.');
    expect(out).toContain('The name OurName works with a Tripdrift function');
    expect(readFileSync(join(folder, 'book.xlsx')).equals(original)).toBe(true);
    const copy = readFileSync(join(folder, 'copy.xlsx'));
    expect(cellsOf(copy)['E2']).toEqual({ value: 6.25, style: 0 });
    expect(partText(copy, 'xl/comments1.xml')).toMatch(/value of \d{4}-\d\d-\d\d, when/);
    expect(runAudit(folder, 'book.xlsx', '--share', 'copy.xlsx').err).toContain('--force');
  });

  test('has native formulas where they are asked for', () => {
    const { out } = runAudit(folder, 'book.xlsx', '--share', 'native.xlsx', '--share-formulas', 'native');
    expect(out).toContain('5 formulas became values, kept in notes; 20 formulas became native ones.');
  });

  test('goes with an audit', () => {
    const { code, out } = runAudit(folder, demo, '--share', 'demo.xlsx', '--json', 'demo.json');
    expect(code).toBe(0);
    expect(out).toContain('59 channels');
    expect(out).toContain('Written: demo.xlsx, a copy to share.');
  });

  test.each([
    [['book.xlsx', '--share', 'x.xlsx', '--share-formulas', 'both'], 'choose values or native'],
    [['book.xlsx', '--share-formulas', 'native'], 'goes with --share'],
    [['table.csv', '--share', 'x.xlsx'], '--share copies a workbook'],
    [['book.xlsx', '--share', 'book.xlsx', '--force'], 'is an input'],
    [['book.xlsx', '--share', 'x.xlsm'], 'must be named .xlsx'],
    [['book.xlsx', '--share', 'x.xlsx', '--out', './x.xlsx'], 'name the same file'],
  ])('%s is refused in one line', (args, says) => {
    const { code, out, err } = runAudit(folder, ...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err.trimEnd()).not.toContain('\n');
    expect(err).toContain(says);
    expect(existsSync(join(folder, 'x.xlsx'))).toBe(false);
  });
});
