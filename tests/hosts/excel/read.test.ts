import { describe, expect, it } from 'vitest';
import { DateCell, ErrorCell, PercentCell } from '../../../src/cells/cell.ts';
import { FakeBook } from '../../office/fake/book.ts';
import { ErrorValue, FormulaCell } from '../../office/fake/entry.ts';
import type { FakeSheet } from '../../office/fake/sheet.ts';
import { openInExcel } from './open.ts';

function bookWith(prepare: (sheet: FakeSheet, book: FakeBook) => void): FakeBook {
  const book = new FakeBook();
  prepare(book.add('Channels'), book);
  return book;
}

async function firstSheet(book: FakeBook, apiVersion?: string) {
  const [sheet] = (await openInExcel(book, apiVersion).port.readWorkbook()).sheets;
  return sheet!;
}

describe('cells are read by their values, types and number formats', () => {
  it.each([
    ['a number', 0.1, 'General', 0.1],
    ['a date', 46_082.5, 'm/d/yyyy h:mm', new DateCell(20_513.5)],
    ['a date in the user’s own format', 46_082, '[$-F800]dddd, mmmm dd, yyyy', new DateCell(20_513)],
    ['elapsed time', 1.5, '[h]:mm:ss', 1.5],
    ['a percentage', 0.07, '0.0%', new PercentCell(7)],
    ['a number no date is shown for', -1, 'yyyy', -1],
    ['a text', '0012', '@', '0012'],
    ['a text that looks like an error', '#N/A', 'General', '#N/A'],
    ['an error', new ErrorValue('#DIV/0!'), 'General', new ErrorCell('#DIV/0!')],
    ['an empty text', new FormulaCell('=""', ''), 'General', null],
    ['a formula’s result', new FormulaCell('=A2/2', 2.5), '0%', new PercentCell(250)],
    ['a truth value', false, 'General', false],
  ])('%s', async (_, content, format, expected) => {
    const { rows } = await firstSheet(
      bookWith((sheet) => {
        sheet.setContent(1, 1, content);
        sheet.setFormat(1, 1, format);
        sheet.setContent(1, 2, 'end');
      }),
    );
    expect(rows).toEqual([[expected, 'end']]);
  });

  it('in a workbook that counts from 1904', async () => {
    // 1 March 2026 is 46,082 in the one system and 44,620 in the other (ECMA-376 part 1, section 18.17.4.1).
    const { rows } = await firstSheet(
      bookWith((sheet, book) => {
        book.date1904 = true;
        sheet.setContent(1, 1, 44_620);
        sheet.setFormat(1, 1, 'yyyy-mm-dd');
      }),
    );
    expect(rows).toEqual([[new DateCell(Date.UTC(2026, 2, 1) / 86_400_000)]]);
  });

  it('at their places, wherever the used area begins', async () => {
    const { rows } = await firstSheet(
      bookWith((sheet) => {
        sheet.setContent(3, 3, 'C3');
      }),
    );
    expect(rows).toEqual([[], [], [null, null, 'C3']]);
  });
});

describe('rows that are not seen', () => {
  it.each([
    ['some', [3, 5], true],
    ['all', [2, 3, 4, 5], false],
    ['none', [], false],
  ])('%s hidden', async (_, hidden, isAskedByRow) => {
    const book = bookWith((sheet) => {
      for (let row = 2; row <= 5; row++) sheet.setContent(row, 1, row);
      for (const row of hidden) sheet.hiddenRows.add(row);
    });
    const { excel, port } = openInExcel(book);
    const { sheets } = await port.readWorkbook();
    expect([...sheets[0]!.hiddenRows]).toEqual(hidden);
    const calls = excel.roundTrips.flatMap(({ body }) => body.Actions.map(({ Name }) => Name));
    expect(calls.includes('GetRowProperties')).toBe(isAskedByRow);
  });
});

describe('columns that are not seen', () => {
  it.each([
    ['some', [2, 4], true],
    ['all', [2, 3, 4], false],
  ])('%s hidden', async (_, hidden, isAskedByColumn) => {
    const book = bookWith((sheet) => {
      for (let column = 2; column <= 4; column++) sheet.setContent(3, column, column);
      for (const column of hidden) sheet.hiddenColumns.add(column);
    });
    const { excel, port } = openInExcel(book);
    const { sheets } = await port.readWorkbook();
    expect([...(sheets[0]!.hiddenColumns ?? [])]).toEqual(hidden);
    const calls = excel.roundTrips.flatMap(({ body }) => body.Actions.map(({ Name }) => Name));
    expect(calls.includes('GetColumnProperties')).toBe(isAskedByColumn);
  });
});

describe('merged cells read as they look', () => {
  it('and are handed on, so that a header over several columns is known for one', async () => {
    const book = bookWith((sheet) => {
      sheet.setContent(1, 1, 'Measured sensitivity');
      for (const column of [1, 2]) sheet.setContent(2, column, 2023 + column);
      sheet.merges.push({ top: 1, left: 1, bottom: 1, right: 2 });
    });
    const { sheets } = await openInExcel(book).port.readWorkbook();
    expect(sheets[0]!.merged).toEqual([{ top: 1, left: 1, bottom: 1, right: 2 }]);
  });

  const machines = (count: number) =>
    bookWith((sheet) => {
      for (let index = 0; index < count; index++) {
        const top = 2 + index * 3;
        sheet.setContent(top, 1, `Machine ${index}`);
        for (let row = top; row < top + 3; row++) sheet.setContent(row, 2, row);
        sheet.merges.push({ top, left: 1, bottom: top + 2, right: 1 });
      }
    });

  // 1,200 is more than the 512 that Excel lists at once; rows 2 + 3 × 170 = 512 and so on lie across borders of blocks.
  it.each([3, 1_200])('%i machines of three rows each', async (count) => {
    const { rows } = await firstSheet(machines(count));
    expect(rows.slice(1).map((row) => row[0])).toEqual(
      Array.from({ length: count * 3 }, (_, index) => `Machine ${Math.floor(index / 3)}`),
    );
  });

  it('and as they are stored in an Excel that can’t list them', async () => {
    const { rows } = await firstSheet(machines(1), '1.12');
    expect(rows.slice(1)).toEqual([
      ['Machine 0', 2],
      [null, 3],
      [null, 4],
    ]);
  });
});

describe('large sheets', () => {
  it('less is asked for where texts are long', async () => {
    const book = bookWith((sheet) => {
      for (let row = 1; row <= 500; row++) sheet.setContent(row, 1, `${row} ${'é'.repeat(30_000)}`);
    });
    const { rows } = await firstSheet(book);
    expect(rows.map((row) => Number.parseInt(row[0] as string))).toEqual(
      Array.from({ length: 500 }, (_, index) => index + 1),
    );
  });

  it('a row that is too long even so is named', async () => {
    const book = bookWith((sheet) => {
      for (let column = 1; column <= 200; column++) sheet.setContent(7, column, 'x'.repeat(32_767));
      sheet.setContent(1, 1, 'a');
    });
    await expect(firstSheet(book)).rejects.toThrow(/“Channels” could not be read\. Row 7 holds more text/);
  });

  it('stray cells far away are refused, with the sheet named', async () => {
    const book = bookWith((sheet) => {
      sheet.setContent(1, 1, 'a');
      sheet.setContent(1_048_576, 16_384, 'b');
    });
    await expect(firstSheet(book)).rejects.toThrow(/17,179,869,184 cells.*“Channels”.*stray cells/);
  });
});
