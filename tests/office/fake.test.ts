import { describe, expect, it } from 'vitest';
import { FakeBook } from './fake/book.ts';
import { FakeExcel } from './fake/fakeExcel.ts';

/** What the fake must refuse because Excel does; codes by the public reference of Excel's JavaScript interface. */
function excelWith(prepare: (book: FakeBook) => void = () => undefined): FakeExcel {
  const book = new FakeBook();
  book.add('Data', [
    ['tag', 'setpoint'],
    ['P-1', 7.1],
  ]);
  prepare(book);
  return new FakeExcel(book);
}

function code(excel: FakeExcel, batch: (context: Excel.RequestContext) => unknown): Promise<unknown> {
  return excel.library.Excel.run(async (context) => {
    const check = batch(context);
    await context.sync();
    if (typeof check === 'function') await (check as () => unknown)();
    await context.sync();
    return undefined;
  }).then(
    () => undefined,
    (error: unknown) => (error as { readonly code: string }).code,
  );
}

const data = (context: Excel.RequestContext): Excel.Worksheet => context.workbook.worksheets.getItem('Data');

describe('the fake Excel refuses what Excel refuses', () => {
  it.each<[string, string, (context: Excel.RequestContext) => unknown]>([
    [
      'a property that was not loaded',
      'PropertyNotLoaded',
      (context) => {
        const range = data(context).getRange('A1');
        return () => range.values;
      },
    ],
    [
      'a table of another shape',
      'InvalidArgument',
      (context) => {
        data(context).getRange('A1:B2').values = [[1]];
      },
    ],
    [
      'a sheet that is not there',
      'ItemNotFound',
      (context) => {
        context.workbook.worksheets.getItem('Lost').load('name');
      },
    ],
    ['a name that is taken', 'ItemAlreadyExists', (context) => context.workbook.worksheets.add('DATA')],
    [
      'a name of 32 characters',
      'InvalidArgument',
      (context) => context.workbook.worksheets.add('x'.repeat(32)),
    ],
    [
      'more than 32,767 characters',
      'InvalidArgument',
      (context) => {
        data(context).getRange('A1').values = [['x'.repeat(32_768)]];
      },
    ],
    [
      'the last visible sheet deleted',
      'InvalidOperation',
      (context) => {
        data(context).delete();
      },
    ],
    [
      'a request over 5 MB',
      'RequestPayloadSizeLimitExceeded',
      (context) => {
        data(context).getRange('A1:A200').values = Array.from({ length: 200 }, () => ['x'.repeat(30_000)]);
      },
    ],
    [
      'an unknown property',
      'ApiNotFound',
      (context) =>
        data(context)
          .getRange('A1')
          .load('horizontal' as 'values'),
    ],
    [
      'a selection that is none',
      'InvalidSelection',
      (context) => context.workbook.getSelectedRange().load('values'),
    ],
  ])('%s', async (_, expected, batch) => {
    expect(await code(excelWith(), batch)).toBe(expected);
  });

  it('a write on a protected sheet, but not on its unlocked cells', async () => {
    const excel = excelWith(({ sheets: [sheet] }) => {
      sheet!.isProtected = true;
      sheet!.unlocked = [{ top: 5, left: 1, bottom: 5, right: 1 }];
    });
    const write = (address: string) => (context: Excel.RequestContext) => {
      data(context).getRange(address).values = [[1]];
    };
    expect(await code(excel, write('A1'))).toBe('AccessDenied');
    expect(await code(excel, write('A5'))).toBeUndefined();
  });

  it('an answer over 5 MB', async () => {
    const excel = excelWith(({ sheets: [sheet] }) => {
      for (let row = 1; row <= 200; row++) sheet!.setContent(row, 1, 'x'.repeat(30_000));
    });
    expect(await code(excel, (context) => data(context).getRange('A1:A200').load('values'))).toBe(
      'ResponsePayloadSizeLimitExceeded',
    );
  });

  it('calls while a cell is edited, unless they wait', async () => {
    const excel = excelWith();
    excel.startEditing();
    const read = (context: Excel.RequestContext) => data(context).load('name');
    expect(await code(excel, read)).toBe('InvalidOperationInCellEditMode');
    const waiting = excel.library.Excel.run({ delayForCellEdit: true }, async (context) => {
      const sheet = data(context);
      sheet.load('name');
      await context.sync();
      return sheet.name;
    });
    excel.stopEditing();
    expect(await waiting).toBe('Data');
  });

  it('functions newer than it is', async () => {
    const excel = new FakeExcel(new FakeBook(), '1.12');
    expect(
      await code(excel, (context) => context.workbook.getActiveCell().getMergedAreasOrNullObject()),
    ).toBe('ApiNotFound');
  });

  it('hands over no values of more than 5 million cells, without an error', async () => {
    const excel = excelWith();
    const values: unknown = await excel.library.Excel.run(async (context) => {
      const range = data(context).getRange('A1:J1000000');
      range.load('values');
      await context.sync();
      return range.values;
    });
    expect(values).toBeNull();
  });

  it('and leaves done what came before the refusal', async () => {
    const excel = excelWith();
    await code(excel, (context) => {
      data(context).getRange('A1').values = [['changed']];
      data(context).getRange('B1').values = [[1, 2]];
    });
    expect(excel.book.sheets[0]?.content(1, 1)).toBe('changed');
  });
});

describe('the fake Excel enters what is typed', () => {
  // Common practice of spreadsheet programs, no source; formulas by the public reference (Range.values).
  it.each([
    ['=1+1', '=1+1'],
    ['+A1', '=+A1'],
    ['1E5', 100_000],
    ['5%', 0.05],
    ['TRUE', true],
    ["'=1+1", '=1+1'],
    ['31-VT-1X', '31-VT-1X'],
  ])('%s', async (entry, formula) => {
    const excel = excelWith();
    const formulas: unknown = await excel.library.Excel.run(async (context) => {
      const range = data(context).getRange('D9');
      range.values = [[entry]];
      range.load('formulas');
      await context.sync();
      return range.formulas;
    });
    expect(formulas).toEqual([[formula]]);
  });
});
