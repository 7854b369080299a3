/// <reference lib="dom" />
import type { CDPSession } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeWithChromium } from '../chromium.ts';
import { smallParts } from '../fixtures/workbooks/small.ts';
import { zipParts } from '../fixtures/workbooks/package.ts';
import { type BenchVisit, eachVisits } from './openPage.ts';

const sheetPart = 'xl/worksheets/sheet1.xml';

/** A workbook of one sheet with these rows. */
function workbook(rows: string): Uint8Array {
  const parts = smallParts();
  const sheet = String(parts[sheetPart]).replace(
    /<sheetData>.*<\/sheetData>/,
    `<sheetData>${rows}</sheetData>`,
  );
  return zipParts({ ...parts, [sheetPart]: sheet });
}

interface Held {
  readonly nodes: number;
  readonly listeners: number;
  /** Bytes. */
  readonly heap: number;
}

/** What the page holds once everything that nothing leads to is gone. */
async function held(session: CDPSession): Promise<Held> {
  for (let turn = 0; turn < 3; turn++) await session.send('HeapProfiler.collectGarbage');
  const { metrics } = await session.send('Performance.getMetrics');
  const of = (name: string): number => metrics.find((metric) => metric.name === name)?.value ?? NaN;
  return { nodes: of('Nodes'), listeners: of('JSEventListeners'), heap: of('JSHeapUsedSize') };
}

describeWithChromium('every file that the bench opens', () => {
  let visit: BenchVisit;

  eachVisits((begun) => {
    visit = begun;
  });

  it('takes the place of the one before: neither nodes nor memory grow', { timeout: 300_000 }, async () => {
    const session = await visit.page.context().newCDPSession(visit.page);
    await session.send('Performance.enable');
    const open = async (name: string): Promise<void> => {
      await visit.open(name, workbook('<row r="1"><c r="A1"><v>5</v></c></row>'));
      await visit.shown(name);
      await visit.page.waitForTimeout(300);
    };
    for (let file = 1; file <= 3; file++) await open(`warm-up-${file}.xlsx`);
    const before = await held(session);
    for (let file = 1; file <= 8; file++) await open(`file-${file}.xlsx`);
    const after = await held(session);
    console.log(before, after);
    expect(after.nodes - before.nodes).toBeLessThan(300);
    expect(after.listeners - before.listeners).toBeLessThan(100);
    expect(after.heap - before.heap).toBeLessThan(4 * 2 ** 20);
  });

  it('asks for nothing beyond its own origin, whatever its formulas say', async () => {
    const formula = (ref: string, text: string, attributes = '', value = ''): string =>
      `<c r="${ref}"${attributes}><f>${text}</f>${value}</c>`;
    const rows = `<row r="1">${formula('A1', '_xlfn.IMAGE("http://images.invalid/a.png")')}${formula('B1', 'IMAGE("https://images.invalid/b.png","alt",3,50,50)')}${formula('C1', 'WEBSERVICE("http://images.invalid/c")')}${formula('D1', 'HYPERLINK("http://images.invalid/d","d")')}</row>`;
    await visit.open('images.xlsx', workbook(rows));
    await visit.shown('images.xlsx');
    await visit.page.evaluate(() => window.tripdriftBench!.port.recalculate());
    const name = (await visit.read()).sheets[0]!.name;
    await visit.type(name, 3, 1, '=IMAGE("http://images.invalid/typed.png")');
    await expect
      .poll(async () => (await visit.rows(name))[2]?.[0])
      .toMatchObject({ code: expect.stringMatching(/^#/) as string });
    await visit.page.waitForTimeout(1_000);
    expect(visit.faults).toEqual([]);
  });
});
