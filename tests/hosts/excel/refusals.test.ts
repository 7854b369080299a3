import { describe, expect, it } from 'vitest';
import { HostRefused } from '../../../src/hosts/port/port.ts';
import { FakeBook } from '../../office/fake/book.ts';
import { HostError } from '../../office/fake/hostError.ts';
import { openInExcel } from './open.ts';

function station(): FakeBook {
  const book = new FakeBook();
  const sheet = book.add('Channels', [['Tag']]);
  book.selection = { sheet, areas: [{ top: 1, left: 1, bottom: 1, right: 1 }] };
  return book;
}

async function refusal(work: Promise<unknown>): Promise<string> {
  const error: unknown = await work.catch((reason: unknown) => reason);
  expect(error).toBeInstanceOf(HostRefused);
  return (error as HostRefused).message;
}

/** Codes that the calls of this host can't meet: charts, pictures, bindings, queries, and filled cells pushed off the sheet. */
const neverMet = [
  'DirtySupportingFormula',
  'EmptyChartSeries',
  'InvalidBinding',
  'NonBlankCellOffSheet',
  'PowerQueryRefreshResourceChallenge',
  'RangeImageExceedsLimit',
  'RefreshWorkbookLinksBlocked',
  'UnsupportedFillType',
];

describe('every refusal of Excel is told in plain words', () => {
  const { library } = openInExcel(station()).excel;
  const codes: string[] = Object.values(library.Excel.ErrorCodes).filter((code) => !neverMet.includes(code));

  it('by the library’s own list of codes', () => {
    expect(codes.length).toBeGreaterThan(20);
  });

  it.each(codes)('%s', async (code) => {
    const { excel, port } = openInExcel(station());
    excel.beforeAction = () => {
      throw new HostError(code);
    };
    const message = await refusal(port.readSetting('map'));
    expect(message).toMatch(/^What the workbook remembers could not be read\. [A-Z].*\.$/);
    expect(message).not.toContain('does not know');
    if (code.length > 8) expect(message).not.toContain(code);
  });

  it('and one that is not known names its code', async () => {
    const { excel, port } = openInExcel(station());
    excel.beforeAction = () => {
      throw new HostError('SomethingNew');
    };
    expect(await refusal(port.readWorkbook())).toMatch(
      /reason that this add-in does not know \(“SomethingNew”\)/,
    );
  });
});

describe('selections', () => {
  it('of several areas, or of no cells, are refused with a cure', async () => {
    const book = station();
    const { port } = openInExcel(book);
    const [area] = book.selection!.areas;
    book.selection = { sheet: book.sheets[0]!, areas: [area!, area!] };
    expect(await refusal(port.readSelection())).toMatch(/not one single area.*Select one cell/);
    book.selection = null;
    expect(await refusal(port.insertFormula('=1'))).toMatch(/not one single area/);
  });
});

describe('a formula is inserted', () => {
  it('not into a locked cell of a protected sheet, which is named', async () => {
    const book = station();
    book.sheets[0]!.isProtected = true;
    expect(await refusal(openInExcel(book).port.insertFormula('=1', true))).toMatch(
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

  it('is null where Excel tells none', () => {
    expect(openInExcel(station()).port.theme()).toBeNull();
  });
});
