/// <reference lib="dom" />
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, expect, it } from 'vitest';
import { readSettings } from '../../src/hosts/file/patch/settings/readSettings.ts';
import type { SheetView, ViewStyle } from '../../src/hosts/file/view/types.ts';
import { viewWorkbook } from '../../src/hosts/file/view/viewWorkbook.ts';
import { describeWithChromium } from '../chromium.ts';
import { everythingParts } from '../fixtures/workbooks/everything.ts';
import { zipParts } from '../fixtures/workbooks/package.ts';
import { cellsOf, changedParts } from '../hosts/file/patch/patched.ts';
import { partText } from '../hosts/file/write/parts.ts';
import { objections } from '../hosts/file/write/validator.ts';
import { convert, soffice } from '../libreoffice.ts';
import { type BenchVisit, eachVisits } from './openPage.ts';

const everything = zipParts(everythingParts());

describeWithChromium('a copy that the bench saves', () => {
  let visit: BenchVisit;
  let page: Page;
  const folder = mkdtempSync(join(tmpdir(), 'saved-'));
  eachVisits((begun) => {
    visit = begun;
    ({ page } = visit);
  });
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  const open = async (name: string, bytes: Uint8Array): Promise<void> => {
    await visit.open(name, bytes);
    await visit.shown(name);
  };
  const saved = () => visit.saved();
  const note = () => page.locator('#note').textContent();
  /** Does something to a range of a sheet (A1 style) through the grid's own interface. */
  const act = (
    sheet: string,
    work: 'bold' | 'plain' | 'fill' | 'color' | 'wrap' | 'center' | 'format' | 'merge' | 'clear' | 'value',
    range: string,
    value = '',
  ) =>
    page.evaluate(
      async ([name, action, place, given]) => {
        const cells = window
          .tripdriftBench!.grid.api.getActiveWorkbook()!
          .getSheetByName(name)!
          .getRange(place);
        if (action === 'bold') cells.setFontWeight('bold');
        if (action === 'plain') cells.setFontWeight('normal');
        if (action === 'fill') cells.setBackgroundColor(given);
        if (action === 'color') cells.setFontColor(given);
        if (action === 'wrap') cells.setWrap(true);
        if (action === 'center') cells.setHorizontalAlignment('center');
        if (action === 'format') {
          await window.tripdriftBench!.grid.api.executeCommand('sheet.command.numfmt.set.numfmt', {
            unitId: 'workbook',
            subUnitId: cells.getSheetId(),
            values: [{ row: cells.getRow(), col: cells.getColumn(), pattern: given }],
          });
        }
        if (action === 'merge') cells.merge();
        if (action === 'clear') cells.clear();
        if (action === 'value') cells.setValue(given);
      },
      [sheet, work, range, value] as const,
    );
  /** Rows and columns from 0, sizes in pixels. */
  const size = (sheet: string, what: 'row' | 'column', at: number, pixels: number) =>
    page.evaluate(
      ([name, kind, index, many]) => {
        const front = window.tripdriftBench!.grid.api.getActiveWorkbook()!.getSheetByName(name)!;
        if (kind === 'row') front.setRowHeight(index, many);
        else front.setColumnWidth(index, many);
      },
      [sheet, what, at, pixels] as const,
    );
  const undo = () => page.evaluate(() => window.tripdriftBench!.grid.api.getActiveWorkbook()!.undo());

  const sheetIn = (bytes: Uint8Array, name: string): SheetView =>
    viewWorkbook('copy.xlsx', bytes).sheets.find((sheet) => sheet.name === name)!;
  const cellIn = (bytes: Uint8Array, name: string, row: number, column: number) =>
    sheetIn(bytes, name)
      .rows.find((one) => one.row === row)
      ?.cells.find((one) => one.column === column);
  const lookIn = (bytes: Uint8Array, name: string, row: number, column: number): ViewStyle | undefined =>
    viewWorkbook('copy.xlsx', bytes).styles[cellIn(bytes, name, row, column)?.style ?? 0];
  /** What the validator objects to, and whether LibreOffice opens it, where it is there. */
  const opensWell = (bytes: Uint8Array): void => {
    expect(objections(bytes)).toEqual([]);
    if (soffice() === undefined) return;
    const path = join(folder, 'copy.xlsx');
    writeFileSync(path, bytes);
    const through = viewWorkbook('x.xlsx', readFileSync(convert(path, 'xlsx', join(folder, 'out'))));
    // Pivot tables of other sheets are calculated anew.
    const values = ({ sheets: [first] }: typeof through) =>
      first?.rows.flatMap(({ cells }) => cells.flatMap(({ value }) => value ?? [])).length;
    expect(values(through)).toBe(values(viewWorkbook('x.xlsx', bytes)));
  };

  it('is the file again, byte for byte, where nothing changed', async () => {
    await open('all.xlsx', everything);
    const first = await saved();
    expect(changedParts(everything, first)).toEqual([]);
    expect(Buffer.compare(first, await saved())).toBe(0);
  });

  it('has the looks that were changed, and nothing else', async () => {
    await open('all.xlsx', everything);
    await act('Channels', 'plain', 'C2');
    await act('Channels', 'fill', 'C2', '#ffee00');
    await act('Channels', 'color', 'A3:B3', '#ff0000');
    await act('Channels', 'wrap', 'B3');
    await act('Channels', 'center', 'B3');
    await act('Channels', 'format', 'C3', '0.000');
    await act('Channels', 'bold', 'H12');
    await act('Channels', 'value', 'C4', '7');
    await act('Channels', 'clear', 'C5');
    const copy = await saved();
    expect(changedParts(everything, copy)).toEqual(['xl/styles.xml', 'xl/worksheets/sheet1.xml']);
    const own = { numberFormat: '0.0" mV"', font: 'Arial', size: 10 };
    expect(lookIn(copy, 'Channels', 2, 3)).toEqual({ ...own, fill: 'FFEE00' });
    const plain = { numberFormat: 'General', font: 'Arial', size: 10 };
    expect(lookIn(copy, 'Channels', 3, 1)).toEqual({ ...plain, color: 'FF0000' });
    expect(lookIn(copy, 'Channels', 3, 2)).toEqual({
      ...plain,
      color: 'FF0000',
      wrap: true,
      align: 'center',
    });
    expect(lookIn(copy, 'Channels', 3, 3)).toEqual({ ...own, numberFormat: '0.000', bold: true });
    expect(lookIn(copy, 'Channels', 12, 8)).toMatchObject({ bold: true });
    expect(lookIn(copy, 'Channels', 4, 3)).toEqual({ ...own, bold: true });
    expect(cellIn(copy, 'Channels', 4, 3)?.value).toBe(7);
    expect(cellIn(copy, 'Channels', 5, 3) ?? { value: null, style: 0 }).toMatchObject({
      value: null,
      style: 0,
    });
    opensWell(copy);
    expect(Buffer.compare(copy, await saved())).toBe(0);
  });

  it('has the widths, heights and merged cells that were changed, not those taken back', async () => {
    await open('all.xlsx', everything);
    await size('Channels', 'column', 1, 143);
    await size('Channels', 'column', 8, 40);
    await size('Channels', 'row', 3, 44);
    await size('Channels', 'row', 20, 60);
    await size('Channels', 'row', 21, 70);
    await undo();
    await act('Channels', 'merge', 'F10:G11');
    const copy = await saved();
    expect(changedParts(everything, copy)).toEqual(['xl/worksheets/sheet1.xml']);
    const { columns, rows, merges } = sheetIn(copy, 'Channels');
    expect(columns).toEqual([
      { first: 2, last: 2, width: 143 },
      { first: 9, last: 9, width: 40 },
    ]);
    // 44 and 60 pixels at 96 an inch are 33 and 45 points.
    expect(rows.flatMap(({ row, height }) => (height === undefined ? [] : [[row, height]]))).toEqual([
      [4, 33],
      [21, 45],
    ]);
    expect(merges).toEqual([{ top: 10, left: 6, bottom: 11, right: 7 }]);
    opensWell(copy);
  });

  it('is refused where merged cells reach into a table, with the cure', async () => {
    await open('all.xlsx', everything);
    await act('Channels', 'merge', 'A2:A3');
    await page.getByRole('button', { name: 'Save a copy' }).click();
    await expect.poll(note).toMatch(/A2:A3 reach into the table “ChannelTable”.*Unmerge/);
  });

  it('brings along what the pane keeps, and a question before it is lost', async () => {
    await open('all.xlsx', everything);
    let asked = 0;
    page.on('dialog', (dialog) => {
      asked++;
      void dialog.accept();
    });
    const policy = { tolerance: 0.04, note: '<&"µm' };
    const keep = (value: unknown) =>
      page.evaluate((kept) => window.tripdriftBench!.port.writeSetting('tripdrift.policy', kept), value);
    const kept = () => page.evaluate(() => window.tripdriftBench!.port.readSetting('tripdrift.policy'));
    await keep(policy);
    const copy = await saved();
    expect([...readSettings(copy)].map(([key, json]) => [key, JSON.parse(json) as unknown])).toEqual([
      ['tripdrift.policy', policy],
    ]);
    opensWell(copy);
    // Saved changes ask nothing; the same value again is no change.
    await keep(policy);
    await page.reload();
    await visit.shown('harbour-station.xlsx');
    expect(asked).toBe(0);
    expect(await kept()).toBeNull();
    await open('again.xlsx', copy);
    expect(await kept()).toEqual(policy);
    expect(Buffer.compare(copy, await saved())).toBe(0);
    await keep(null);
    await page.reload();
    expect(asked).toBe(1);
  });

  it('brings settings along from a table of plain text too', async () => {
    const buffer = Buffer.from('Tag,Danger (mil)\nV-1,5\n');
    await page.locator('input[type=file]').setInputFiles({ name: 'list.csv', mimeType: 'text/csv', buffer });
    await visit.shown('list.csv');
    await page.evaluate(() => window.tripdriftBench!.port.writeSetting('tripdrift.columns', { a: 1 }));
    const copy = await saved();
    expect(readSettings(copy).get('tripdrift.columns')).toBe('{"a":1}');
    expect(objections(copy)).toEqual([]);
  });

  /** Inserts or deletes rows or columns of a sheet, counted from 0. */
  const step = (
    sheet: string,
    work: 'insertRows' | 'insertColumns' | 'deleteRows' | 'deleteColumns',
    at: number,
    count = 1,
  ) =>
    page.evaluate(
      ([name, action, index, many]) => {
        const front = window.tripdriftBench!.grid.api.getActiveWorkbook()!.getSheetByName(name)!;
        front[action](index, many);
      },
      [sheet, work, at, count] as const,
    );
  const save = () => page.getByRole('button', { name: 'Save a copy' }).click();

  it('has rows and columns that came and went, with all that the file holds around them', async () => {
    await open('all.xlsx', everything);
    await step('Channels', 'insertRows', 2, 2);
    await step('Channels', 'deleteRows', 5);
    await step('Channels', 'insertColumns', 0);
    await step('Channels', 'deleteRows', 0);
    await undo();
    await act('Channels', 'value', 'D3', '150');
    await act('Channels', 'fill', 'D5', '#ffee00');
    await act('Channels', 'value', 'B4', 'new');
    const copy = await saved();
    expect(await note()).toBe('A copy of all.xlsx went to your downloads.');
    // Rows 2 and 3 stand at 2 and 5, row 4 is gone, row 5 stands at 6; all one column to the right.
    expect(Object.keys(cellsOf(copy)).filter((address) => address.startsWith('B'))).toEqual([
      'B1',
      'B2',
      'B4',
      'B5',
      'B6',
      'B8',
    ]);
    expect(cellsOf(copy)['B5']?.value).toBe('P-1Y');
    expect(cellsOf(copy)['B6']?.value).toBe('F-2Y');
    expect(cellsOf(copy)['E5']).toMatchObject({ value: 320, formula: 'D5*2' });
    expect(cellsOf(copy)['B8']?.formula).toBe('TRIPDRIFT.EFFECTIVE(5,200,160)');
    expect(cellsOf(copy)['B4']?.value).toBe('new');
    // New rows look like the row above them; what was filled keeps the rest of its own look.
    expect(lookIn(copy, 'Channels', 3, 4)).toEqual(lookIn(everything, 'Channels', 2, 3));
    expect(lookIn(copy, 'Channels', 5, 4)).toEqual({
      ...lookIn(everything, 'Channels', 3, 3),
      fill: 'FFEE00',
    });
    expect(partText(copy, 'xl/tables/table1.xml')).toContain(' ref="B1:E6"');
    const sheet = partText(copy, 'xl/worksheets/sheet1.xml');
    expect(sheet).toContain('<conditionalFormatting sqref="D2:D6">');
    expect(sheet).toMatch(/<dataValidation type="list"[^>]* sqref="C2:C6">/);
    expect(partText(copy, 'xl/workbook.xml')).toContain('>Channels!$D$2:$D$6<');
    expect(partText(copy, 'xl/charts/chart1.xml')).toContain('$D$2:$D$6');
    opensWell(copy);
    await open('again.xlsx', copy);
    expect(changedParts(copy, await saved())).toEqual([]);
  });

  it('is the file again where rows that came and went were taken back', async () => {
    await open('all.xlsx', everything);
    await step('Channels', 'insertRows', 2, 2);
    await step('Channels', 'deleteRows', 4);
    await step('Channels', 'deleteColumns', 2);
    for (let count = 0; count < 3; count++) await undo();
    expect(changedParts(everything, await saved())).toEqual([]);
  });

  /** Does something to the first sheet at the moment at which the grid has begun its next calculation. */
  const amidCalculation = (work: 'undo' | 'value') =>
    page.evaluate((action) => {
      const { api } = window.tripdriftBench!.grid;
      const book = api.getActiveWorkbook()!;
      return new Promise<void>((resolve) => {
        const heard = api.getFormula().calculationProcessing(({ totalFormulasToCalculate: formulas }) => {
          if (formulas === 0) return;
          heard.dispose();
          if (action === 'undo') book.undo();
          else book.getSheetByName('Channels')!.getRange('D5').setValue(7);
          resolve();
        });
      });
    }, work);

  it('has no result where its formula stood when rows were taken back amid a calculation', async () => {
    await open('all.xlsx', everything);
    const amid = amidCalculation('undo');
    await step('Channels', 'deleteColumns', 2);
    await amid;
    expect(changedParts(everything, await saved())).toEqual([]);
    const again = amidCalculation('undo');
    await step('Channels', 'deleteRows', 2);
    await again;
    expect(changedParts(everything, await saved())).toEqual([]);
  });

  it('has what was entered over a formula amid its calculation', async () => {
    await open('all.xlsx', everything);
    const amid = amidCalculation('value');
    await act('Channels', 'value', 'C5', '150');
    await amid;
    const cells = cellsOf(await saved());
    expect(cells['D5']).toMatchObject({ value: 7 });
    expect(cells['D5']?.formula).toBeUndefined();
    expect(cells['C5']?.value).toBe(150);
  });

  it('is refused where a table would lose what it goes by, with the cure', async () => {
    await open('all.xlsx', everything);
    await step('Channels', 'insertColumns', 2);
    await save();
    await expect.poll(note).toMatch(/column was inserted into.*“ChannelTable” in A1:D5.*Undo/);
    await undo();
    await step('Channels', 'deleteRows', 0);
    await save();
    await expect.poll(note).toMatch(/row of headings was deleted.*Undo/);
    await undo();
    await act('Channels', 'value', 'A1', 'Other');
    await save();
    await expect.poll(note).toMatch(/cell A1 is a heading of the table “ChannelTable”.*Undo/);
  });

  it('says what stayed where rows were put into another order', async () => {
    await open('all.xlsx', everything);
    await page.evaluate(() => {
      const front = window.tripdriftBench!.grid.api.getActiveWorkbook()!.getActiveSheet();
      front.moveRows(front.getRange('2:2'), 4);
    });
    const copy = await saved();
    expect(await note()).toContain('rows were put into another order');
    const tags = ['A2', 'A3', 'A4', 'A5'].map((address) => cellsOf(copy)[address]?.value);
    expect(tags).toEqual(['P-1Y', 'F-2X', 'P-1X', 'F-2Y']);
    expect(cellsOf(copy)['D4']).toMatchObject({ value: 400, formula: 'C4*2' });
    expect(lookIn(copy, 'Channels', 4, 3)).toEqual(lookIn(everything, 'Channels', 2, 3));
    opensWell(copy);
  });

  it('keeps a sheet that was deleted, and is refused where one was renamed', async () => {
    await open('all.xlsx', everything);
    await page.evaluate(() => {
      const book = window.tripdriftBench!.grid.api.getActiveWorkbook()!;
      book.insertSheet('More');
      book.deleteSheet(book.getSheetByName('Pivot & more')!);
    });
    const copy = await saved();
    expect(await note()).toContain('Sheet “Pivot & more” was deleted here; the copy still has it.');
    expect(viewWorkbook('x.xlsx', copy).sheets.map(({ name }) => name)).toEqual([
      'Channels',
      'Pivot & more',
      'More',
    ]);
    opensWell(copy);
    await page.evaluate(() => {
      window.tripdriftBench!.grid.api.getActiveWorkbook()!.getSheetByName('Channels')!.setName('Probes');
    });
    await save();
    await expect.poll(note).toMatch(/“Channels” was renamed to “Probes”.*rename it back/);
  });
});
