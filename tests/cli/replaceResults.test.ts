import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { runAudit, temporaryFolder } from './run.ts';
import { smallWorkbook } from './smallWorkbook.ts';

const folder = temporaryFolder();
const path = (name: string) => join(folder, name);
writeFileSync(path('in.xlsx'), smallWorkbook([{ tag: 'X-1', machine: 'P-1', measured: 160 }]));
runAudit(folder, 'in.xlsx', '--out', 'once.xlsx');

const sheetsOf = (name: string) => readWorkbook(name, readFileSync(path(name))).sheets;
const names = (name: string) => sheetsOf(name).map((sheet) => sheet.name);
const [own = ''] = names('in.xlsx');

/** A file with one of its parts changed. */
function changed(from: string, to: string, part: string, change: (text: string) => string): string {
  const parts = unzipSync(readFileSync(path(from)));
  const text = strFromU8(parts[part] ?? new Uint8Array());
  expect(change(text)).not.toBe(text);
  writeFileSync(path(to), zipSync({ ...parts, [part]: strToU8(change(text)) }));
  return to;
}

const edited = () =>
  changed('once.xlsx', 'edited.xlsx', 'xl/worksheets/sheet3.xml', (text) => text.replace('>late<', '>OK<'));

describe('--replace-results', () => {
  it('writes result sheets in place of earlier ones, under their names', () => {
    const { code, out } = runAudit(folder, 'once.xlsx', '--out', 'again.xlsx', '--replace-results');
    expect(code, out).toBe(0);
    expect(names('again.xlsx')).toEqual(names('once.xlsx'));
    expect(out).toContain("Replaced: 'Audit summary'");
    expect(runAudit(folder, '--verify', 'again.xlsx').code).toBe(0);
  });

  it('asks before it loses one that was edited', () => {
    const call = [edited(), '--out', 'lost.xlsx', '--replace-results'];
    const refused = runAudit(folder, ...call);
    expect(refused.code).toBe(2);
    expect(refused.err).toContain("'Audit results' is not as its audit wrote it. Give --remove-edited");
    expect(runAudit(folder, ...call, '--remove-edited').code).toBe(0);
    expect(names('lost.xlsx')).toEqual(names('once.xlsx'));
  });

  it('says what refers to them', () => {
    const from = changed('once.xlsx', 'referring.xlsx', 'xl/worksheets/sheet1.xml', (text) =>
      text.replace('</row>', `<c r="Z1"><f>'Audit results'!A7</f><v>0</v></c></row>`),
    );
    const { code, out } = runAudit(folder, from, '--out', 'said.xlsx', '--replace-results');
    expect(code, out).toBe(0);
    expect(out.replace(/\s+/gu, ' ')).toContain(`'${own}'!Z1 refers to a result sheet`);
    const removing = runAudit(folder, from, '--remove-results', 'torn.xlsx');
    expect(removing.code).toBe(2);
    expect(removing.err).toContain(`'${own}'!Z1 refers to the result sheet 'Audit results'`);
  });
});

describe('--remove-results', () => {
  it('writes a copy with the sheets that there were before', () => {
    const { code, out } = runAudit(folder, 'once.xlsx', '--remove-results', 'clean.xlsx');
    expect(code, out).toBe(0);
    expect(sheetsOf('clean.xlsx')).toEqual(sheetsOf('in.xlsx'));
  });

  it('asks before it loses one that was edited', () => {
    const { code, err } = runAudit(folder, edited(), '--remove-results', 'gone.xlsx');
    expect(code).toBe(2);
    expect(err).toContain('--remove-edited');
  });

  it.each([
    [['in.xlsx', '--remove-results', 'a.xlsx', '--out', 'b.xlsx'], 'stands alone'],
    [['in.xlsx', '--replace-results'], 'goes with --out'],
    [['in.xlsx', '--remove-edited'], 'goes with'],
    [['once.xlsx', '--remove-results', 'once.xlsx'], 'once.xlsx'],
  ])('refuses %j', (args, why) => {
    const { code, err } = runAudit(folder, ...args);
    expect([code, err.trim().split('\n').length]).toEqual([2, 1]);
    expect(err).toContain(why);
  });
});
