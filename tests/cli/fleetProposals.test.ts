import { copyFileSync, existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { columnMapSchema } from '../../src/audit/model/columnMap.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { runAudit, temporaryFolder } from './run.ts';
import { smallWorkbook } from './smallWorkbook.ts';

const folder = temporaryFolder();
const plant = join(folder, 'plant');
mkdirSync(plant);
const racks = '08-rack-before-and-after.xlsx';
copyFileSync(resolve(import.meta.dirname, '../untidy/workbooks', racks), join(plant, racks));
/** No unit anywhere: nothing can be judged unasked. Worked by hand: 5 mil · 200/160 = 6.25 mil. */
const rows: readonly (readonly (string | number)[])[] = [
  ['Tag', 'SF in monitor', 'Actual SF', 'HI', 'HIHI'],
  ['1X', 200, 160, 3, 5],
  ['1Y', 200, 201, 3, 5],
];
const bare = newWorkbook([
  {
    name: 'Probes',
    widths: [10, 10, 10, 10, 10],
    styles: {},
    formulas: [],
    rowCount: rows.length,
    rows: () => rows.map((row) => ({ cells: row.map((value) => ({ value })) })),
    print: { landscape: true },
  },
]);
writeFileSync(join(plant, 'bare.xlsx'), bare);
writeFileSync(join(plant, 'sound.xlsx'), smallWorkbook([{ tag: 'S-1', machine: 'Fan', measured: 201 }]));

describe('proposals of a folder', () => {
  test('without --propose: which workbooks need a person, and how to get their proposals', () => {
    const { code, out } = runAudit(folder, 'plant');
    expect(code).toBe(2);
    expect(out).toMatch(/^bare\.xlsx +not audited; has a proposal$/mu);
    expect(out).toMatch(/^sound\.xlsx +1 /mu);
    expect(out).toContain('bare.xlsx: Understood: ');
    expect(out.replace(/\s+/gu, ' ')).toMatch(
      /To be answered 08-rack-before-and-after\.xlsx: 1 question bare\.xlsx: \d+ questions Each has a proposal: --propose FOLDER writes them, --map FOLDER audits with them\./u,
    );
    expect(out).not.toContain('Enter: confirm');
  });

  test('with --propose: one for each that needs it, and --map audits each with its own', () => {
    const proposed = runAudit(folder, 'plant', '--propose', 'proposals');
    expect(proposed.code).toBe(2);
    expect(proposed.out.replace(/\s+/gu, ' ')).toContain(
      'Proposals are written to proposals: check them, then audit with --map proposals.',
    );
    expect(readdirSync(join(folder, 'proposals')).toSorted()).toEqual([`${racks}.json`, 'bare.xlsx.json']);
    for (const name of readdirSync(join(folder, 'proposals')))
      columnMapSchema.parse(JSON.parse(readFileSync(join(folder, 'proposals', name), 'utf8')));
    const mapped = runAudit(folder, 'plant', '--map', 'proposals');
    expect(mapped.code).toBe(0);
    expect(mapped.out).toContain('1X danger is late: set 5, really trips at 6.25 mil.');
    expect(mapped.out).not.toContain('To be answered');
    const again = runAudit(folder, 'plant', '--propose', 'proposals');
    expect(again).toMatchObject({ code: 2, out: '' });
    expect(again.err).toContain('exists');
  });

  test('a map of the folder that is wrong is named, and --propose - is for one workbook', () => {
    mkdirSync(join(folder, 'wrong'));
    writeFileSync(join(folder, 'wrong', 'bare.xlsx.json'), '{"tables": 1}');
    const wrong = runAudit(folder, 'plant', '--map', 'wrong');
    expect(wrong).toMatchObject({ code: 2, out: '' });
    expect(wrong.err).toContain('bare.xlsx.json: Column map, at tables');
    const printed = runAudit(folder, 'plant', '--propose', '-');
    expect(printed).toMatchObject({ code: 2, out: '' });
    expect(printed.err).toContain('name a folder');
    expect(existsSync(join(folder, '-'))).toBe(false);
  });
});
