import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { meanings } from '../../src/audit/read/understand/meaning.ts';
import { standings } from '../../src/pane/audit/channels/standing.ts';
import { policyParts } from '../../src/pane/audit/policy/policyFields.ts';
import { standingHelp } from '../../src/pane/help/helpMessages.ts';
import { describeWithChromium } from '../chromium.ts';
import { visits } from './visit.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

describe('help', () => {
  const sentences = [
    ...standings.map((standing) => standingHelp[standing]),
    ...[...meanings.values()].map(({ help }) => help),
    ...policyParts.flatMap(({ fields }) =>
      fields.filter(({ holds }) => holds !== 'unit').map(({ help, label }) => help ?? `none: ${label}`),
    ),
  ];

  it('has one sentence, and no more than a few, for each verdict, meaning and policy entry', () => {
    expect(sentences.length).toBeGreaterThan(60);
    for (const sentence of sentences) {
      expect(sentence).toMatch(/^[A-Z].+\.$/u);
      expect(sentence.length).toBeLessThan(150);
    }
    expect(new Set(sentences).size).toBeGreaterThan(60);
  });
});

describeWithChromium('help in the task pane', () => {
  const visit = visits();
  let page: Page;

  async function violations(): Promise<string[]> {
    const { violations: found } = await page.evaluate(async (script) => {
      if (!('axe' in window)) (0, eval)(script);
      return (window as unknown as { axe: { run: () => Promise<AxeResults> } }).axe.run();
    }, axe);
    return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
  }
  const overflow = (): Promise<number> =>
    page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

  it.each([
    ['light', { colorScheme: 'light' }],
    ['dark', { colorScheme: 'dark' }],
    ['high contrast', { colorScheme: 'dark', forcedColors: 'active' }],
    ['200 % of a narrow window', { viewport: { width: 320, height: 360 }, deviceScaleFactor: 2 }],
  ] satisfies [string, BrowserContextOptions][])(
    'opens beside verdicts and policy entries without a fault of accessibility, %s',
    async (_, options) => {
      page = await visit('workbook=example', { ...options, bypassCSP: true });
      await page.getByRole('tree').waitFor();
      await page.locator('.channel-line').first().click();
      await page.locator('summary', { hasText: 'Policy' }).click();
      const marks = page.getByRole('button', { name: /^What does this mean/u });
      expect(await marks.count()).toBeGreaterThan(20);
      for (const mark of await marks.all()) await mark.click();
      expect(await page.getByRole('note').count()).toBe(await marks.count());
      expect(await violations()).toEqual([]);
      expect(await overflow()).toBe(0);
    },
  );

  it('opens and closes by keys, and is no part of the label of its field', async () => {
    page = await visit('workbook=example');
    await page.locator('summary', { hasText: 'Policy' }).click();
    const mark = page.getByRole('button', { name: 'What does this mean: Tolerance on sensitivity' });
    await mark.focus();
    await page.keyboard.press('Enter');
    await page.getByText('How far the measured sensitivity may be off').waitFor();
    expect(await mark.getAttribute('aria-expanded')).toBe('true');
    await page.keyboard.press('Escape');
    expect(await page.getByText('How far the measured sensitivity may be off').count()).toBe(0);
    expect(await page.getByLabel('Tolerance on sensitivity, ±', { exact: true }).inputValue()).toBe('5');
  });

  it('stands beside each meaning that is asked for', async () => {
    page = await visit('workbook=unclear');
    await page.getByRole('button', { name: 'What does this mean: Measured sensitivity' }).click();
    await page.getByText('What the chain really gives per unit of movement').waitFor();
  });
});

describeWithChromium('tour of the task pane', () => {
  const visit = visits();

  it('goes through three steps over their views, and is not shown again', async () => {
    const page = await visit('workbook=example');
    const tour = page.getByRole('region', { name: 'Tour' });
    await tour.getByText('1 of 3.').waitFor();
    await page.getByRole('tab', { name: 'Quick answer' }).click();
    await tour.getByRole('button', { name: 'Next' }).focus();
    await page.keyboard.press('Enter');
    await tour.getByText('2 of 3.').waitFor();
    await page.getByRole('tab', { name: 'Audit', selected: true }).waitFor();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toContain('2 of 3.');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await tour.getByRole('button', { name: 'Done' }).click();
    expect(await tour.count()).toBe(0);
    await page.reload();
    await page.getByRole('button', { name: 'Run audit' }).waitFor();
    expect(await tour.count()).toBe(0);
  });

  it('can be skipped, by its button or by Escape', async () => {
    for (const skip of ['button', 'key'] as const) {
      const page = await visit('workbook=example');
      const tour = page.getByRole('region', { name: 'Tour' });
      const button = tour.getByRole('button', { name: 'Skip the tour' });
      if (skip === 'button') await button.click();
      else {
        await button.focus();
        await page.keyboard.press('Escape');
      }
      expect(await tour.count()).toBe(0);
      await page.reload();
      await page.getByRole('button', { name: 'Run audit' }).waitFor();
      expect(await tour.count()).toBe(0);
      await page.evaluate(() => {
        localStorage.clear();
      });
    }
  });
});
