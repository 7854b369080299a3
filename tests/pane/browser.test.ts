import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { describeWithChromium, startChromium } from '../chromium.ts';
import { hostileTags } from './pages/workbooks.ts';
import { servePane, type ServedPages } from './serve.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const themes: Readonly<Record<string, BrowserContextOptions>> = {
  light: { colorScheme: 'light' },
  dark: { colorScheme: 'dark' },
  'high contrast': { colorScheme: 'dark', forcedColors: 'active' },
};
const narrow = { width: 320, height: 720 };

describeWithChromium('task pane', () => {
  let served: ServedPages;
  let browser: Browser;
  let context: BrowserContext;
  let page: Page;
  /** Requests that would have left the origin, faults of scripts, and what the content policy refused. */
  let faults: string[];

  beforeAll(async () => {
    [served, browser] = await Promise.all([servePane(), startChromium()]);
  });
  afterAll(async () => {
    await browser.close();
    await served.close();
  });

  async function open(options: BrowserContextOptions = {}): Promise<void> {
    context = await browser.newContext({ viewport: narrow, ...options });
    await context.route('**', (route) => {
      if (route.request().url().startsWith(`${served.origin}/`)) return route.continue();
      faults.push(`request to ${route.request().url()}`);
      return route.abort();
    });
    page = await context.newPage();
    page.setDefaultTimeout(20_000);
    page.on('pageerror', (error) => faults.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error' && !message.location().url.endsWith('/favicon.ico')) {
        faults.push(message.text());
      }
    });
  }
  beforeEach(() => {
    faults = [];
  });
  afterEach(async () => {
    await context.close();
    expect(faults).toEqual([]);
  });

  let visits = 0;
  /** Each visit has an address of its own, so that the page is always loaded anew. */
  const visit = (query: string, view = ''): Promise<unknown> =>
    page.goto(`${served.origin}/tests/pane/pages/test.html?${query}&visit=${++visits}${view}`);
  const press = (name: string | RegExp): Promise<void> => page.getByRole('button', { name }).click();
  const calls = (name: string): Promise<unknown[][]> =>
    page.evaluate((wanted) => window.portLog.calls.filter(([call]) => call === wanted), name);
  async function audited(workbook: string): Promise<void> {
    await visit(`workbook=${workbook}`, '#audit');
    await press('Run audit');
    await page.getByRole('tree').waitFor();
  }

  async function violations(): Promise<string[]> {
    const { violations: found } = await page.evaluate(async (script) => {
      if (!('axe' in window)) (0, eval)(script);
      return (window as unknown as { axe: { run: () => Promise<AxeResults> } }).axe.run();
    }, axe);
    return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
  }
  const overflow = (): Promise<number> =>
    page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

  it('works in a plain browser, and says that nothing is saved there', async () => {
    await open();
    await page.goto(`${served.origin}/src/pane/taskpane.html`);
    await page.getByText('nothing you do here is saved').waitFor();
    await press('Take from selection');
    // 5·200/160 = 6.25 mil, 25 % late: by hand.
    await page.getByText('Danger 5 mil really trips at 6.25 mil: 1.25 mil (25 %) late.').waitFor();
    expect(await page.getByRole('img').getAttribute('aria-labelledby')).not.toBeNull();
    await page.getByRole('tab', { name: 'Care' }).click();
    await page.getByText('is not known').waitFor();
  });

  it.each(Object.entries(themes))(
    'has no accessibility violation and no sideways scroll, %s',
    async (_, theme) => {
      // Rules: axe-core, which checks WCAG 2.x A and AA. The policy of the page forbids no script of a test.
      await open({ ...theme, bypassCSP: true });
      await visit('workbook=example');
      for (const [label, text] of [
        ['Setpoint', '5'],
        ['Configured sensitivity', '200'],
        ['Measured sensitivity', '0'],
      ] as const) {
        await page.getByLabel(label).fill(text);
      }
      expect(await violations()).toEqual([]);
      await page.getByLabel('Measured sensitivity').fill('160');
      await page.getByLabel(/Uncertainty/).fill('3');
      expect(await violations()).toEqual([]);
      expect(await overflow()).toBe(0);

      await audited('example');
      for (const name of ['Policy', 'Voting groups']) {
        await page.locator('summary', { hasText: name }).click();
      }
      await page.locator('.channel-line').nth(1).click();
      await press('Write result sheets');
      await page.getByText('Written:').waitFor();
      await page.evaluate(() => {
        window.portLog.change('Channels');
      });
      await page.getByText('changed since this audit').waitFor();
      expect(await violations()).toEqual([]);
      expect(await overflow()).toBe(0);

      await page.getByRole('tab', { name: 'Care' }).click();
      await press('Find them');
      await page.getByText('2 cells found').waitFor();
      expect(await violations()).toEqual([]);
      expect(await overflow()).toBe(0);
    },
  );

  it('can be used by keyboard alone', async () => {
    await open();
    await visit('workbook=example');
    await page.getByRole('tab', { name: 'Quick answer' }).focus();
    await page.keyboard.press('ArrowRight');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Audit');
    const focused = (): Promise<string> =>
      page.evaluate(() => {
        const at = document.activeElement;
        return at?.getAttribute('role') === 'tree' ? 'channels' : (at?.textContent ?? '');
      });
    const tabTo = async (wanted: string): Promise<void> => {
      for (let step = 0; step < 60; step++) {
        await page.keyboard.press('Tab');
        if ((await focused()).startsWith(wanted)) return;
      }
      expect.fail(`The Tab key never came to ${wanted}`);
    };
    await tabTo('Run audit');
    await page.keyboard.press('Enter');
    await page.getByRole('tree').waitFor();
    await page.getByRole('tab', { name: 'Audit' }).focus();
    await tabTo('channels');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    // Below the line of their machine; the machine is open, as the list is short.
    const tag = await page.locator('.channel-line').nth(1).locator('b').textContent();
    expect(await page.locator('.channel-detail h3 bdi').textContent()).toBe(tag);
    expect(await page.getByRole('treeitem', { selected: true }).locator('b').textContent()).toBe(tag);
    await tabTo('Channels!');
    await page.keyboard.press('Enter');
    expect(await calls('selectCell')).toHaveLength(1);
    await page.keyboard.press('Shift+Tab');
    await page.getByRole('tab', { name: 'Audit' }).focus();
    await page.keyboard.press('End');
    expect(await focused()).toBe('Care');
    await tabTo('Find them');
    await page.keyboard.press('Enter');
    await tabTo('Repair these 2 cells');
    await page.keyboard.press('Space');
    await page.getByText('2 formulas were entered anew').waitFor();
  });

  it('takes three cells, and asks before it overwrites a filled one', async () => {
    await open();
    await visit('workbook=example');
    await press('Take from selection');
    await press('Insert formula');
    await page.getByText('is one of the three that the formula reads').waitFor();
    await page.evaluate(() => window.portLog.select({ sheet: 'One setpoint', row: 1, column: 4 }));
    await press('Insert formula');
    await page.getByText('D1 is not empty').waitFor();
    expect(await calls('insertFormula')).toEqual([]);
    await press('Leave it');
    await press('Insert formula');
    await page.evaluate(() => window.portLog.select({ sheet: 'One setpoint', row: 1, column: 1 }));
    await press('Overwrite it');
    await page.getByText('Another cell is selected by now').waitFor();
    expect(await calls('insertFormula')).toEqual([]);
    await page.evaluate(() => window.portLog.select({ sheet: 'One setpoint', row: 2, column: 4 }));
    await press('Insert formula');
    await page.getByText('The formula is in One setpoint!D2').waitFor();
    expect(await calls('insertFormula')).toEqual([
      ['insertFormula', '=TRIPDRIFT.EFFECTIVE(A2,B2,C2)', false],
    ]);
  });

  it('shows hostile text of cells as text', async () => {
    await open();
    await audited('hostile');
    const shown = await page.locator('.channel-line b').allTextContents();
    const marked = hostileTags.map((tag) => tag.replace('\u202E', '[RLO]').replace('\u202C', '[PDF]'));
    for (const tag of marked) expect(shown).toContain(tag);
    for (let index = 0; index < 8; index++) {
      await page.locator('.channel-line').nth(index).click();
      expect(await overflow()).toBe(0);
    }
    await press('Show what is understood');
    await page.getByText('<b>Ch</b>').first().waitFor();
    await press('Change: Measured sensitivity');
    expect(await page.getByLabel('Answer: Measured sensitivity').innerHTML()).not.toContain('<i>');
    expect(await page.title()).toBe('Tripdrift');
    expect(await page.locator('main img, main script, main bdi *, main bdi b').count()).toBe(0);
    expect(await page.getByText('32767 characters').count()).toBeGreaterThan(0);
    expect(await overflow()).toBe(0);
  });

  it('holds only the lines in view of a list of 20,000', async () => {
    await open();
    await audited('large');
    expect(await page.getByText('20000 of 20000 channels').count()).toBe(1);
    // 40 machines, closed; a search opens them.
    const lines = page.locator('.channel-line');
    expect(await page.locator('[aria-setsize="40"]').count()).toBeGreaterThan(2);
    expect(await lines.count()).toBe(0);
    await page.getByLabel('Search').fill('V-');
    await page.getByRole('tree').focus();
    await page.keyboard.press('End');
    await page.locator('[aria-posinset="500"]').waitFor();
    expect(await lines.count()).toBeLessThan(40);
    await page.getByLabel('Search').fill('V-00004');
    await page.getByText('1 of 20000 channels').waitFor();
    await lines.first().click();
    // V-00004 is the fourth channel, in row 5; the list has columns A to D.
    expect(await calls('selectRow')).toEqual([['selectRow', 'Channels', 5, 1, 4]]);
    await page.getByLabel('Search').fill('');
    await press(/6667 late/);
    await page.getByText('6667 of 20000 channels').waitFor();
  });

  it('lets the user say what a column means, keeps it, and audits with it', async () => {
    await open();
    await visit('workbook=unclear', '#audit');
    await press('Run audit');
    await page.getByText('No column looks like it.').waitFor();
    expect(await page.getByRole('button', { name: 'Use 0 of 1 answers' }).isDisabled()).toBe(true);
    await press('Change: Measured sensitivity');
    await page
      .getByLabel('Answer: Measured sensitivity')
      .selectOption({ label: "Column C of sheet 'Channels', 'Column7'" });
    await page.getByLabel('Unit: Measured sensitivity').fill('mV per nonsense');
    await page.getByText('No unit known here').waitFor();
    await page.getByLabel('Unit: Measured sensitivity').fill('mV/mil');
    await page.getByLabel('Unit: Measured sensitivity').blur();
    await press('Yes');
    await page.getByText('Danger set 5, really trips at 6.25 mil').first().waitFor();
    const kept = (): Promise<unknown> => page.evaluate(() => window.portLog.settings['tripdrift.columns']);
    expect(await kept()).toEqual({
      tables: [
        {
          sheet: 'Channels',
          header: 1,
          columns: { 'measured sensitivity': { at: 'C', header: 'Column7' } },
          units: { 'measured sensitivity': 'mV/mil' },
        },
      ],
    });
    await page.locator('summary', { hasText: 'Answers kept in this workbook' }).click();
    await press('Forget all answers');
    await page.getByText('No column looks like it.').waitFor();
    expect(await kept()).toEqual({});
  });

  it('uses a policy only when all of it is right', async () => {
    await open();
    await audited('example');
    await page.locator('summary', { hasText: 'Policy' }).click();
    await page.getByRole('textbox', { name: 'Tolerance on sensitivity' }).fill('0');
    await press('Use this policy');
    await page.getByText('Correct the marked fields first').waitFor();
    expect(await calls('writeSetting')).toEqual([]);
    await page.getByRole('textbox', { name: 'Tolerance on sensitivity' }).fill('30');
    await press('Use this policy');
    await press('Run audit again');
    // 160 and 231 of 200 mV/mil lie within ±30 %: only the danger above full scale and the unmeasured row remain.
    await page.getByRole('button', { name: '0 late' }).waitFor();
    await page.getByText('1 entry differs').waitFor();
    await press('Back to defaults');
    await page.getByText('All as by default').waitFor();
  });

  it('names the sheets it wrote, and says when the workbook changed, but not by its own writing', async () => {
    await open();
    await audited('example');
    await press('Write result sheets');
    await page.getByText('Written:').waitFor();
    expect(await page.locator('.inline-list .cell-link').allTextContents()).toEqual([
      'Audit summary',
      'Audit results',
      'Audit groups',
      'Audit problems',
    ]);
    expect(await page.getByText('changed since this audit').count()).toBe(0);
    await press('Write result sheets');
    await page.getByText('because there is a sheet “Audit summary” already').waitFor();
    await page.evaluate(() => {
      window.portLog.change('Monitor');
    });
    await page.getByText('changed since this audit').waitFor();
    await press('Run audit again');
    await page.getByText('changed since this audit').waitFor({ state: 'detached' });
  });

  it('replaces result sheets under their own names, keeps them where that is refused, and removes them', async () => {
    await open();
    await audited('example');
    await press('Write result sheets');
    await page.getByText('Written:').waitFor();
    await press('Write result sheets');
    await page.getByText('because there is a sheet “Audit summary” already').waitFor();
    const sheets = (): Promise<string[]> => page.evaluate(() => window.portLog.sheets());
    const own = (await sheets()).filter((name) => !name.startsWith('Audit '));
    const results = ['Audit summary', 'Audit results', 'Audit groups', 'Audit problems'];
    const numbered = results.map((name) => `${name} (2)`);
    expect(await sheets()).toEqual([...own, ...results, ...numbered]);

    await page.evaluate(() => {
      window.portLog.refuseWriting = 'The sheets were not replaced. The earlier sheets are as they were.';
    });
    // Of one audit written twice neither is known to be as it was written: that is asked.
    await press('Replace the earlier result sheets');
    await page.getByText('Not as their audit wrote them:').waitFor();
    await press('Go on');
    await page.getByRole('alert').filter({ hasText: 'as they were' }).waitFor();
    expect(await sheets()).toEqual([...own, ...results, ...numbered]);

    await page.evaluate(() => {
      window.portLog.refuseWriting = null;
    });
    await press('Replace the earlier result sheets');
    await page.getByText('Not as their audit wrote them:').waitFor();
    await press('Go on');
    await page.getByText('Removed: Audit summary').waitFor();
    expect(await sheets()).toEqual([...own, ...results]);

    await press('Remove Tripdrift’s sheets');
    await expect.poll(sheets).toEqual(own);
    await press('Remove Tripdrift’s sheets');
    await page.getByText('There is no result sheet in this workbook.').waitFor();
  });

  it('makes hand-over sheets for every machine, or for one', async () => {
    await open();
    await audited('example');
    const machines = await page.locator('.machine-line b bdi').allTextContents();
    expect(machines.length).toBeGreaterThan(1);
    await press('Make hand-over sheets');
    await page.getByText('Written:').waitFor();
    const written = await page.locator('.inline-list .cell-link').allTextContents();
    const sheetsOf = (name: string, end = ''): string[] => [`${name}${end}`, `${name} annex${end}`];
    expect(written).toEqual(['Hand-over list', ...machines.flatMap((name) => sheetsOf(name))]);
    const last = machines.at(-1) ?? '';
    await page.locator('.machine-line').last().click();
    await press(`Make hand-over sheets for ${last} alone`);
    await page.getByText(`because there is a sheet “${last}” already`).waitFor();
    expect(await page.locator('.inline-list').last().locator('.cell-link').allTextContents()).toEqual(
      sheetsOf(last, ' (2)'),
    );
    expect(await page.getByText('changed since this audit').count()).toBe(0);
  });

  it('keeps the last result when a run is cancelled or refused', async () => {
    await open();
    await audited('example');
    await page.evaluate(() => {
      window.portLog.hold = new Promise((resolve) => {
        window.portLog.release = resolve;
      });
    });
    await press('Run audit again');
    await page.getByRole('progressbar').waitFor();
    await press('Cancel');
    await page.evaluate(() => {
      window.portLog.hold = null;
      window.portLog.release?.();
    });
    await page.getByText('Cancelled. Nothing was changed.').waitFor();
    expect(await page.getByRole('tree').count()).toBe(1);
    await page.evaluate(() => {
      window.portLog.refuse = 'A cell is being edited. Press Enter in the sheet, then run the audit again.';
    });
    await press('Run audit again');
    await page.getByRole('alert').filter({ hasText: 'A cell is being edited' }).waitFor();
    expect(await page.getByRole('tree').count()).toBe(1);
    await page.locator('.channel-line').first().click();
    expect(await page.getByRole('alert').filter({ hasText: 'A cell is being edited' }).count()).toBe(2);
    expect(await page.locator('.channel-detail').count()).toBe(1);
  });

  it('audits when the ribbon asks for it, before the pane is there or after', async () => {
    await open();
    await context.addInitScript(() => {
      document.addEventListener('DOMContentLoaded', () => {
        document.documentElement.dataset['asked'] = 'audit';
      });
    });
    await visit('workbook=example');
    await page.getByRole('tree').waitFor();
    expect(await calls('readWorkbook')).toHaveLength(1);
    await page.getByRole('tab', { name: 'Care' }).click();
    await page.evaluate(() => {
      document.documentElement.dataset['asked'] = 'audit';
      document.dispatchEvent(new Event('tripdrift-asked'));
    });
    await page.getByRole('tab', { name: 'Audit', selected: true }).waitFor();
    await expect.poll(() => calls('readWorkbook').then((made) => made.length)).toBe(2);
  });

  it('says so when Excel does not answer, and names another program', async () => {
    await open();
    await page.clock.install();
    await page.addInitScript(() => {
      Object.assign(window, { Office: { onReady: () => new Promise(() => undefined) } });
    });
    await page.goto(`${served.origin}/src/pane/taskpane.html?silent`);
    await page.getByText('Starting').waitFor();
    await page.clock.fastForward(11_000);
    await page.getByText('Excel has not answered').waitFor();
    await context.close();
    await open();
    await page.addInitScript(() => {
      Object.assign(window, { Office: { onReady: () => Promise.resolve({ host: 'Word' }) } });
    });
    await page.goto(`${served.origin}/src/pane/taskpane.html?other`);
    await page.getByText('This add-in works in Excel').waitFor();
  });

  it('follows the theme of the host before that of the system', async () => {
    await open({ colorScheme: 'light' });
    await visit('theme=dark');
    const ground = (): Promise<string> =>
      page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    const dark = await ground();
    await visit('workbook=example');
    expect(await ground()).not.toBe(dark);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await ground()).toBe(dark);
  });
});
