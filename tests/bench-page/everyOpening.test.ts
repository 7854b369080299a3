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
    expect(after.nodes - before.nodes).toBeLessThan(300);
    // Eight panes that stay are 14 MB and more.
    expect(after.heap - before.heap).toBeLessThan(5 * 2 ** 20);
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

  const note = (): Promise<string | null> => visit.page.locator('#note').textContent();
  const five = workbook('<row r="1"><c r="A1"><v>5</v></c></row>');

  /** Lets the page wait three seconds where it would wait for minutes; a clock of the test's own would upset timers of the grid. */
  const shortenLongWaits = (): Promise<void> =>
    visit.page.evaluate(() => {
      const whole = window.setTimeout.bind(window);
      Object.assign(window, {
        setTimeout: (heard: () => void, wait?: number) =>
          whole(heard, wait !== undefined && wait >= 60_000 ? 3_000 : wait),
      });
    });

  /** Opens a file while the worker fails as `fail` says; then the page says so in one line, and opens the next one. */
  async function opensAfter(says: RegExp, wait?: () => Promise<void>): Promise<void> {
    await visit.open('broken.xlsx', five);
    await wait?.();
    await expect.poll(note).toMatch(says);
    expect((await note())?.split('\n')).toHaveLength(1);
    await visit.page.evaluate(() => {
      window.Worker = (window as never as { wholeWorker: typeof Worker }).wholeWorker;
    });
    await visit.open('whole.xlsx', five);
    await visit.shown('whole.xlsx');
    expect((await visit.read()).sheets[0]?.rows[0]?.[0]).toBe(5);
  }

  it.each(['rows', 'done'])('says so where the message “%s” of the worker is lost', async (kind) => {
    await shortenLongWaits();
    await visit.page.evaluate((lost) => {
      const Whole = window.Worker;
      Object.assign(window, { wholeWorker: Whole });
      window.Worker = class extends Whole {
        override addEventListener(type: string, heard: EventListenerOrEventListenerObject): void {
          super.addEventListener(type, (event) => {
            const { data } = event as MessageEvent<{ kind?: string } | undefined>;
            if (data?.kind !== lost && typeof heard === 'function') heard(event);
          });
        }
      };
    }, kind);
    const says = kind === 'rows' ? /a part of the rows was lost/ : /does not answer/;
    await opensAfter(says, async () => {
      await visit.page.waitForTimeout(3_500);
    });
  });

  it('says so where the worker dies', async () => {
    await shortenLongWaits();
    await visit.page.evaluate(() => {
      const Whole = window.Worker;
      Object.assign(window, { wholeWorker: Whole });
      window.Worker = class extends Whole {
        override postMessage(): void {
          this.terminate();
        }
      };
    });
    await opensAfter(/does not answer/, async () => {
      await visit.page.waitForTimeout(3_500);
    });
  });

  it('says so where the worker can’t be started', async () => {
    await visit.page.evaluate(() => {
      const Whole = window.Worker;
      Object.assign(window, { wholeWorker: Whole });
      window.Worker = class extends Whole {
        constructor() {
          super(URL.createObjectURL(new Blob(['throw new Error("broken")'])), { type: 'module' });
        }
      };
    });
    await visit.open('broken.xlsx', five);
    await expect.poll(note).toMatch(/.{20,}/);
    await visit.page.evaluate(() => {
      window.Worker = (window as never as { wholeWorker: typeof Worker }).wholeWorker;
    });
    await visit.open('whole.xlsx', five);
    await visit.shown('whole.xlsx');
    (visit.faults as string[]).length = 0;
  });
});
