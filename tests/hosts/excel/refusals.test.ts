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
