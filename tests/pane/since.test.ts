import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { auditReducer, firstAuditState, type AuditAction } from '../../src/pane/audit/auditState.ts';
import { earlierIn } from '../../src/pane/audit/since/earlierIn.ts';
import { describeWithChromium } from '../chromium.ts';
import { hostileTag, sinceWorkbook } from './pages/sinceWorkbook.ts';
import { visits } from './visit.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const { workbook } = sinceWorkbook();

describe('earlier results chosen in the pane', () => {
  const read: AuditAction = { type: 'read', workbook };
  const after = (...actions: AuditAction[]) => actions.reduce(auditReducer, firstAuditState);

  it('are found by the name of their sheet', () => {
    expect(earlierIn(workbook, 'Results 2')?.channels).toHaveLength(4);
    expect(earlierIn(workbook, 'Channels')).toBeUndefined();
    expect(earlierIn(workbook, null)).toBeUndefined();
  });

  it('are kept for the next audit, unless their sheet is gone', () => {
    const chosen: AuditAction = { type: 'again', earlier: 'Results 2' };
    expect(after(read, chosen, read)).toMatchObject({ earlier: 'Results 2' });
    const without = { ...workbook, sheets: workbook.sheets.slice(0, 2) };
    expect(after(read, chosen, { type: 'read', workbook: without })).toMatchObject({ earlier: null });
  });

  it('leave a result stale that was stale before', () => {
    const report = audit(workbook);
    const stale = after(read, { type: 'audited', report }, { type: 'workbook changed' });
    const again = [
      { type: 'again', earlier: null },
      { type: 'audited', report },
    ] as const;
    expect(again.reduce<typeof stale>(auditReducer, stale).stale).toBe(true);
  });
});

describeWithChromium('comparison with earlier results in the task pane', () => {
  const visit = visits();
  let page: Page;

  async function audited(name: string, options: BrowserContextOptions = {}): Promise<void> {
    page = await visit(`workbook=${name}`, options);
    await page.getByRole('tree').waitFor();
  }
  const choose = async (sheet: string): Promise<void> => {
    await page.locator('summary', { hasText: 'Compare with earlier results' }).click();
    const field = page.getByLabel('Earlier results');
    const option = field.locator('option', { hasText: sheet });
    await field.selectOption((await option.getAttribute('value')) ?? '');
  };

  it('lists the sheets by name and time, and shows what changed, worst first', async () => {
    await audited('since', { locale: 'en-GB', timezoneId: 'UTC', bypassCSP: true });
    await choose('Results 2');
    await page.getByText('2 now late, 1 gone').waitFor();
    const options = await page.getByLabel('Earlier results').locator('option').allTextContents();
    expect(options).toHaveLength(3);
    expect(options[1]).toMatch(/Results .* · 14 Mar 2025, 08:05/);
    const lines = await page.locator('.part .findings > li').allTextContents();
    // By hand: 5·200/160 = 6.25 mil.
    expect(lines[0]).toContain(`now late ${hostileTag}`);
    expect(lines[0]).toContain('Danger is late: really trips at 6.25 mil; it was OK at 5 mil before.');
    expect(await page.title()).not.toBe('1');
    const { violations } = await page.evaluate(async (script) => {
      (0, eval)(script);
      return (window as unknown as { axe: { run: () => Promise<AxeResults> } }).axe.run();
    }, axe);
    expect(violations.map(({ id }) => id)).toEqual([]);
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
    ).toBe(0);
    const folder = process.env['PANE_PICTURES'];
    if (folder !== undefined) await page.screenshot({ path: `${folder}/since.png`, fullPage: true });
  });

  it('writes the sheet of changes with the others, and none once the choice is taken back', async () => {
    await audited('since');
    await choose('Results 2');
    await page.getByText('2 now late, 1 gone').waitFor();
    await page.getByRole('button', { name: 'Write result sheets' }).click();
    await page.getByRole('button', { name: 'Audit changes' }).waitFor();
    await page.getByLabel('Earlier results').selectOption('');
    await page.getByText('2 now late, 1 gone').waitFor({ state: 'detached' });
  });

  it('is not offered where the workbook holds no earlier results', async () => {
    await audited('example');
    expect(await page.getByText('Compare with earlier results').count()).toBe(0);
  });
});
