/// <reference lib="dom" />
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { FrameLocator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { parseColumnMap } from '../../src/audit/model/columnMap.ts';
import { readSettings } from '../../src/hosts/file/patch/settings/readSettings.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { describeWithChromium } from '../chromium.ts';
import { sheetOf } from '../hosts/file/write/model.ts';
import { foreignWorkbook } from '../pane/pages/workbooks.ts';
import { type BenchVisit, eachVisits } from './openPage.ts';

const foreign = newWorkbook(
  foreignWorkbook().workbook.sheets.map(({ name, rows }) => sheetOf(name, rows as never)),
);
const untidy = (name: string): Buffer =>
  readFileSync(join(import.meta.dirname, '..', 'untidy', 'workbooks', name));

describeWithChromium('a list in foreign words in the bench', () => {
  let visit: BenchVisit;
  let page: Page;
  let pane: FrameLocator;
  /** What the user pressed since the workbook was opened. */
  let clicks: string[];

  eachVisits((begun) => {
    visit = begun;
    ({ page, pane } = visit);
    clicks = [];
  });

  const press = async (role: 'button' | 'tab', name: string | RegExp): Promise<void> => {
    clicks.push(String(name));
    await pane.getByRole(role, { name }).first().click();
  };
  const open = async (name: string, bytes: Uint8Array): Promise<void> => {
    clicks.push('Open…');
    await visit.open(name, bytes);
    await visit.shown(name);
  };
  const auditIt = async (): Promise<void> => {
    await press('tab', 'Audit');
    await press('button', 'Run audit');
    await pane.locator('.outcome').first().waitFor();
  };
  const gridPicture = (): Promise<Buffer> => page.locator('#grid').screenshot();

  it('is judged after one yes, and the copy remembers it', async () => {
    await open('pruefprotokoll.xlsx', foreign);
    await auditIt();
    expect(await pane.getByRole('tree').count()).toBe(0);
    expect(await visit.violations()).toEqual([]);
    await press('button', 'Yes to all 4');
    // 5·200/160 by hand.
    await pane.getByText('Danger set 5, really trips at 6.25 mil').waitFor();
    expect(clicks).toEqual(['Open…', 'Audit', 'Run audit', 'Yes to all 4']);
    const copy = await visit.saved();
    const kept = parseColumnMap(JSON.parse(readSettings(copy).get('tripdrift.columns') ?? 'null'));
    const again = audit(readWorkbook('pruefprotokoll.xlsx', copy), { map: kept });
    expect(again.questions.filter(({ needed }) => needed)).toEqual([]);
    await visit.open('copy.xlsx', copy);
    await visit.shown('copy.xlsx');
    await visit.audit();
    expect(await pane.getByRole('button', { name: /Yes/ }).count()).toBe(0);
  });

  it('has its column in question marked in the grid, without a change to the workbook', async () => {
    await open('pruefprotokoll.xlsx', foreign);
    await auditIt();
    const shownSheet = (): Promise<string | undefined> =>
      page.evaluate(() =>
        window.tripdriftBench!.grid.api.getActiveWorkbook()?.getActiveSheet().getSheetName(),
      );
    await expect.poll(shownSheet).toBe('Sonden');
    await pane.getByRole('button', { name: 'Change: Danger setpoint' }).focus();
    await expect.poll(shownSheet).toBe('Tafel');
    const marked = await gridPicture();
    await page.evaluate(() => window.tripdriftBench!.port.pointAt(null));
    await expect.poll(async () => Buffer.compare(marked, await gridPicture())).not.toBe(0);
    expect(await page.evaluate(() => window.tripdriftBench!.touched.size)).toBe(0);
  });

  it('takes a column clicked in the grid', async () => {
    await open('pruefprotokoll.xlsx', foreign);
    await auditIt();
    await press('button', 'Change: Measured sensitivity');
    const box = (await page.locator('#grid canvas[id^=univer-sheet-main-canvas]').boundingBox())!;
    // Over the third column of the sheet, by the widths that new sheets have.
    const { left, top } = await page.evaluate(() => {
      const sheet = window.tripdriftBench!.grid.api.getActiveWorkbook()!.getActiveSheet();
      const widths = [0, 1].map((at) => sheet.getColumnWidth(at));
      return { left: widths.reduce((sum, width) => sum + width, 0), top: 4.5 * sheet.getRowHeight(4) };
    });
    await page.mouse.click(box.x + 46 + left + 20, box.y + 20 + top);
    await pane
      .getByRole('row', { name: 'Measured sensitivity' })
      .getByText('Kennwert alt', { exact: true })
      .waitFor();
  });

  it.each(['02-kennwert.xlsx', '03-dos-listas.xlsx', '08-rack-before-and-after.xlsx'])(
    '%s is judged in five clicks at most',
    async (name) => {
      await open(name, untidy(name));
      await auditIt();
      if ((await pane.getByRole('tree').count()) === 0) await press('button', /^Yes/);
      await pane.getByRole('tree').waitFor();
      expect(await pane.locator('.channel-line').count()).toBeGreaterThan(2);
      expect(clicks.length).toBeLessThanOrEqual(5);
    },
  );
});
