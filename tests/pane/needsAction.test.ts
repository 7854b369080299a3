import fc from 'fast-check';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { AuditRefused } from '../../src/audit/model/refused.ts';
import type { Report } from '../../src/audit/model/report.ts';
import { harbourStation } from '../../src/tools/demo/harbourStation.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { book, oneChannel } from '../audit/book.ts';
import { randomBook } from '../audit/stations/randomBook.ts';
import { describeWithChromium } from '../chromium.ts';
import type { GivenSheet } from './pages/test.ts';
import { visits } from './visit.ts';

/** Several random stations that the audit takes, each with something critical. */
function stations(count: number): GivenSheet[][] {
  const found: GivenSheet[][] = [];
  fc.assert(
    fc.property(fc.gen(), (gen) => {
      const pages = randomBook(gen).pages.map(({ name, rows }) => ({ name, rows }));
      if (found.length < count && (reportOf(pages)?.summary.critical ?? 0) > 0) found.push(pages);
    }),
    { numRuns: 4 * count },
  );
  return found;
}

function reportOf(sheets: readonly GivenSheet[]): Report | null {
  try {
    return audit(book(...sheets.map(({ name, rows }) => [name, rows] as const)));
  } catch (error) {
    if (error instanceof AuditRefused) return null;
    throw error;
  }
}

describeWithChromium('what needs action, in the task pane', () => {
  const visit = visits();

  async function audited(sheets: readonly GivenSheet[]): Promise<Page> {
    const page = await visit('workbook=given', {}, sheets);
    await page.getByRole('tree').waitFor();
    return page;
  }

  /** Texts of all entries, shown to the last. */
  async function entries(page: Page): Promise<string[]> {
    const fold = page.locator('details', { hasText: 'All that needs action' });
    if (!(await fold.evaluate((part: HTMLDetailsElement) => part.open)))
      await fold.locator('summary').click();
    const more = fold.getByRole('button', { name: /^Show \d+ more$/u });
    const all = fold.locator('[data-code]');
    for (let before = -1; before !== (await all.count());) {
      before = await all.count();
      if ((await more.count()) > 0) await more.click();
    }
    return (await all.allInnerTexts()).map((text) => text.replace(/\s+/gu, ' '));
  }

  async function showsAll(sheets: readonly GivenSheet[]): Promise<void> {
    const { attention } = reportOf(sheets)!;
    const page = await audited(sheets);
    const shown = await entries(page);
    expect(shown).toHaveLength(attention.length);
    for (const [at, { severity, subject, headline, doNext }] of attention.entries()) {
      const words = severity === 'critical' ? 'Critical' : 'Warning';
      for (const part of [words, subject.machine, subject.tag, headline, doNext]) {
        expect(shown[at]).toContain(part.replace(/\s+/gu, ' ').trim().slice(0, 500));
      }
    }
    expect(await page.getByText('All OK').count()).toBe(0);
  }

  it('shows every entry of the demo, gravest first, each with its subject and what to do', async () => {
    const { sheets } = readWorkbook('demo.xlsx', harbourStation());
    await showsAll(sheets.map(({ name, rows }) => ({ name, rows })));
  });

  it('shows every entry of random stations', async () => {
    const some = stations(5);
    expect(some).toHaveLength(5);
    for (const sheets of some) await showsAll(sheets);
  });

  it('says that all is OK only where nothing needs action and nothing was left unread', async () => {
    const sound = oneChannel({ channel: { 'Uncertainty (%)': 2 } }).sheets;
    const page = await audited(sound.map(({ name, rows }) => ({ name, rows })));
    await page.getByText('All OK').waitFor();
    const unread = oneChannel({ settings: { 'Full scael (mil)': 10 } }).sheets;
    const other = await audited(unread.map(({ name, rows }) => ({ name, rows })));
    expect(await other.getByText('All OK').count()).toBe(0);
    expect(await other.getByText('looks like full scale').count()).toBeGreaterThan(0);
  });

  it('settles a column that is no quantity of the audit, also after a reload, and takes it back', async () => {
    const sheets = oneChannel({ settings: { 'Full scael (mil)': 10 } }).sheets;
    const given = sheets.map(({ name, rows }) => ({ name, rows }));
    const page = await visit('workbook=given&saved', {}, given);
    const unread = page.locator('[data-code="not-read"]');
    await unread.waitFor({ state: 'attached' });
    await page.getByRole('button', { name: 'Monitor!E1' }).last().click();
    expect(await page.evaluate(() => window.portLog.calls.filter(([call]) => call === 'selectCell'))).toEqual(
      [['selectCell', { sheet: 'Monitor', row: 1, column: 5 }]],
    );
    await page.getByRole('button', { name: 'No quantity of this audit' }).click();
    await page.getByText('Run it again to use them').waitFor();

    await page.reload();
    await page.getByRole('button', { name: 'Run audit' }).click();
    await page.getByText('All OK').waitFor();
    expect(await unread.count()).toBe(0);

    await page.locator('summary', { hasText: 'Not read' }).click();
    await page.getByRole('button', { name: 'Take it back' }).click();
    await page.getByRole('button', { name: 'Run audit again' }).click();
    await unread.waitFor({ state: 'attached' });
    expect(await page.getByText('All OK').count()).toBe(0);
  });
});
