import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeWithChromium } from '../chromium.ts';
import { hostileRecord } from './pages/recordWorkbook.ts';
import { visits } from './visit.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const themes: Readonly<Record<string, BrowserContextOptions>> = {
  light: { colorScheme: 'light' },
  dark: { colorScheme: 'dark' },
  'high contrast': { colorScheme: 'dark', forcedColors: 'active' },
};

describeWithChromium('calibration record in the task pane', () => {
  const visit = visits();
  let page: Page;

  async function chosen(tag: string, options: BrowserContextOptions = {}): Promise<void> {
    page = await visit(`workbook=records&visit=${tag.length}`, options);
    await page.getByRole('treeitem').filter({ hasText: tag }).first().click();
    await page.getByRole('article').waitFor();
    const folder = process.env['PANE_PICTURES'];
    if (folder !== undefined) {
      const name = `${folder}/${tag.replace(/\W/g, '')}-${options.forcedColors ?? options.colorScheme ?? 'light'}.png`;
      await page.getByRole('article').screenshot({ path: name });
    }
  }
  const drawing = () => page.getByRole('img', { name: 'Calibration record' });
  const described = async (): Promise<string> => (await drawing().locator('desc').textContent()) ?? '';

  // By hand: as left it is straight at 0.2 V/mil about the gap of 8/0.2 = 40 mil; danger acts at 5·200/200 = 5 mil, that
  // is from 40 − 2.5 to 40 + 2.5 mil.
  it('draws volts, deviation and steps, the gap in service and the swing at danger', async () => {
    await chosen('V-1');
    const words = await described();
    expect(words).toContain('17 points from 10 to 90 mil, average sensitivity 200 mV/mil');
    expect(words).toContain('In service at a gap of 40 mil');
    expect(words).toMatch(/When danger acts the gap swings from 37\.5 to 42\.5 mil/);
    expect(await drawing().locator('.panel').count()).toBe(3);
    expect(await drawing().locator('.record-point').count()).toBe(17 + 17 + 16);
    const width = await drawing()
      .locator('.record-danger')
      .evaluate((mark) => Number(mark.getAttribute('width')));
    const [least, most] = await drawing()
      .locator('.panel')
      .first()
      .locator('.record-point')
      .evaluateAll((marks) => [marks[0], marks.at(-1)].map((mark) => Number(mark?.getAttribute('cx'))));
    expect(width / (most! - least!)).toBeCloseTo(5 / 80, 6);
    await page.getByText(/Other record, as found: average/).waitFor();
  });

  // By hand: the record as left is straight at 0.2 V/mil about 8/0.2 = 40 mil, so that 5·200/200 = 5 mil.
  it('shows the channel as it is now, and below each threshold what was found of it', async () => {
    await chosen('V-1');
    const article = page.getByRole('article');
    await article.getByText('Sensitivity 200 mV/mil by the calibration record, 0 % off').waitFor();
    const danger = await article
      .getByRole('listitem')
      .filter({ hasText: /^Danger/u })
      .first()
      .innerText();
    expect(danger).toMatch(
      /^Danger ✓ OK \?\nSet 5, really trips at 5 mil\..*\nAs found: set 5, really trips at 6\.25 mil; corrected\./su,
    );
    expect(danger).toContain('By the calibration record: 5 mil, OK.');
    await article.getByText('As it was found').waitFor();
    expect(await article.innerText()).toContain('Sensitivity 160 mV/mil, −20 % off the configured 200');
    await chosen('V-4');
    expect(await page.getByRole('article').innerText()).not.toMatch(/as left|as it was found/iu);
  });

  // By hand: 2.2 V at 0.2 V/mil is a gap of 11 mil, 1 mil from the first; the record supports 2 mil of swing.
  it('says that danger cannot be shown where the record ends too near', async () => {
    await chosen('V-3');
    expect(await described()).toContain('Danger cannot be shown to act on this record');
    expect(await drawing().locator('.record-danger').count()).toBe(0);
  });

  it('has a table of the points for those who do not see the drawing', async () => {
    await chosen('V-1');
    await page.locator('summary', { hasText: 'The points as a table' }).click();
    const table = page.getByRole('table', { name: 'Calibration record' });
    expect(await table.getByRole('row').count()).toBe(18);
    expect(await table.getByRole('row').nth(2).innerText()).toMatch(/^15\s+−3\s+200/);
  });

  it('shows nothing of it for a channel without a record', async () => {
    await chosen('V-4');
    expect(await drawing().count()).toBe(0);
  });

  it('shows hostile text as text', async () => {
    await chosen('onerror');
    const article = page.getByRole('article');
    expect(await article.innerText()).toContain(hostileRecord.series);
    expect(await article.innerText()).toContain('Rec<b>ords');
    expect(await article.locator('script, img, b b').count()).toBe(0);
    expect(await page.title()).not.toBe('1');
  });

  it.each(Object.entries(themes))(
    'has no accessibility violation and no sideways scroll, %s',
    async (_, theme) => {
      // Rules: axe-core, which checks WCAG 2.x A and AA.
      await chosen('V-1', { ...theme, bypassCSP: true });
      await page.locator('summary', { hasText: 'The points as a table' }).click();
      const { violations } = await page.evaluate(async (script) => {
        (0, eval)(script);
        return (window as unknown as { axe: { run: () => Promise<AxeResults> } }).axe.run();
      }, axe);
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual(
        [],
      );
      expect(
        await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        ),
      ).toBe(0);
    },
  );
});
