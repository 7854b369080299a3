/// <reference lib="dom" />
import type { Frame, FrameLocator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { verdictWords } from '../../src/audit/model/wording.ts';
import type { ColumnMap } from '../../src/audit/model/columnMap.ts';
import type { Report } from '../../src/audit/model/report.ts';
import type { Sheet } from '../../src/cells/sheet.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { describeWithChromium } from '../chromium.ts';
import { sheetOf } from '../hosts/file/write/model.ts';
import { hostileTags } from '../pane/pages/workbooks.ts';
import { type BenchVisit, eachVisits } from './openPage.ts';

type Line = readonly [tag: string, threshold: string, effective: number | null, verdict: string];

/** A column of measurements whose header says nothing, and two columns that could both be the danger setpoint. */
const unclear = newWorkbook([
  sheetOf('Probes', [
    ['Commissioning, as found'],
    ['Tag', 'Machine', 'Column7'],
    ['V-1', 'M-1', 160],
    ['V-2', 'M-1', 250],
    ['V-3', 'M-2', 201],
  ]),
  sheetOf('Rack', [
    ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger setpoint (mil)', 'Danger level (mil)'],
    ['V-1', 200, 3, 7, 5],
    ['V-2', 200, 3, 7, 5],
    ['V-3', 200, 3, 7, 5],
  ]),
]);
const unclearMap: ColumnMap = {
  tables: [
    {
      sheet: 'Probes',
      header: 2,
      columns: { 'measured sensitivity': { at: 'C', header: 'Column7' } },
      units: { 'measured sensitivity': 'mV/mil' },
    },
    { sheet: 'Rack', header: 1, columns: { danger: { at: 'E', header: 'Danger level (mil)' } } },
  ],
};

const two = (tags: readonly string[]): Uint8Array =>
  newWorkbook([
    sheetOf('Channels', [['Tag', 'Measured sensitivity (mV/mil)'], ...tags.map((tag) => [tag, 160])]),
    sheetOf('Monitor', [
      ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
      ...tags.map((tag) => [tag, 200, 3, 5]),
    ]),
  ]);

/** What a sheet of results says about each threshold. */
function linesOf(rows: Sheet['rows']): Line[] {
  const at = rows.findIndex((row) => row.includes('Really acts at T'));
  const header = rows[at] ?? [];
  const [tag, threshold, effective, verdict] = ['Tag', 'Threshold', 'Really acts at T', 'Verdict'].map(
    (name) => header.indexOf(name),
  );
  return rows
    .slice(at + 1)
    .filter((row) => typeof row[threshold!] === 'string')
    .map((row) => [row[tag!], row[threshold!], row[effective!] ?? null, row[verdict!]] as unknown as Line);
}

/** The same from a report, with numbers compared to twelve digits after the point. */
function expected(report: Report): Line[] {
  return report.channels.flatMap(({ tag, thresholds }) =>
    thresholds.map(({ name, effective, verdict }): Line => [
      tag,
      name,
      effective === null ? null : (expect.closeTo(effective, 12) as number),
      verdictWords[verdict],
    ]),
  );
}

describeWithChromium('a user’s way through the bench', () => {
  let visit: BenchVisit;
  let page: Page;
  let pane: FrameLocator;

  eachVisits((begun) => {
    visit = begun;
    ({ page, pane } = visit);
  });

  const note = () => page.locator('#note').textContent();
  const row = (title: string) => pane.getByRole('row', { name: title });
  const press = (name: string): Promise<void> => pane.getByRole('button', { name }).click();
  const writeSheets = async (): Promise<void> => {
    await press('Write result sheets');
    await pane.getByText('Written:').waitFor();
  };
  const stale = () => pane.getByText('changed since this audit');
  /** Drops a file onto an element of a frame, as the browser tells the page of it. */
  const drop = (
    frame: Frame,
    target: string,
    names: string | readonly string[],
    bytes: Uint8Array,
  ): Promise<void> =>
    frame.evaluate(
      ([selector, files, content]) => {
        const dataTransfer = new DataTransfer();
        for (const file of files) dataTransfer.items.add(new File([Uint8Array.from(content)], file));
        const element = document.querySelector(selector)!;
        for (const kind of ['dragover', 'drop']) {
          const event = new DragEvent(kind, { bubbles: true, cancelable: true, dataTransfer });
          // Where nobody takes it, the browser would leave the page for the file.
          if (element.dispatchEvent(event)) throw new Error(`${kind} is left to the browser`);
        }
      },
      [target, [names].flat(), Array.from(bytes)] as const,
    );

  it('asks where headers do not tell, and audits with what the user said', async () => {
    const read = readWorkbook('unclear.xlsx', unclear);
    await visit.open('unclear.xlsx', unclear);
    await visit.shown('unclear.xlsx');
    await pane.getByRole('tab', { name: 'Audit' }).click();
    await press('Run audit');
    await row('Danger setpoint').waitFor();
    expect(() => audit(read)).toThrow();
    expect(await pane.getByRole('tree').count()).toBe(0);
    expect(await visit.violations()).toEqual([]);

    await row('Danger setpoint').getByRole('button', { name: 'Rack!D1' }).click();
    expect(
      await page.evaluate(() =>
        window.tripdriftBench!.grid.api.getActiveWorkbook()?.getActiveSheet().getSheetName(),
      ),
    ).toBe('Rack');
    await press('Change: Danger setpoint');
    await visit.select('Rack', 3, 5);
    await row('Danger setpoint').getByText('Danger level (mil)', { exact: true }).waitFor();
    await press('Change: Measured sensitivity');
    await visit.select('Probes', 4, 3);
    await row('Measured sensitivity').getByText('Column7', { exact: true }).waitFor();
    await pane.getByLabel('Unit: Measured sensitivity').fill('mV/mil');
    await pane.getByLabel('Unit: Measured sensitivity').blur();
    await press('Yes to all 2');
    await pane.getByRole('tree').waitFor();

    await pane.locator('.channel-line', { hasText: 'V-1' }).click();
    await pane
      .locator('.channel-detail')
      .getByText('Set 5, really trips at 6.25 mil.', { exact: true })
      .waitFor();
    expect(await visit.selection()).toMatchObject({ sheet: 'Probes', area: { top: 3, bottom: 3 } });
    expect(await visit.violations()).toEqual([]);
    await writeSheets();
    const written = linesOf(await visit.rows('Audit results'));
    expect(written).toEqual(expected(audit(read, { map: unclearMap })));
    // By hand: 3·200/160 = 3.75, 5·200/160 = 6.25, 3·200/250 = 2.4, 5·200/250 = 4, and 201 mV/mil is within ±5 %.
    expect(written).toEqual([
      ['V-1', 'alert', 3.75, 'late'],
      ['V-1', 'danger', 6.25, 'late'],
      ['V-2', 'alert', 2.4, 'early'],
      ['V-2', 'danger', 4, 'early'],
      ['V-3', 'alert', expect.closeTo(600 / 201, 12), 'OK'],
      ['V-3', 'danger', expect.closeTo(1000 / 201, 12), 'OK'],
    ]);
  });

  it('tells of an edit after the audit, audits it, and its copy says the same without the bench', async () => {
    await visit.audit();
    await writeSheets();
    expect(await stale().count()).toBe(0);
    // K102-1Y, measured at 198 mV/mil of 200 and not again since.
    const row = (await visit.rows('Channels')).findIndex((cells) => cells.includes('K102-1Y')) + 1;
    await visit.type('Channels', row, 7, '125');
    await stale().waitFor();
    await press('Run audit again');
    await stale().waitFor({ state: 'detached' });
    await pane.getByLabel('Search').fill('K102-1Y');
    // 4·200/125 = 6.4 mil, by hand.
    await pane.locator('.channel-line', { hasText: 'set 4, really trips at 6.4 mil' }).waitFor();
    await press('Write result sheets');
    await pane.getByText('because there is a sheet “Audit results” already').waitFor();

    const copy = readWorkbook('harbour-station.xlsx', await visit.saved());
    const anew = expected(audit(copy));
    const results = copy.sheets.filter(({ name }) => name.startsWith('Audit results'));
    expect(linesOf(results[1]!.rows)).toEqual(anew);
    expect(linesOf(results[0]!.rows)).not.toEqual(anew);
    expect(linesOf(await visit.rows(results[1]!.name))).toEqual(anew);
    expect(anew.length).toBeGreaterThan(80);
  });

  it('takes back by keys what the pane wrote', async () => {
    const cell = async () => (await visit.rows('Try it'))[15]?.[1] ?? null;
    await visit.select('Try it', 6, 2, 4);
    await press('Take from selection');
    await pane.getByText('Danger 5 mil really trips at 6.25 mil').waitFor();
    await visit.select('Try it', 16, 2);
    await press('Insert formula');
    await expect.poll(cell).toBe(6.25);
    await visit.focusGrid();
    await page.keyboard.press('Control+z');
    await expect.poll(cell).toBeNull();
    await page.keyboard.press('Control+y');
    await expect.poll(cell).toBe(6.25);
  });

  it('opens a file that is dropped on the grid, on the pane or on the bar', async () => {
    const [, inner] = page.frames();
    const places = [
      [page.mainFrame(), '#grid canvas', 'grid.xlsx'],
      [inner!, 'main', 'pane.xlsx'],
      [page.mainFrame(), '#bar h1', 'bar.xlsx'],
    ] as const;
    await drop(...places[0], two(['V-1']));
    await visit.shown('grid.xlsx');
    expect(await page.locator('.dropping').count()).toBe(0);
    await drop(page.frames()[1]!, places[1][1], places[1][2], two(['V-1', 'V-2']));
    await visit.shown('pane.xlsx');
    await drop(...places[2], two(['V-9']));
    await visit.shown('bar.xlsx');
    expect((await visit.rows('Channels'))[1]).toEqual(['V-9', 160]);
    await visit.audit();
    await pane.getByText('1 of 1 channels').waitFor();
  });

  it('says in one line why a dropped file can’t be opened, and keeps what is shown', async () => {
    const nothing = new TextEncoder().encode('<!doctype html><p>\nno workbook</p>\n');
    for (const name of ['picture.png', 'letter.pdf', 'broken.xlsx', 'old.xls']) {
      await drop(page.mainFrame(), '#grid canvas', name, nothing);
      await expect.poll(note).not.toContain('Reading');
      const [named, why] = ((await note()) ?? '').split(/: (.*)/);
      expect(named).toBe(name);
      expect(why).toMatch(/^This is not .+ Open it in .+\.$/);
      await visit.shown('harbour-station.xlsx');
    }
  });

  it('opens none of several files that are dropped at once, and says so', async () => {
    await drop(page.mainFrame(), '#grid canvas', ['one.xlsx', 'two.xlsx'], two(['V-1']));
    await expect.poll(note).toMatch(/^2 files were dropped \(one\.xlsx, two\.xlsx\): none was opened\./);
    await visit.shown('harbour-station.xlsx');
  });

  it('asks before another file takes the place of unsaved changes', async () => {
    let answer = false;
    const asked: string[] = [];
    page.on('dialog', (dialog) => {
      asked.push(dialog.message());
      void (answer ? dialog.accept() : dialog.dismiss());
    });
    const bytes = two(['V-1']);
    await visit.type('Try it', 20, 2, '42');
    await visit.open('other.xlsx', bytes);
    await expect.poll(() => asked.length).toBe(1);
    expect(asked[0]).toContain('harbour-station.xlsx');
    expect(asked[0]).toContain('other.xlsx');
    await visit.shown('harbour-station.xlsx');
    expect((await visit.rows('Try it'))[19]?.[1]).toBe(42);
    await drop(page.mainFrame(), '#grid canvas', 'other.xlsx', bytes);
    await expect.poll(() => asked.length).toBe(2);
    answer = true;
    await visit.open('other.xlsx', bytes);
    await visit.shown('other.xlsx');
    expect(asked).toHaveLength(3);
    await visit.type('Channels', 2, 2, '150');
    await visit.saved();
    await expect.poll(note).toContain('A copy of other.xlsx');
    await visit.open('third.xlsx', bytes);
    await visit.shown('third.xlsx');
    expect(asked).toHaveLength(3);
  });

  it('audits a workbook of hostile texts, and writes and saves them as texts', async () => {
    await visit.open('hostile.xlsx', two(hostileTags));
    await visit.shown('hostile.xlsx');
    await visit.audit();
    for (const line of await pane.locator('.channel-line').all()) await line.click();
    await writeSheets();
    const copy = readWorkbook('hostile.xlsx', await visit.saved());
    const inFile = linesOf(copy.sheets.find(({ name }) => name === 'Audit results')!.rows);
    const inGrid = linesOf(await visit.rows('Audit results'));
    const every = hostileTags.flatMap((tag) => [
      [tag, 'alert', 3.75, 'late'],
      [tag, 'danger', 6.25, 'late'],
    ]);
    // In any order: all are late by as much.
    expect(inFile.toSorted()).toEqual(every.toSorted());
    expect(inGrid.toSorted()).toEqual(every.toSorted());
    expect(await pane.locator('main img, main script, main bdi *').count()).toBe(0);
    expect(await page.title()).toBe('hostile.xlsx – Tripdrift bench');
  });
});
