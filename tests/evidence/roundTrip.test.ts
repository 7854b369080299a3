import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { Cell } from '../../src/cells/cell.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import { fileFormulas } from '../../src/cli/audit/verifyFile.ts';
import { isClean } from '../../src/evidence/verification.ts';
import { verify } from '../../src/evidence/verify.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { unzipSync, zipSync } from 'fflate';
import { runAudit } from '../cli/run.ts';
import { sheetOf as modelOf } from '../hosts/file/write/model.ts';
import { convert, describeWithLibreOffice } from '../libreoffice.ts';
import { demoBytes, typed, withResults } from './written.ts';

const folder = mkdtempSync(join(tmpdir(), 'evidence-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

function saved(name: string, bytes: Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  return path;
}

/** A file as LibreOffice calculates and saves it. */
function resaved(name: string, bytes: Uint8Array): Workbook {
  return readWorkbook(name, resavedBytes(name, bytes));
}

function resavedBytes(name: string, bytes: Uint8Array): Uint8Array {
  const out = mkdtempSync(join(folder, 'saved-'));
  return readFileSync(convert(saved(name, bytes), 'xlsx', out));
}

/** Numbers of many digits, texts of every kind, formulas of the user's own. */
const ugly = newWorkbook([
  modelOf('Channels', [
    ['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Uncertainty (%)'],
    ...Array.from({ length: 300 }, (_, index): (string | number)[] => [
      index === 7 ? '=1+1' : `V-${index}`,
      index === 8 ? 'a\u0001b\nc\td' : index === 9 ? 'x'.repeat(32_767) : 'Pump “A” & <b>',
      200 * (0.75 + Math.sqrt(index) / 60),
      3 + Math.PI / (index + 1),
    ]),
  ]),
  modelOf('Monitor', [
    ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
    ...Array.from({ length: 300 }, (_, index): (string | number)[] => [
      index === 7 ? '=1+1' : `V-${index}`,
      200,
      1 + 2 * Math.E ** (index / 400),
      5 / 1.0123,
    ]),
  ]),
]);

/** The same workbook with its days counted from 1904. */
function from1904(bytes: Uint8Array): Uint8Array {
  const parts = unzipSync(bytes);
  const name = 'xl/workbook.xml';
  const text = new TextDecoder().decode(parts[name]);
  const changed = text.includes('<workbookPr')
    ? text.replace('<workbookPr', '<workbookPr date1904="1"')
    : text.replace('<sheets>', '<workbookPr date1904="1"/><sheets>');
  expect(changed).not.toBe(text);
  return zipSync({ ...parts, [name]: new TextEncoder().encode(changed) });
}

describe('in a workbook that counts days from 1904', () => {
  it('the results are as audited', () => {
    expect(isClean(verify(readWorkbook('1904.xlsx', withResults(from1904(demoBytes)))))).toBe(true);
  });
});

describeWithLibreOffice('calculated anew and saved by another program', () => {
  it.each<[string, Uint8Array]>([
    ['the station', demoBytes],
    ['a workbook of ugly numbers and texts', ugly],
    ['the station with days from 1904', from1904(demoBytes)],
  ])('%s is as audited', (name, bytes) => {
    const file = resavedBytes(`${name.replaceAll(' ', '-')}.xlsx`, withResults(bytes));
    const verification = verify(readWorkbook('saved.xlsx', file), fileFormulas('saved.xlsx', file));
    expect(isClean(verification), JSON.stringify(verification)).toBe(true);
  });

  it('and an edit made before is found as well', () => {
    const book = resaved('edited.xlsx', withResults(demoBytes));
    const isResult = (cell: Cell): boolean =>
      typeof cell === 'number' && cell > 1 && String(cell).length > 12;
    const { book: wrong, row } = typed(book, 'Audit results', isResult, 2);
    expect(verify(wrong).results.cells).toMatchObject([{ sheet: 'Audit results', row, stands: '2' }]);
  });
});

describe('audit --verify', () => {
  saved('c.csv', new TextEncoder().encode('Tag;Measured sensitivity (mV/mil)\nX-1;160,5\nX-2;1,234\n'));
  saved(
    'm.csv',
    new TextEncoder().encode(
      'Tag;Configured sensitivity (mV/mil);Alert (mil);Danger (mil)\nX-1;200;3;5\nX-2;200;3;5\n',
    ),
  );

  it('exits 0 for results as they were written, of a workbook and of text tables', () => {
    saved('station.xlsx', withResults(demoBytes));
    expect(runAudit(folder, '--verify', 'station.xlsx')).toMatchObject({ code: 0, err: '' });
    expect(runAudit(folder, 'c.csv', 'm.csv', '--out', 'texts.xlsx').code).toBe(0);
    const { code, out } = runAudit(folder, '--verify', 'texts.xlsx');
    expect(code, out).toBe(0);
    expect(out).toContain('Nothing was edited since the audit.');
    expect(out).toContain('not forgers');
  });

  it('exits 1 where something was edited, and names the cell', () => {
    const parts = unzipSync(
      withResults(
        newWorkbook([
          modelOf('T', [
            [
              'Tag',
              'Measured sensitivity (mV/mil)',
              'Configured sensitivity (mV/mil)',
              'Alert (mil)',
              'Danger (mil)',
            ],
            ['V-1', 160, 200, 3, 5],
          ]),
        ]),
      ),
    );
    const name = 'xl/worksheets/sheet1.xml';
    const text = new TextDecoder().decode(parts[name]);
    parts[name] = new TextEncoder().encode(text.replace('<v>160</v>', '<v>161</v>'));
    saved('typed.xlsx', zipSync(parts));
    const { code, out } = runAudit(folder, '--verify', 'typed.xlsx');
    expect(code).toBe(1);
    expect(out).toContain('T!B2: “161”, was “160”');
    expect(out).toMatch(/Results +as audited/u);
  });

  it('exits 2 with one line where there is nothing to check, or another option is given', () => {
    saved('plain.xlsx', demoBytes);
    for (const [args, words] of [
      [['--verify', 'plain.xlsx'], 'holds no result sheets'],
      [['--verify', 'c.csv'], 'not text tables'],
      [['--verify', 'station.xlsx', '--json', '-'], '--verify goes without --json'],
      [['--verify', 'station.xlsx', '--share', 'x.xlsx'], '--verify goes without --share'],
      [['--verify', 'station.xlsx', '--handover', 'x.xlsx'], '--verify goes without --handover'],
      [['--verify', 'station.xlsx', '--since', 'plain.xlsx'], '--verify goes without --since'],
      [['--verify', 'missing.xlsx'], 'no such file'],
    ] as const) {
      const { code, out, err } = runAudit(folder, ...args);
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(err.trimEnd()).not.toContain('\n');
      expect(err).toContain(words);
    }
  });
});
