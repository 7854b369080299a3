/// <reference lib="dom" />
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Browser, BrowserContextOptions, FrameLocator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect } from 'vitest';
import { benchPolicy } from '../../src/tools/bench/policy.ts';
import { folderServer, listenHere } from '../../src/tools/serve/serve.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import type { Selection } from '../../src/hosts/port/port.ts';
import { builtOnce } from '../builtOnce.ts';
import { startChromium } from '../chromium.ts';
import { closed } from '../pane/serve.ts';

export interface ServedBench {
  readonly origin: string;
  close(): Promise<void>;
}

/** Builds the bench as it is shipped and serves it as `npm start` does. */
export async function serveBench(): Promise<ServedBench> {
  const folder = await builtOnce('bench', async (made) => {
    const { buildBench } = await import('../../src/tools/bench/benchBuild.ts');
    await buildBench(made);
  });
  const server = folderServer(folder, benchPolicy);
  const port = await listenHere(server, 0);
  return {
    origin: `http://127.0.0.1:${port}`,
    close: () => closed(server),
  };
}

const xlsx = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** One visit to the bench, and what a user does there. Places count from 1. */
export interface BenchVisit {
  readonly page: Page;
  readonly pane: FrameLocator;
  /** Requests that would have left the origin, faults of scripts, and what the content policy refused. */
  readonly faults: readonly string[];
  /** Waits until a file of that name and the pane over it are shown. */
  shown(name: string): Promise<void>;
  /** Chooses a file in the dialog behind “Open…”. */
  open(name: string, bytes: Uint8Array, mimeType?: string): Promise<void>;
  read(): Promise<Workbook>;
  rows(sheet: string): Promise<Workbook['sheets'][number]['rows']>;
  selection(): Promise<Selection>;
  select(sheet: string, row: number, from: number, to?: number): Promise<void>;
  /** Gives the keyboard to the grid by a click on a cell. */
  focusGrid(): Promise<void>;
  /** Enters something into a cell by the keyboard. */
  type(sheet: string, row: number, column: number, text: string): Promise<void>;
  /** Audits all and waits for the list of channels. */
  audit(): Promise<void>;
  /** The bytes of a saved copy. */
  saved(): Promise<Uint8Array>;
  /** What axe-core finds in the page and in the pane (WCAG 2.x A and AA). */
  violations(): Promise<readonly string[]>;
  close(): Promise<void>;
}

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Opens the bench with the demo in a browser that reaches nothing but the bench's own origin. */
export async function visitBench(
  browser: Browser,
  origin: string,
  options: BrowserContextOptions = {},
): Promise<BenchVisit> {
  const faults: string[] = [];
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, ...options });
  await context.route('**', (route) => {
    if (route.request().url().startsWith(`${origin}/`)) return route.continue();
    faults.push(`request to ${route.request().url()}`);
    return route.abort();
  });
  const page = await context.newPage();
  page.setDefaultTimeout(20_000);
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  const pane = page.frameLocator('#side iframe');
  const shown = async (name: string): Promise<void> => {
    await page.waitForFunction((file) => window.tripdriftBench?.file.view.name === file, name);
    await pane.getByRole('tab', { name: 'Quick answer' }).waitFor();
  };
  const read = (): Promise<Workbook> => page.evaluate(() => window.tripdriftBench!.port.readWorkbook());
  const select = (sheet: string, row: number, from: number, to = from): Promise<void> =>
    page.evaluate(([name, ...place]) => window.tripdriftBench!.port.selectRow(name, ...place), [
      sheet,
      row,
      from,
      to,
    ] as const);
  const focusGrid = (): Promise<void> => page.locator('#grid canvas[id^=univer-sheet-main-canvas]').click();
  await page.goto(`${origin}/`);
  await shown('harbour-station.xlsx');
  return {
    page,
    pane,
    faults,
    shown,
    open: (name, bytes, mimeType = xlsx) =>
      page.locator('input[type=file]').setInputFiles({ name, mimeType, buffer: Buffer.from(bytes) }),
    read,
    rows: async (sheet) => (await read()).sheets.find(({ name }) => name === sheet)?.rows ?? [],
    selection: () => page.evaluate(() => window.tripdriftBench!.port.readSelection()),
    select,
    focusGrid,
    type: async (sheet, row, column, text) => {
      await focusGrid();
      await select(sheet, row, column);
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
    },
    audit: async () => {
      await pane.getByRole('tab', { name: 'Audit' }).click();
      await pane.getByRole('button', { name: 'Run audit' }).click();
      await pane.getByRole('progressbar').waitFor({ state: 'detached' });
      await pane.getByRole('tree').waitFor();
    },
    saved: async () => {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Save a copy' }).click(),
      ]);
      return readFileSync(await download.path());
    },
    violations: async () => {
      const found = [];
      for (const frame of page.frames()) {
        await frame.evaluate(axe);
        const { violations } = await frame.evaluate(
          // Inside the grid the library's own controls are not ours.
          () =>
            (window as never as { axe: { run(where: object): Promise<AxeResults> } }).axe.run({
              include: ['body'],
              exclude: ['#grid > *', '#side > iframe'],
            }),
        );
        found.push(...violations);
      }
      return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
    },
    close: () => context.close(),
  };
}

/**
 * Serves the bench once for the tests of a suite, and gives each of them a visit of its own in a new context; `begin` takes
 * it. A fault in the page fails the test.
 */
export function eachVisits(begin: (visit: BenchVisit) => void): void {
  let served: ServedBench;
  let browser: Browser;
  let visit: BenchVisit;
  beforeAll(async () => {
    [served, browser] = await Promise.all([serveBench(), startChromium()]);
  }, 120_000);
  afterAll(async () => {
    await browser.close();
    await served.close();
  });
  beforeEach(async () => {
    visit = await visitBench(browser, served.origin);
    begin(visit);
  }, 120_000);
  afterEach(async () => {
    await visit.close();
    expect(visit.faults).toEqual([]);
  });
}
