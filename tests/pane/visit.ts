import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll } from 'vitest';
import { startChromium } from '../chromium.ts';
import type { GivenSheet } from './pages/test.ts';
import { servePane, type ServedPages } from './serve.ts';

/** Opens the audit of the pane's test page in a narrow window; `query` says over which workbook, `given` are its sheets. */
export type Visit = (
  query: string,
  options?: BrowserContextOptions,
  given?: readonly GivenSheet[],
) => Promise<Page>;

/** Serves the pane and starts a browser for the tests that follow; what each of them opened is closed after it. */
export function visits(): Visit {
  let served: ServedPages;
  let browser: Browser;
  let context: BrowserContext;
  beforeAll(async () => {
    [served, browser] = await Promise.all([servePane(), startChromium()]);
  });
  afterEach(() => context.close());
  afterAll(async () => {
    await browser.close();
    await served.close();
  });
  return async (query, options = {}, given = []) => {
    context = await browser.newContext({ viewport: { width: 320, height: 900 }, ...options });
    const page = await context.newPage();
    page.setDefaultTimeout(20_000);
    await page.addInitScript((sheets) => {
      window.givenSheets = sheets;
    }, given);
    await page.goto(`${served.origin}/tests/pane/pages/test.html?${query}#audit`);
    await page.getByRole('button', { name: 'Run audit' }).click();
    return page;
  };
}
