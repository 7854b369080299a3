import { describe, expect, it, vi } from 'vitest';
import type { HostTheme } from '../../../src/hosts/port/port.ts';
import { FakeBook } from '../../office/fake/book.ts';
import { openInExcel } from './open.ts';

function station(): FakeBook {
  const book = new FakeBook();
  const sheet = book.add('Channels', [['Tag']]);
  book.selection = { sheet, areas: [{ top: 1, left: 1, bottom: 1, right: 1 }] };
  return book;
}

describe('a formula is inserted', () => {
  it('not into a locked cell of a protected sheet, which is named', async () => {
    const book = station();
    book.sheets[0]!.isProtected = true;
    await expect(openInExcel(book).port.insertFormula('=1', true)).rejects.toThrow(
      /Cell A1 on sheet “Channels” is locked.*Review tab/,
    );
  });

  it('into an unlocked cell of a protected sheet', async () => {
    const book = station();
    const [sheet] = book.sheets;
    sheet!.isProtected = true;
    sheet!.unlocked = [{ top: 1, left: 1, bottom: 1, right: 1 }];
    await openInExcel(book).port.insertFormula('=1', true);
    expect(sheet!.content(1, 1)).toMatchObject({ formula: '=1' });
  });

  it('into a cell formatted as text, so that it shows its result', async () => {
    const book = station();
    const [sheet] = book.sheets;
    sheet!.setFormat(1, 1, '@');
    await openInExcel(book).port.insertFormula('1+2', true);
    expect(sheet!.content(1, 1)).toMatchObject({ formula: '=1+2' });
  });
});

it('work waits until the user has left a cell', async () => {
  const { excel, port } = openInExcel(station());
  excel.startEditing();
  let isDone = false;
  const work = port.readWorkbook().then((workbook) => {
    isDone = true;
    return workbook;
  });
  await new Promise((resolve) => setTimeout(resolve, 20));
  expect(isDone).toBe(false);
  excel.stopEditing();
  expect((await work).sheets[0]?.rows).toEqual([['Tag']]);
});

describe('changes', () => {
  const listen = async (apiVersion: string) => {
    const { excel, port } = openInExcel(station(), apiVersion);
    const heard: string[] = [];
    await port.onChange((name) => heard.push(name));
    return { excel, heard };
  };

  it('of this add-in’s own are not told where Excel says who made them', async () => {
    const { excel, heard } = await listen('1.14');
    excel.change('Channels', 'A1', 'ours', 'ThisLocalAddin');
    excel.change('Channels', 'A2', 'theirs');
    await expect.poll(() => heard).toEqual(['Channels']);
  });

  it('many at once ask Excel for the sheet’s name only now and then', async () => {
    const { excel, heard } = await listen('1.11');
    const before = excel.roundTrips.length;
    for (let row = 1; row <= 100; row++) excel.change('Channels', `A${row}`, row);
    await expect.poll(() => heard.length).toBeGreaterThan(0);
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(excel.roundTrips.length - before).toBeLessThanOrEqual(2);
  });
});

it('settings stand in the workbook under the add-in’s own prefix, as text, and are taken away altogether', async () => {
  const { excel, port } = openInExcel(station());
  excel.book.settings.set('map', 'another add-in’s');
  await port.writeSetting('map', { version: 1 });
  expect(Object.fromEntries(excel.book.settings)).toEqual({
    map: 'another add-in’s',
    'tripdrift.map': '{"version":1}',
  });
  excel.book.settings.set('tripdrift.map', '{broken');
  expect(await port.readSetting('map')).toBe('{broken');
  await port.writeSetting('map', null);
  expect([...excel.book.settings.keys()]).toEqual(['map']);
});

describe('the theme', () => {
  it.each([
    [{ bodyBackgroundColor: '#262626', bodyForegroundColor: '#FFFFFF', isDarkTheme: true }, true],
    [{ bodyBackgroundColor: '#262626', bodyForegroundColor: '#FFFFFF' }, true],
    [{ bodyBackgroundColor: '#F3F3F3', bodyForegroundColor: '#000000' }, false],
  ])('of %o', (officeTheme, dark) => {
    const { excel, port } = openInExcel(station());
    Object.assign(excel.library.Office.context, { officeTheme });
    expect(port.theme()).toEqual({
      dark,
      background: officeTheme.bodyBackgroundColor,
      text: officeTheme.bodyForegroundColor,
    });
  });

  it('is looked at now and then, and told when it has changed', () => {
    vi.useFakeTimers();
    const { excel, port } = openInExcel(station());
    const heard: (HostTheme | null)[] = [];
    port.onTheme((theme) => heard.push(theme));
    vi.advanceTimersByTime(20_000);
    expect(heard).toEqual([]);
    Object.assign(excel.library.Office.context, {
      officeTheme: { bodyBackgroundColor: '#000000', bodyForegroundColor: '#FFFFFF' },
    });
    vi.advanceTimersByTime(20_000);
    vi.useRealTimers();
    expect(heard).toEqual([{ dark: true, background: '#000000', text: '#FFFFFF' }]);
  });

  it('is null where Excel tells none', () => {
    expect(openInExcel(station()).port.theme()).toBeNull();
  });
});
