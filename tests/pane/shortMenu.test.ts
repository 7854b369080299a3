import { expect, it } from 'vitest';
import { harbourStation } from '../../src/tools/demo/harbourStation.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { describeWithChromium } from '../chromium.ts';
import { visits } from './visit.ts';

const demo = readWorkbook('demo.xlsx', harbourStation()).sheets.map(({ name, rows }) => ({ name, rows }));

describeWithChromium('menu of answers', () => {
  const visit = visits();

  it('holds a few columns of a wide list, and the others when asked', async () => {
    const page = await visit('workbook=given', {}, demo);
    await page.getByRole('tree').waitFor();
    await page.getByRole('button', { name: 'Show what is understood' }).click();
    await page.getByRole('button', { name: 'Change: Machine', exact: true }).click();
    const menu = page.getByLabel('Answer: Machine').locator('option');
    expect(await menu.count()).toBeLessThanOrEqual(7);
    await page.getByRole('button', { name: /^Offer \d+ more columns$/u }).click();
    await expect.poll(() => menu.count()).toBeGreaterThan(20);
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('SELECT');
  });
});
