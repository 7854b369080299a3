import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { longestTask } from './mainThread.ts';

export const steps = ['open', 'audit', 'write', 'save'] as const;

interface Figures {
  readonly seconds: number;
  /** The page's longest task, in milliseconds of its own time. */
  readonly longest: number;
}

export interface LargeRun {
  readonly figures: Readonly<Record<(typeof steps)[number], Figures>>;
  /** What the page said while it read the file. */
  readonly said: string | null;
  /** What it said once the result sheets stood. */
  readonly saidOfSheets: string | null;
  readonly copy: Uint8Array;
}

/** Opens a workbook in the bench, audits it, writes the result sheets and saves a copy, as a user does. */
export async function largeRun(page: Page, origin: string, bytes: Uint8Array): Promise<LargeRun> {
  const pane = page.frameLocator('#side iframe');
  const shown = async (name: string): Promise<void> => {
    await page.waitForFunction((file) => window.tripdriftBench?.file.view.name === file, name);
    await pane.getByRole('tab', { name: 'Quick answer' }).waitFor();
  };
  const measured = async (work: () => Promise<unknown>): Promise<Figures> => {
    const start = performance.now();
    const longest = await longestTask(page, work);
    return { seconds: (performance.now() - start) / 1000, longest };
  };

  await page.goto(`${origin}/`);
  await shown('harbour-station.xlsx');
  let said: string | null = null;
  const open = await measured(async () => {
    const file = { name: 'station.xlsx', mimeType: '', buffer: Buffer.from(bytes) };
    await page.locator('input[type=file]').setInputFiles(file);
    const note = page.locator('#note', { hasText: 'station.xlsx' });
    said = await note.textContent();
    await shown('station.xlsx');
  });
  const audit = await measured(async () => {
    await pane.getByRole('tab', { name: 'Audit' }).click();
    await pane.getByRole('button', { name: 'Run audit' }).first().click();
    await pane.getByRole('tree').waitFor();
  });
  const write = await measured(async () => {
    await pane.getByRole('button', { name: 'Write result sheets' }).first().click();
    await pane.getByRole('button', { name: 'Audit problems' }).waitFor();
  });
  const saidOfSheets = await page.locator('#note', { hasText: 'result sheets' }).textContent();
  let copy = new Uint8Array();
  const save = await measured(async () => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save a copy' }).click(),
    ]);
    copy = new Uint8Array(readFileSync(await download.path()));
  });
  return { figures: { open, audit, write, save }, said, saidOfSheets, copy };
}
