/// <reference lib="dom" />
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeWithChromium } from '../chromium.ts';
import { visits } from './visit.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const kept = (page: Page): Promise<unknown> =>
  page.evaluate(() => window.portLog.settings['tripdrift.columns']);
const pointedAt = (page: Page): Promise<unknown> =>
  page.evaluate(() => window.portLog.calls.filter(([call]) => call === 'pointAt').at(-1)?.[1]);
const column = (sheet: string, at: number, top: number, bottom: number): object => ({
  sheet,
  area: { top, left: at, bottom, right: at },
});

describeWithChromium('the table of questions in the task pane', () => {
  const visit = visits();

  const row = (page: Page, title: string) => page.getByRole('row', { name: title });
  const press = (page: Page, name: string | RegExp): Promise<void> =>
    page.getByRole('button', { name, exact: true }).first().click();
  async function violations(page: Page): Promise<string[]> {
    const { violations: found } = await page.evaluate(async (script) => {
      if (!('axe' in window)) (0, eval)(script);
      return (window as unknown as { axe: { run: () => Promise<AxeResults> } }).axe.run();
    }, axe);
    return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
  }
  const overflow = (page: Page): Promise<number> =>
    page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

  it('shows column, values, unit and evidence of each meaning, and judges all after one yes', async () => {
    const page = await visit('workbook=foreign');
    const danger = row(page, 'Danger setpoint');
    await danger.waitFor();
    expect(await danger.textContent()).toMatch(/Tafel!D1.*Abschaltung.*5, 5, 5.*mil.*Abschaltung/);
    expect(await page.getByRole('row').count()).toBe(5);
    expect(await page.getByRole('tree').count()).toBe(0);
    await press(page, 'Yes to all 4');
    // 5·200/160 by hand.
    await page.getByText('Danger set 5, really trips at 6.25 mil').waitFor();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Result');
    expect(await page.getByRole('row').count()).toBe(0);
  });

  it('shows the result of what was read, and a line that leads to what is open', async () => {
    const page = await visit('workbook=partly');
    await page.getByText('6 of 6 channels').waitFor();
    await page.getByRole('heading', { name: '1 question open' }).waitFor();
    expect(await page.getByRole('row').count()).toBe(0);
    expect(await pointedAt(page)).toBeNull();
    await press(page, 'Answer');
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('1 question open');
    await row(page, 'List in force').getByRole('button', { name: "Sheet 'Rack N2'" }).waitFor();
    await press(page, 'Change: List in force');
    await page.getByLabel('Answer: List in force').selectOption({ label: "Sheet 'Rack N2 after upgrade'" });
    await expect.poll(() => pointedAt(page)).toMatchObject({ sheet: 'Rack N2 after upgrade' });
    await press(page, 'Yes');
    // 6·200/160 by hand.
    await page.getByText('Danger set 6, really trips at 7.5 mil').first().waitFor();
    expect(await page.getByRole('heading', { name: 'question open' }).count()).toBe(0);
  });

  it('points at the column in question, and at nothing once all is answered', async () => {
    const page = await visit('workbook=foreign');
    await row(page, 'Measured sensitivity').waitFor();
    await expect.poll(() => pointedAt(page)).toEqual(column('Sonden', 2, 3, 9));
    await page.getByRole('button', { name: 'Change: Alert setpoint' }).focus();
    await expect.poll(() => pointedAt(page)).toEqual(column('Tafel', 3, 1, 7));
    await press(page, 'Yes to all 4');
    await page.getByRole('tree').waitFor();
    await expect.poll(() => pointedAt(page)).toBeNull();
  });

  it('takes the column that is clicked in the sheet, and says why it can’t take another', async () => {
    const page = await visit('workbook=foreign');
    await press(page, 'Change: Measured sensitivity');
    await page.evaluate(() => window.portLog.select({ sheet: 'Sonden', row: 5, column: 1 }));
    await page.getByRole('alert').filter({ hasText: 'can’t be the measured sensitivity' }).waitFor();
    await page.evaluate(() => window.portLog.select({ sheet: 'Sonden', row: 5, column: 3 }));
    const measured = row(page, 'Measured sensitivity');
    await measured.getByText('Kennwert alt', { exact: true }).waitFor();
    await measured.getByText('You chose it.').waitFor();
    expect(await page.getByRole('alert').count()).toBe(0);
    await page.getByLabel('Unit: Measured sensitivity').fill('mV/mil');
    await press(page, 'Done');
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-label')))
      .toBe('Change: Measured sensitivity');
    await page.evaluate(() => window.portLog.select({ sheet: 'Sonden', row: 5, column: 4 }));
    await press(page, 'Yes to all 4');
    await page.getByRole('tree').waitFor();
    expect(await kept(page)).toMatchObject({
      tables: [
        {
          sheet: 'Sonden',
          columns: { 'measured sensitivity': { at: 'C', header: 'Kennwert alt' } },
          units: { 'measured sensitivity': 'mV/mil' },
        },
        { sheet: 'Tafel' },
      ],
    });
  });

  it('can be answered by keyboard alone', async () => {
    const page = await visit('workbook=foreign');
    await row(page, 'Measured sensitivity').waitFor();
    await page.getByRole('tab', { name: 'Audit' }).focus();
    const tabTo = async (name: string): Promise<void> => {
      for (let step = 0; step < 60; step++) {
        await page.keyboard.press('Tab');
        const at = await page.evaluate(() => {
          const focused = document.activeElement;
          return focused?.getAttribute('aria-label') ?? focused?.textContent ?? '';
        });
        if (at === name) return;
      }
      expect.fail(`The Tab key never came to ${name}`);
    };
    await tabTo('Change: Danger setpoint');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('SELECT');
    await page.keyboard.press('End');
    await page.keyboard.press('Escape');
    await row(page, 'Danger setpoint').getByText('Leave it open').waitFor();
    await page.getByRole('tab', { name: 'Audit' }).focus();
    await tabTo('Use 3 of 4 answers');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: '1 question', exact: true }).waitFor();
    await page.getByRole('row', { name: 'Danger setpoint' }).waitFor();
  });

  it.each(['light', 'dark'] as const)(
    'has no accessibility violation and no sideways scroll, %s',
    async (colorScheme) => {
      const page = await visit('workbook=foreign', { colorScheme, bypassCSP: true });
      await row(page, 'Measured sensitivity').waitFor();
      await page.locator('summary', { hasText: 'What was understood' }).click();
      await press(page, 'Change: Danger setpoint');
      await page.getByLabel('Unit: Danger setpoint').fill('nonsense');
      await page.getByText('No unit known here').waitFor();
      for (const width of [320, 900]) {
        await page.setViewportSize({ width, height: 900 });
        expect(await violations(page)).toEqual([]);
        expect(await overflow(page)).toBe(0);
      }
    },
  );

  it('never speaks of the command line', async () => {
    const page = await visit('workbook=foreign');
    await row(page, 'Measured sensitivity').waitFor();
    for (const summary of await page.locator('main details > summary').all()) {
      if (await summary.isVisible()) await summary.click();
    }
    expect(await page.locator('main').innerText()).not.toMatch(/column map|JSON|--map/i);
  });

  it('says what was understood, and lets it be changed', async () => {
    const page = await visit('workbook=example');
    await page.getByRole('tree').waitFor();
    await press(page, 'Show what is understood');
    await press(page, 'Change: Danger setpoint');
    await row(page, 'Danger setpoint').getByRole('button', { name: 'Monitor!D1' }).waitFor();
    await page.getByLabel('Answer: Danger setpoint').selectOption({ index: 1 });
    await press(page, 'Use 1 change');
    await page.getByRole('tree').waitFor();
    expect(await kept(page)).toMatchObject({ tables: [{ sheet: 'Monitor', columns: { danger: {} } }] });
  });
});
