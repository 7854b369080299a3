import { describe, expect, it } from 'vitest';
import { audit } from '../../../src/audit/audit.ts';
import { resultSheets } from '../../../src/sheets/resultSheets.ts';
import { stationSheets } from '../../bench/station.ts';
import { FakeBook } from '../../office/fake/book.ts';
import type { RoundTrip } from '../../office/fake/fakeExcel.ts';
import { sheetOf } from '../file/write/model.ts';
import { openInExcel } from './open.ts';

const channels = 20_000;

/** What Excel on the web takes and gives at once (public reference, limits of add-ins). */
const mostBytes = 5_000_000;

function station(): FakeBook {
  const book = new FakeBook();
  for (const model of stationSheets(channels)) {
    const sheet = book.add(model.name);
    let row = 0;
    for (const { cells } of model.rows()) {
      row++;
      cells.forEach((cell, column) => {
        const value = cell?.value ?? null;
        if (value !== null) sheet.setContent(row, column + 1, value);
      });
    }
  }
  return book;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}

/** Trips that would do if each were filled to half of what Excel allows, and a handful for the rest. */
function few(trips: readonly RoundTrip[]): number {
  const bytes = sum(trips.map(({ requestBytes, responseBytes }) => requestBytes + responseBytes));
  return Math.ceil(bytes / (mostBytes / 2)) + 6;
}

describe('20,000 channels', () => {
  it('both tables are read, and their result sheets written, in few round trips, none too large', async () => {
    const { excel, port } = openInExcel(station());
    const workbook = await port.readWorkbook();
    expect(sum(workbook.sheets.map(({ rows }) => rows.length))).toBe(2 * (channels + 1));
    const reading = excel.roundTrips.splice(0);
    await port.writeSheets(resultSheets(audit(workbook)));
    for (const trips of [reading, excel.roundTrips]) {
      expect(trips.filter(({ error }) => error !== undefined)).toEqual([]);
      expect(Math.max(...trips.map(({ requestBytes }) => requestBytes))).toBeLessThan(mostBytes);
      expect(trips.length).toBeLessThanOrEqual(few(trips));
    }
    expect(reading.length).toBeLessThanOrEqual(12);
  });

  it('four sheets of 20,000 rows are written in few round trips', async () => {
    const { excel, port } = openInExcel(new FakeBook());
    excel.book.add('Channels');
    const rows = Array.from({ length: channels }, (_, row) => [
      `31-VT-${row}X`,
      row / 7,
      { value: row * 1.1, style: ['level1', 'level2', 'level3'][row % 3] ?? 'level1' },
      row % 5 === 0 ? 'late' : 'within',
      { value: row / 14, formula: 0, style: 'level2' },
    ]);
    const styles = {
      level1: { numberFormat: '0.0', valign: 'top' },
      level2: { numberFormat: '0.00', valign: 'top' },
      level3: { numberFormat: '0.000', bold: true },
    } as const;
    const names = ['One', 'Two', 'Three', 'Four'];
    await port.writeSheets(names.map((name) => sheetOf(name, rows, { styles, formulas: ['B{r}/2'] })));
    expect(excel.roundTrips.length).toBeLessThanOrEqual(few(excel.roundTrips));
    expect(excel.roundTrips.length).toBeLessThanOrEqual(16);
    const last = excel.book.find('Four')!;
    expect(last.content(channels, 1)).toBe(`31-VT-${channels - 1}X`);
    expect(last.format(channels, 3)).toBe('0.00');
    expect([last.painted(3, 3, 'Font.Bold'), last.painted(4, 3, 'Font.Bold')]).toEqual([true, undefined]);
  });
});
