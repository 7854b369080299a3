import type { SheetModel } from '../../../sheets/model.ts';
import { lastNight, stationZone } from '../station/lastNight.ts';
import { headerCells } from './sheetColumn.ts';
import { handKeptStyles } from './writtenCell.ts';

/** Day 0 of the usual spreadsheet calendar, counted from 1970-01-01. */
const spreadsheetEpoch = -25_569;

/** What somebody copied out of the monitor's trend on the morning after the trip: a column a tag, as spreadsheets keep times. */
export function trendSheet(): SheetModel {
  const tags = [...new Set(lastNight.map(({ tag }) => tag))];
  const byTime = new Map<string, number[]>();
  for (const { time, tag, shown } of lastNight) {
    const there = byTime.get(time) ?? [];
    there[tags.indexOf(tag)] = shown;
    byTime.set(time, there);
  }
  const headers = [`Time (${stationZone})`, ...tags.map((tag) => `${tag} (mil p-p)`)];
  return {
    name: 'Trend K-101',
    widths: [24, 18, 18],
    styles: {
      ...handKeptStyles,
      moment: { numberFormat: 'yyyy-mm-dd hh:mm:ss' },
      shown: { numberFormat: '0.000' },
    },
    formulas: [],
    rowCount: 3 + byTime.size,
    *rows() {
      yield { cells: [{ value: 'Trip of K-101 last night, as the monitor recorded it', style: 'title' }] };
      yield { cells: [] };
      yield { height: 30, cells: headerCells(headers.map((header) => ({ header }))) };
      for (const [time, shown] of byTime)
        yield {
          cells: [
            {
              value: Date.parse(`${time.replace(' ', 'T')}Z`) / 86_400_000 - spreadsheetEpoch,
              style: 'moment',
            },
            ...shown.map((value) => ({ value, style: 'shown' })),
          ],
        };
    },
    freeze: { rows: 3, columns: 1 },
    print: { landscape: false, repeatRows: { from: 3, to: 3 } },
  };
}

/** A night's readings as the plant's historian exports them: a row a reading. */
export function trendExport(readings: typeof lastNight): Uint8Array {
  const lines = readings.map(({ time, tag, shown }) => `${time},${tag},${shown},Good`);
  return new TextEncoder().encode(
    [`Time (${stationZone}),Tag,Value (mil p-p),Quality`, ...lines, ''].join('\n'),
  );
}
