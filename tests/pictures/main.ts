import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { audit } from '../../src/audit/audit.ts';
import { addSheets } from '../../src/hosts/file/write/addSheets.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { handoverSheets } from '../../src/sheets/handover/handoverSheets.ts';
import { resultSheets } from '../../src/sheets/resultSheets.ts';
import { type BenchVisit, serveBench, visitBench } from '../bench-page/openPage.ts';
import { startChromium } from '../chromium.ts';
import { printedPage } from './paper.ts';
import { auditedScreen, quickScreen } from './screens.ts';
import { packed } from './webp.ts';

/** Draws the pictures of the README anew. Needs Chromium, LibreOffice and Poppler. */
const workbooks = join(import.meta.dirname, '..', '..', 'workbooks');
const folder = join(workbooks, 'pictures');
/** When the pictures say the audit was made, so that they change only when something else does. */
const now = new Date('2026-06-15T09:00:00Z');
const mostBytes = 120_000;

const [served, browser] = await Promise.all([serveBench(), startChromium()]);

const screen = async (
  viewport: { width: number; height: number },
  draw: (visit: BenchVisit) => Promise<Uint8Array>,
): Promise<Uint8Array> => {
  const visit = await visitBench(browser, served.origin, { viewport, locale: 'en-GB', timezoneId: 'UTC' });
  try {
    await visit.page.clock.setFixedTime(now);
    return await draw(visit);
  } finally {
    await visit.close();
  }
};
const name = 'harbour-station.xlsx';
const original = readFileSync(join(workbooks, name));
const report = audit(readWorkbook(name, original), { now });
const summary = (): Uint8Array =>
  printedPage(addSheets(original, resultSheets(report)).bytes, 'Tripdrift audit – summary');
/** The control-room page of the machine that stands worst. */
const handOver = (): Uint8Array =>
  printedPage(newWorkbook(handoverSheets(report)), 'What to treat as danger');

try {
  mkdirSync(folder, { recursive: true });
  const pictures = {
    'bench.webp': await screen({ width: 1200, height: 760 }, auditedScreen),
    'quick-answer.webp': await screen({ width: 1200, height: 1000 }, quickScreen),
    'summary-on-paper.webp': summary(),
    'hand-over-on-paper.webp': handOver(),
  };
  for (const [name, png] of Object.entries(pictures)) {
    const webp = await packed(browser, png);
    if (webp.length > mostBytes) throw new Error(`${name} has ${webp.length} bytes, more than ${mostBytes}`);
    writeFileSync(join(folder, name), webp);
    console.log(`workbooks/pictures/${name} ${webp.length} bytes`);
  }
} finally {
  await browser.close();
  await served.close();
}
