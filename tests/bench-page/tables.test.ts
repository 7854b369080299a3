/// <reference lib="dom" />
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, expect, it, vi } from 'vitest';
import type { Cell } from '../../src/cells/cell.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { describeWithChromium } from '../chromium.ts';
import { convert, soffice } from '../libreoffice.ts';
import { withoutResults } from '../sheets/workbookFiles.ts';
import { type BenchVisit, eachVisits } from './openPage.ts';
import { shownWorkbook } from './shownWorkbook.ts';

vi.setConfig({ hookTimeout: 120_000, testTimeout: 180_000 });
const soon = <Value>(told: () => Promise<Value>) => expect.poll(told, { timeout: 20_000 });

const folder = mkdtempSync(join(tmpdir(), 'tables-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

/** Rows of a sheet as LibreOffice calculates them from the formulas alone. */
function calculatedElsewhere(bytes: Uint8Array, sheet: string): readonly (readonly Cell[])[] {
  const path = join(mkdtempSync(join(folder, 'file-')), 'tables.xlsx');
  writeFileSync(path, withoutResults(bytes));
  const back = readFileSync(convert(path, 'xlsx', mkdtempSync(join(folder, 'back-'))));
  return readWorkbook('tables.xlsx', back).sheets.find(({ name }) => name === sheet)?.rows ?? [];
}

const numbers = (rows: readonly (readonly Cell[])[]) =>
  rows.map((row) => row.map((value) => (typeof value === 'number' ? Number(value.toPrecision(12)) : value)));

describeWithChromium('tables in the grid of the bench', () => {
  let visit: BenchVisit;
  let page: Page;
  eachVisits((begun) => {
    visit = begun;
    ({ page } = visit);
  });
  const open = async (bytes: Uint8Array): Promise<void> => {
    await visit.open('tables.xlsx', bytes);
    await visit.shown('tables.xlsx');
  };
  const rows = async (sheet: string) => numbers(await visit.rows(sheet));
  const column = async (sheet: string) => (await rows(sheet)).map(([value]) => value);
  const front = (work: 'insertRows' | 'deleteRows', at: number, count: number) =>
    page.evaluate(
      ([action, index, many]) => {
        window.tripdriftBench!.grid.api.getActiveWorkbook()!.getActiveSheet()[action](index, many);
      },
      [work, at, count] as const,
    );
  const undo = () => page.evaluate(() => window.tripdriftBench!.grid.api.getActiveWorkbook()!.undo());

  const names = [
    'SUM(Readings[Measured (mV/mil)])',
    'MAX(Readings[Danger, mil])',
    'SUM(Readings)',
    'COUNTA(Readings[#All])',
    'Readings[[#Totals],[Volts]]',
    'COUNTA(Readings[#Headers])',
    'SUM(Readings[[Measured (mV/mil)]:[Danger, mil]])',
    'COUNTA(Readings[[#Headers],[#Data],[Tag]])',
    'SUM(Setpoints)',
    'SUM(Readings[Measured (mV/mil)])+0+0+0+0+0+0+0+0+0+0+0+0+0+0+0+0+0+0+0+0',
  ];
  /** LibreOffice takes the totals for data behind a name alone, and knows no part without columns. */
  const unknownElsewhere = new Set([2, 3, 5]);
  const volts = {
    formula: 'Readings[[#This Row],[Measured (mV/mil)]]*Readings[[#This Row],[Danger, mil]]/1000',
  };
  const file = shownWorkbook({
    sheets: [
      {
        name: 'Readings',
        rows: [
          [],
          [null, 'Tag', 'Measured (mV/mil)', 'Danger, mil', 'Volts'],
          [null, 'P-1X', 160, 5, volts],
          [null, 'P-1Y', 190, 6, volts],
          [null, 'P-2X', 210, 4, volts],
          [
            null,
            'Mean and sum',
            { formula: 'SUBTOTAL(101,Readings[Measured (mV/mil)])' },
            null,
            { formula: 'SUM(Readings[Volts])' },
          ],
        ],
        table: {
          name: 'Readings',
          area: 'B2:E6',
          columns: ['Tag', 'Measured (mV/mil)', 'Danger, mil', 'Volts'],
          totalsRow: true,
        },
      },
      { name: 'Elsewhere', rows: names.map((formula) => [{ formula }]) },
    ],
    names: '<definedName name="Setpoints">Readings[Danger, mil]</definedName>',
  });

  it('takes every part that formulas name, also after rows came and went, as LibreOffice does where it is at hand', async () => {
    await open(file);
    // By hand: 160 + 190 + 210 = 560 and 5 + 6 + 4 = 15; volts 0.8, 1.14 and 0.84, their sum 2.78; 560 + 15 + 2.78 numbers;
    // five rows of four cells, all filled but the total of the third column.
    const byHand = [560, 6, 577.78, 19, 2.78, 4, 575, 4, 15, 560];
    await soon(() => column('Elsewhere')).toEqual(byHand);
    expect((await rows('Readings'))[5]).toEqual([
      null,
      'Mean and sum',
      Number((560 / 3).toPrecision(12)),
      null,
      2.78,
    ]);

    await front('insertRows', 0, 2);
    await front('insertRows', 5, 1);
    await visit.type('Readings', 6, 3, '300');
    await visit.type('Readings', 6, 4, '10');
    // One row more, with 300 and 10 in it.
    const grown = [860, 10, 887.78, 21, 2.78, 4, 885, 4, 25, 860];
    await soon(() => column('Elsewhere')).toEqual(grown);
    await soon(async () => (await rows('Readings'))[8]?.slice(2)).toEqual([215, null, 2.78]);
    await visit.type('Readings', 5, 3, '100');
    await soon(async () => (await rows('Readings'))[4]?.[4]).toBe(0.5);
    await soon(() => column('Elsewhere')).toEqual([800, 10, 827.48, 21, 2.48, 4, 825, 4, 25, 800]);
    if (soffice() !== undefined) {
      const copy = await visit.saved();
      expect(await rows('Readings')).toEqual(numbers(calculatedElsewhere(copy, 'Readings')));
      const known = (values: readonly (readonly Cell[])[]) =>
        values.filter((_, row) => !unknownElsewhere.has(row));
      expect(known(await rows('Elsewhere'))).toEqual(known(numbers(calculatedElsewhere(copy, 'Elsewhere'))));
    }
    for (let step = 0; step < 5; step++) await undo();
    await soon(() => column('Elsewhere')).toEqual(byHand);
    await visit.type('Readings', 3, 4, '7');
    await soon(() => column('Elsewhere')).toEqual([560, 7, 580.1, 19, 3.1, 4, 577, 4, 17, 560]);
  });

  it('shows an error where a title or the table is gone, and the value again with it', async () => {
    const gone = { code: '#REF!' };
    await open(file);
    await soon(async () => (await column('Elsewhere'))[0]).toBe(560);
    await visit.type('Readings', 2, 3, 'Found');
    await soon(() => column('Elsewhere')).toEqual([gone, 6, gone, 19, gone, 4, gone, 4, 15, gone]);
    await undo();
    await soon(async () => (await column('Elsewhere'))[0]).toBe(560);
    await front('deleteRows', 5, 1);
    await soon(async () => (await column('Elsewhere'))[4]).toEqual(gone);
    await undo();
    await soon(async () => (await column('Elsewhere'))[4]).toBe(2.78);
    await front('deleteRows', 1, 1);
    await soon(async () => (await column('Elsewhere'))[2]).toEqual({ code: '#NAME?' });
    await undo();
    await soon(async () => (await column('Elsewhere'))[2]).toBe(577.78);
  });

  it('follows a sheet to another name, and leaves the table with it when the sheet is copied', async () => {
    await open(
      shownWorkbook({
        sheets: [
          {
            name: 'Readings',
            rows: [
              [null, 'Tag', 'Measured'],
              [null, 'P-1X', 160],
              [null, 'P-1Y', 190],
            ],
            table: { name: 'Readings', area: 'B1:C3', columns: ['Tag', 'Measured'] },
          },
          { name: 'Elsewhere', rows: [[{ formula: 'SUM(Readings[Measured])' }]] },
        ],
      }),
    );
    await soon(async () => (await column('Elsewhere'))[0]).toBe(350);
    await page.evaluate(() => {
      window.tripdriftBench!.grid.api.getActiveWorkbook()!.getSheetByName('Readings')!.setName("Unit's");
    });
    await visit.type("Unit's", 2, 3, '100');
    await soon(async () => (await column('Elsewhere'))[0]).toBe(290);
    await page.evaluate(() => {
      window.tripdriftBench!.grid.api.getActiveWorkbook()!.duplicateActiveSheet();
    });
    const { sheets } = await visit.read();
    const copy = sheets.find(({ name }) => name !== "Unit's" && name !== 'Elsewhere')!.name;
    await visit.select(copy, 1, 1);
    await front('insertRows', 0, 4);
    await visit.type(copy, 6, 3, '1');
    await visit.type("Unit's", 3, 3, '200');
    await soon(async () => (await column('Elsewhere'))[0]).toBe(300);
  });

  it('reads and moves all formulas after a name of a table was typed', async () => {
    await open(
      shownWorkbook({
        sheets: [
          {
            name: 'Readings',
            rows: [
              ['Tag', 'Measured'],
              ['P-1X', 160],
              ['P-1Y', 190],
              [],
              [
                { formula: 'SUM(B2:B3)', result: 350 },
                { formula: 'B3*2', result: 380 },
              ],
            ],
            table: { name: 'Readings', area: 'A1:B3', columns: ['Tag', 'Measured'] },
          },
        ],
      }),
    );
    await visit.type('Readings', 6, 1, '=SUM(Readings[Measured])');
    await visit.type('Readings', 6, 2, '=SUM(B2:B3)');
    await visit.type('Readings', 6, 3, '=COUNTA(Readings[[Tag]:[Measured]])');
    await visit.type('Readings', 6, 4, '=SUM(Readings[Nothing])');
    await soon(async () => (await rows('Readings'))[5]).toEqual([350, 350, 4, { code: '#REF!' }]);
    await front('insertRows', 0, 1);
    await visit.type('Readings', 3, 2, '500');
    await soon(async () => (await rows('Readings'))[6]).toEqual([690, 690, 4, { code: '#REF!' }]);
    expect((await rows('Readings'))[5]).toEqual([690, 380]);
  });

  it('takes the first row of a table without titles for data', async () => {
    await open(
      shownWorkbook({
        sheets: [
          {
            name: 'Bare',
            rows: [
              [160, 5],
              [190, 6],
              [],
              [{ formula: 'SUM(Bare)' }],
              [{ formula: 'SUM(Bare[Column1])', result: 350 }],
            ],
            table: { name: 'Bare', area: 'A1:B2', columns: ['Column1', 'Column2'], headerRow: false },
          },
        ],
      }),
    );
    await visit.type('Bare', 1, 1, '100');
    await soon(async () => (await column('Bare'))[3]).toBe(301);
    // The titles of such a table stand in no cell.
    await soon(async () => (await column('Bare'))[4]).toEqual({ code: '#REF!' });
  });
});
