import { describe, expect, it } from 'vitest';
import { excelPort } from '../../../src/hosts/excel/excelPort.ts';
import type { OfficeLibrary } from '../../../src/hosts/excel/session.ts';
import { HostRefused, type WorkbookPort } from '../../../src/hosts/port/port.ts';
import { FakeBook } from '../../office/fake/book.ts';
import { FakeExcel } from '../../office/fake/fakeExcel.ts';
import { loadOffice } from '../../office/load.ts';
import { sheetOf } from '../file/write/model.ts';

loadOffice();

/** The fake Excel whose n-th answer never comes; `sent` counts the requests. */
function silentFrom(number: number): { book: FakeBook; port: WorkbookPort; sent: () => number } {
  const book = new FakeBook();
  book.add('Channels', [
    ['Tag', 'Measured'],
    ['VT-1', 160],
  ]);
  const { library } = new FakeExcel(book);
  let sent = 0;
  const run = (options: Excel.RunOptions, batch: (context: Excel.RequestContext) => Promise<unknown>) =>
    library.Excel.run(options, (context) => {
      const send = context.sync.bind(context);
      context.sync = <T>(value?: T): Promise<T> =>
        ++sent >= number ? new Promise<T>(() => undefined) : send(value);
      return batch(context);
    });
  const silent = { ...library, Excel: { ...library.Excel, run } } as unknown as OfficeLibrary;
  return { book, port: excelPort({ library: silent, patience: 40 }), sent: () => sent };
}

async function refusalOf(work: Promise<unknown>): Promise<string> {
  try {
    await work;
  } catch (error) {
    if (error instanceof HostRefused) return error.message;
    throw error;
  }
  return '';
}

describe('an Excel that does not answer any more', () => {
  it.each([1, 2, 3])('is said in one line when the workbook is read, at request %i', async (number) => {
    const { port } = silentFrom(number);
    const said = await refusalOf(port.readWorkbook());
    expect(said).toContain('The workbook could not be read: Excel has not answered for');
    expect(said).toContain('try again');
    expect(said).not.toContain('\n');
  });

  it.each([1, 2, 3, 4])('names the sheets that may be half written, at request %i', async (number) => {
    const { port, sent } = silentFrom(number);
    const said = await refusalOf(port.writeSheets([sheetOf('Audit summary', [['a', 1]])]));
    expect(said).toContain('Excel has not answered for');
    expect(said).toContain('“Audit summary”');
    expect(sent()).toBe(number);
  });

  it('is not waited for where it answers', async () => {
    const { port, book } = silentFrom(Infinity);
    expect(await refusalOf(port.writeSheets([sheetOf('Audit summary', [['a', 1]])]))).toBe('');
    expect(book.sheets.map(({ name }) => name)).toEqual(['Channels', 'Audit summary']);
    await new Promise((resolve) => setTimeout(resolve, 80));
    expect((await port.readWorkbook()).sheets).toHaveLength(2);
  });
});
