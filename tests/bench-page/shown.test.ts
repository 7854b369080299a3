/// <reference lib="dom" />
import { viewWorkbook } from '../../src/hosts/file/view/viewWorkbook.ts';
import { strFromU8, unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { expect, it, vi } from 'vitest';
import { PercentCell } from '../../src/cells/cell.ts';
import type { Sheet } from '../../src/cells/sheet.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { describeWithChromium } from '../chromium.ts';
import { type BenchVisit, eachVisits } from './openPage.ts';
import { shadeFills, type ShownBook, shownWorkbook } from './shownWorkbook.ts';

// A busy machine takes its time to build the page and to start the browser.
vi.setConfig({ hookTimeout: 120_000, testTimeout: 120_000 });
const soon = <Value>(told: () => Promise<Value>) => expect.poll(told, { timeout: 20_000 });

const [red, green, blue] = shadeFills;

describeWithChromium('what the grid of the bench shows', () => {
  let visit: BenchVisit;
  let page: Page;
  eachVisits((begun) => {
    visit = begun;
    ({ page } = visit);
  });

  const open = async (name: string, content: ShownBook | string): Promise<void> => {
    if (typeof content === 'string') await visit.open(name, Buffer.from(content), 'text/csv');
    else await visit.open(name, shownWorkbook(content));
    await visit.shown(name);
  };
  const sheetNamed = async (name: string): Promise<Sheet> => {
    const { sheets } = await page.evaluate(() => window.tripdriftBench!.port.readWorkbook());
    return sheets.find((sheet) => sheet.name === name)!;
  };
  const cell = async (sheet: string, row: number, column: number) =>
    (await sheetNamed(sheet)).rows[row - 1]?.[column - 1] ?? null;
  /** Enters something as a user types it. */
  const type = async (sheet: string, row: number, column: number, text: string): Promise<void> => {
    await page.evaluate(
      ([name, ...place]) => window.tripdriftBench!.port.selectRow(name, place[0], place[1], place[1]),
      [sheet, row, column] as const,
    );
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  };
  /** Fills that the cells of an area are drawn with, `-` where none; places count from 1. */
  const fills = (sheet: string, top: number, left: number, bottom: number, right = left) =>
    page.evaluate(
      ([name, ...area]) => {
        const book = window.tripdriftBench!.grid.api.getActiveWorkbook()!;
        const stored = book.getSheetByName(name)!.getSheet();
        const [firstRow, firstColumn, lastRow, lastColumn] = area;
        const found: string[] = [];
        for (let row = firstRow; row <= lastRow; row++) {
          for (let column = firstColumn; column <= lastColumn; column++) {
            const style = stored.getCell(row - 1, column - 1)?.s;
            const look = typeof style === 'string' ? book.getWorkbook().getStyles().get(style) : style;
            found.push(look?.bg?.rgb?.slice(1) ?? '-');
          }
        }
        return found;
      },
      [sheet, top, left, bottom, right] as const,
    );
  /** How many points of the grid are drawn in a colour. */
  const painted = (colour: string) =>
    page.evaluate((rgb) => {
      const wanted = [0, 2, 4].map((at) => parseInt(rgb.slice(at, at + 2), 16));
      const size = ({ width, height }: HTMLCanvasElement) => width * height;
      // The others are those in which formulas and cells are edited.
      const [cells] = Array.from(document.querySelectorAll<HTMLCanvasElement>('#grid canvas')).sort(
        (one, other) => size(other) - size(one),
      );
      const { data } = cells!.getContext('2d')!.getImageData(0, 0, cells!.width, cells!.height);
      let count = 0;
      for (let at = 0; at < data.length; at += 4) {
        if (wanted.every((part, index) => data[at + index] === part)) count++;
      }
      return count;
    }, colour);
  const front = (work: 'insertRows' | 'insertColumns' | 'deleteRows', at: number, count: number) =>
    page.evaluate(
      ([action, index, many]) => {
        window.tripdriftBench!.grid.api.getActiveWorkbook()!.getActiveSheet()[action](index, many);
      },
      [work, at, count] as const,
    );
  const saved = () => visit.saved();
  const undo = () => page.evaluate(() => window.tripdriftBench!.grid.api.getActiveWorkbook()!.undo());

  const rule = (area: string, attributes: string, formula = '', shade = 0): string =>
    `<conditionalFormatting sqref="${area}"><cfRule dxfId="${shade}" ${attributes}>${formula === '' ? '' : `<formula>${formula}</formula>`}</cfRule></conditionalFormatting>`;

  it('shows conditional formats, and anew after every edit', async () => {
    await open('rules.xlsx', {
      sheets: [
        {
          name: 'Rules',
          rows: [
            [160, 'late', 'P-1', 1, 'ok'],
            [190, 'Within', 'P-2', 2, 'LATE trip'],
            [200, 'LATE', 'p-1', 3, null],
          ],
          rules: [
            rule('A1:A3', 'type="cellIs" priority="1" operator="lessThan"', '180'),
            rule('B1:B3', 'type="cellIs" priority="2" operator="equal"', '"late"', 1),
            rule('C1:C9', 'type="duplicateValues" priority="3"', '', 2),
            rule('D1:D3', 'type="expression" priority="4"', '$A1&gt;=$A$2', 1),
            rule(
              'E1:E3',
              'type="containsText" operator="containsText" text="late" priority="5"',
              'NOT(ISERROR(SEARCH("late",E1)))',
            ),
          ].join(''),
        },
      ],
    });
    const all = () => fills('Rules', 1, 1, 3, 5);
    await soon(all).toEqual([
      red,
      green,
      blue,
      '-',
      '-',
      '-',
      '-',
      '-',
      green,
      red,
      '-',
      green,
      blue,
      green,
      '-',
    ]);
    // A cell is some 64 by 20 points; the text and the lines take a part of them.
    const cells = async (fill: string) => Math.round((await painted(fill)) / 1_150);
    await soon(async () => [await cells(red), await cells(green), await cells(blue)]).toEqual([2, 4, 2]);
    await type('Rules', 2, 1, '170');
    await type('Rules', 2, 2, 'late');
    await type('Rules', 3, 3, 'P-2');
    await page.evaluate(() => window.tripdriftBench!.port.selectRow('Rules', 30, 9, 9));
    await soon(async () => [await cells(red), await cells(green), await cells(blue)]).toEqual([3, 5, 2]);
    // 160 < 170 ≤ 200: the formula compares with the new A2.
    await soon(all).toEqual([
      red,
      green,
      '-',
      '-',
      '-',
      red,
      green,
      blue,
      green,
      red,
      '-',
      green,
      blue,
      green,
      '-',
    ]);
    await page.locator('#grid canvas').first().click();
    await type('Rules', 2, 1, '500');
    await type('Rules', 2, 2, 'none');
    await page.evaluate(() => window.tripdriftBench!.port.selectRow('Rules', 30, 9, 9));
    // No measurement reaches 500 but that of the second row itself.
    await soon(async () => [await cells(red), await cells(green), await cells(blue)]).toEqual([2, 3, 2]);
  });

  it('shades verdicts of result sheets by what they say after later edits, in the grid and in the copy', async () => {
    const pane = page.frameLocator('#side iframe');
    await pane.getByRole('tab', { name: 'Audit' }).click();
    await pane.getByRole('button', { name: 'Run audit' }).first().click();
    await pane.getByRole('button', { name: 'Write result sheets' }).first().click();
    await soon(
      async () => ((await sheetNamed('Audit results')) as Sheet | undefined)?.rows.length,
    ).toBeGreaterThan(8);
    const verdicts = async () => (await sheetNamed('Audit results')).rows.map((row) => row[5]);
    const late = (await verdicts()).indexOf('late') + 1;
    const ok = (await verdicts()).indexOf('OK') + 1;
    const [lateFill] = await fills('Audit results', late, 6, late);
    expect(lateFill).not.toBe('-');
    expect(await fills('Audit results', ok, 6, ok)).toEqual(['-']);
    await page.locator('#grid canvas').first().click();
    await type('Audit results', late, 6, 'OK');
    await type('Audit results', ok, 6, 'late');
    await soon(() => fills('Audit results', late, 6, late)).toEqual(['-']);
    await soon(() => fills('Audit results', ok, 6, ok)).toEqual([lateFill]);
    const { sheets } = viewWorkbook('copy.xlsx', await saved());
    const rules = sheets.find(({ name }) => name === 'Audit results')?.rules ?? [];
    expect(rules.find(({ formulas }) => formulas[0] === '"late"')?.shade.fill).toBe(lateFill);
  });

  it('moves conditional formats with rows, and back', async () => {
    await open('moving.xlsx', {
      sheets: [
        {
          name: 'Rules',
          rows: [
            ['Limit', 180],
            ['A', 160],
            ['B', 190],
          ],
          rules: rule('B2:B3', 'type="cellIs" priority="1" operator="lessThan"', '$B$1'),
        },
      ],
    });
    await soon(() => fills('Rules', 1, 2, 3)).toEqual(['-', red, '-']);
    await front('insertRows', 0, 2);
    await soon(() => fills('Rules', 1, 2, 5)).toEqual(['-', '-', '-', red, '-']);
    await type('Rules', 3, 2, '200');
    await soon(() => fills('Rules', 3, 2, 5)).toEqual(['-', red, red]);
    await undo();
    await undo();
    await soon(() => fills('Rules', 1, 2, 3)).toEqual(['-', red, '-']);
  });

  it('moves the area of a table with rows and columns, and gives it up with its header row', async () => {
    const sum = { formula: 'SUM(Calibrations[Measured])', result: 350 };
    await open('table.xlsx', {
      sheets: [
        {
          name: 'Channels',
          rows: [['Tag', 'Measured'], ['P-1X', 160], ['P-1Y', 190], [], [null, sum]],
          table: { name: 'Calibrations', area: 'A1:B3', columns: ['Tag', 'Measured'] },
        },
        { name: 'Elsewhere', rows: [[sum]] },
      ],
    });
    const area = async () => (await sheetNamed('Channels')).tables[0]?.area;
    const elsewhere = () => cell('Elsewhere', 1, 1);
    expect(await area()).toEqual({ top: 1, left: 1, bottom: 3, right: 2 });
    await type('Channels', 2, 2, '150');
    await soon(() => cell('Channels', 5, 2)).toBe(340);
    await front('insertRows', 0, 3);
    await front('insertColumns', 0, 1);
    expect(await area()).toEqual({ top: 4, left: 2, bottom: 6, right: 3 });
    await front('insertRows', 4, 1);
    expect(await area()).toEqual({ top: 4, left: 2, bottom: 7, right: 3 });
    await soon(() => cell('Channels', 9, 3)).toBe(340);
    // The readings are 150 and 190 by now; the inserted row lies between the titles and them.
    await type('Channels', 5, 3, '1000');
    await soon(() => cell('Channels', 9, 3)).toBe(1340);
    await soon(elsewhere).toBe(1340);
    await front('insertColumns', 2, 1);
    expect(await area()).toEqual({ top: 4, left: 2, bottom: 7, right: 4 });
    await type('Channels', 6, 4, '250');
    await soon(() => cell('Channels', 9, 4)).toBe(1440);
    await soon(elsewhere).toBe(1440);
    await front('deleteRows', 0, 2);
    expect(await area()).toEqual({ top: 2, left: 2, bottom: 5, right: 4 });
    await type('Channels', 3, 4, '500');
    await soon(() => cell('Channels', 7, 4)).toBe(940);
    await soon(elsewhere).toBe(940);
    for (const [row, column, value] of [
      [7, 4, 1440],
      [9, 4, 1440],
      [9, 4, 1340],
      [9, 3, 1340],
      [9, 3, 340],
    ] as const) {
      await undo();
      await soon(() => cell('Channels', row, column)).toBe(value);
      await soon(elsewhere).toBe(value);
    }
    await type('Channels', 6, 3, '160');
    await soon(() => cell('Channels', 9, 3)).toBe(350);
    await soon(elsewhere).toBe(350);
    await front('deleteRows', 3, 1);
    expect(await area()).toBeUndefined();
    const gone = { code: '#NAME?' };
    await soon(() => cell('Channels', 8, 3)).toEqual(gone);
    await soon(elsewhere).toEqual(gone);
    await undo();
    expect(await area()).toEqual({ top: 4, left: 2, bottom: 7, right: 3 });
    await soon(() => cell('Channels', 9, 3)).toBe(350);
    await soon(elsewhere).toBe(350);
  });

  it('calculates formulas with defined names, and none whose name means something else on each sheet', async () => {
    await open('names.xlsx', {
      sheets: [
        {
          name: 'Data',
          rows: [
            [200, 160, { formula: '5*Configured/Measured', result: 6.25 }],
            [null, null, { formula: 'B1*Twice', result: 320 }],
            [null, null, { formula: 'B1+SUM(Both)', result: 520 }],
            [null, null, { formula: 'B1*Own', result: 1120 }],
          ],
        },
        { name: 'Other', rows: [[{ formula: 'Data!B1*Own', result: 480 }]] },
      ],
      names: [
        '<definedName name="Both">Data!$A$1:$B$1</definedName>',
        '<definedName name="Configured">Data!$A$1</definedName>',
        '<definedName name="Measured">Data!$B$1</definedName>',
        '<definedName name="Other">Data!$B$1</definedName>',
        '<definedName name="Own" localSheetId="0">7</definedName>',
        '<definedName name="Own" localSheetId="1">3</definedName>',
        '<definedName name="Twice" localSheetId="0">1+1</definedName>',
      ].join(''),
    });
    await type('Data', 1, 2, '125');
    await soon(() => cell('Data', 1, 3)).toBe(8);
    expect(await cell('Data', 2, 3)).toBe(250);
    expect(await cell('Data', 3, 3)).toBe(450);
    expect([await cell('Data', 4, 3), await cell('Other', 1, 1)]).toEqual([
      { code: '#NAME?' },
      { code: '#NAME?' },
    ]);
  });

  it('shows days of the 1904 date system, and saves them as they were', async () => {
    // 2025-03-14 is day 45,730 of the 1900 date system, so 44,268 of that of 1904; 20,161 days after 1970-01-01 (by hand:
    // 45,730 − 25,569).
    await open('days.xlsx', {
      date1904: true,
      sheets: [
        {
          name: 'Days',
          rows: [
            ['Calibrated', { date: 44_268 }, { formula: 'B1+1', result: 44_269, date: true }],
            ['Plain', 44_268],
          ],
        },
      ],
    });
    expect((await sheetNamed('Days')).rows).toEqual([
      ['Calibrated', { day: 20_161 }, { day: 20_162 }],
      ['Plain', 44_268],
    ]);
    const display = () =>
      page.evaluate(() =>
        window
          .tripdriftBench!.grid.api.getActiveWorkbook()!
          .getActiveSheet()
          .getRange('B1')
          .getDisplayValue(),
      );
    expect(await display()).toMatch(/25/);
    await type('Days', 5, 1, 'edited');
    const markup = strFromU8(unzipSync(await saved())['xl/worksheets/sheet1.xml']!);
    expect(markup).toContain('<c r="B1" s="1"><v>44268</v></c>');
    expect(markup).toContain('<c r="C1" s="1"><f>B1+1</f><v>44269</v></c>');
    expect(markup).toContain('edited');
    await page.locator('#grid canvas').first().click();
    await type('Days', 1, 2, '2025-03-15');
    await soon(() => cell('Days', 1, 3)).toEqual({ day: 20_163 });
    const again = strFromU8(unzipSync(await saved())['xl/worksheets/sheet1.xml']!);
    expect(again).toMatch(/<c r="B1"[^>]*><v>44269<\/v>/);
    expect(again).toMatch(/<c r="C1"[^>]*><f>B1\+1<\/f><v>44270<\/v>/);
  });

  it('calculates with the numbers of a table of plain text, and reads the texts of the file', async () => {
    const lines = ['Tag;Danger (mil);Uncertainty', 'V-1;4,5;3 %', '0012;5;', '1E5;4,7;1.5'];
    await open('list.csv', `${lines.join('\n')}\n`);
    const file = lines.map((line) => line.split(';').map((field) => (field === '' ? null : field)));
    file[2]!.pop();
    expect((await sheetNamed('list')).rows).toEqual(file);
    const formulas = ['=B2+B4', '=C2*100', '=A3+0', '=ISTEXT(A3)', '=ISTEXT(A4)', '=ISTEXT(C4)'];
    for (const [row, formula] of formulas.entries()) await type('list', row + 10, 5, formula);
    // In a file with decimal commas 1.5 is no number, and the audit takes it for none.
    await soon(async () => (await sheetNamed('list')).rows.slice(9).map((row) => row[4])).toEqual([
      expect.closeTo(9.2, 12),
      expect.closeTo(3, 12),
      12,
      true,
      true,
      true,
    ]);
    expect((await sheetNamed('list')).plainText).toEqual({ decimal: ',' });
    const display = (place: string) =>
      page.evaluate(
        (at) =>
          window
            .tripdriftBench!.grid.api.getActiveWorkbook()!
            .getActiveSheet()
            .getRange(at)
            .getDisplayValue(),
        place,
      );
    expect(await display('B2')).toBe('4,5');
    await type('list', 2, 2, '4,625');
    await soon(() => cell('list', 10, 5)).toBeCloseTo(9.325, 12);
    expect([await cell('list', 2, 2), await display('B2')]).toEqual(['4,625', '4,625']);
    const copy = readWorkbook('list.xlsx', await saved()).sheets[0]?.rows.slice(0, 4);
    expect(copy).toEqual([
      ['Tag', 'Danger (mil)', 'Uncertainty'],
      ['V-1', 4.625, new PercentCell(3)],
      ['0012', 5],
      ['1E5', 4.7, '1.5'],
    ]);
    await page.locator('#grid canvas').first().click();
    await type('list', 2, 2, 'none');
    await soon(() => cell('list', 2, 2)).toBe('none');
  });

  it('selects the row of a channel without the cell that its machine has over several rows', async () => {
    await open('merged.xlsx', {
      sheets: [
        {
          name: 'Channels',
          rows: [
            ['Machine', 'Tag', 'Measured'],
            ['K-1', 'K-1X', 160],
            [null, 'K-1Y', 190],
            ['Alone', 'A-1', 200],
          ],
          merges: ['A2:A3', 'A5:C5', 'A6:C7'],
        },
      ],
    });
    const selected = (row: number) =>
      page.evaluate(async (at) => {
        const { port } = window.tripdriftBench!;
        await port.selectRow('Channels', at, 1, 3);
        return (await port.readSelection()).area;
      }, row);
    const places = [2, 3, 4, 5, 6];
    const areas = [];
    for (const row of places) areas.push(await selected(row));
    expect(areas.map(({ top, left, right }) => [top, left, right])).toEqual([
      [2, 2, 3],
      [3, 2, 3],
      [4, 1, 3],
      [5, 1, 3],
      [6, 1, 3],
    ]);
  });

  it('moves the border between grid and pane by mouse and keys, within its limits, for the whole visit', async () => {
    const border = page.getByRole('separator', { name: 'Width of the task pane' });
    const width = async () => (await page.locator('#side').boundingBox())!.width;
    const told = async () => Number(await border.getAttribute('aria-valuenow'));
    expect([await width(), await told()]).toEqual([360, 360]);
    await border.focus();
    await page.keyboard.press('ArrowLeft');
    expect([await width(), await told()]).toEqual([380, 380]);
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    expect(await width()).toBe(280);
    await page.keyboard.press('End');
    await page.keyboard.press('ArrowLeft');
    expect(await width()).toBe(768);
    const box = (await border.boundingBox())!;
    await page.mouse.move(box.x + 3, 300);
    await page.mouse.down();
    await page.mouse.move(box.x + 100, 300, { steps: 4 });
    await page.mouse.move(800.5, 320, { steps: 4 });
    await page.mouse.up();
    await page.mouse.move(600, 320);
    expect(await width()).toBeCloseTo(476, -1);
    const before = await width();
    await page.reload();
    await visit.shown('harbour-station.xlsx');
    expect(await width()).toBe(before);
    await page.setViewportSize({ width: 700, height: 700 });
    await soon(width).toBe(420);
    expect(await told()).toBe(420);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(700);
  });

  for (const colorScheme of ['light', 'dark'] as const) {
    for (const width of [1280, 900]) {
      it(`has no fault of accessibility, ${colorScheme}, ${width} pixels wide`, async () => {
        await page.emulateMedia({ colorScheme });
        await page.setViewportSize({ width, height: 700 });
        await type('Try it', 9, 5, 'x');
        expect(await visit.violations()).toEqual([]);
        const ground = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
        // The grid is light in either, and bar and pane with it.
        expect(ground).toBe('rgb(253, 253, 251)');
        const pane = page.frames()[1]!;
        expect(await pane.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe(ground);
      });
    }
  }
});
