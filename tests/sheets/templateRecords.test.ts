import { expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { type Cell, cellText } from '../../src/cells/cell.ts';
import { recordColumns } from '../../src/tools/template/records/recordColumns.ts';
import { template } from '../../src/tools/template/template.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';

/** What is typed under each header, in one row of each sheet. */
const typed: Readonly<Record<string, number | string>> = {
  Tag: 'A-1',
  'Measured sensitivity [mV/mil]': 200,
  'Gap voltage [V]': -10,
  'Configured sensitivity [mV/mil]': 200,
  'Alert [mil]': 3,
  'Danger [mil]': 4,
};
const series: readonly (readonly [series: string, perMil: number])[] = [
  ['as found', 0.2],
  ['as left', 0.19],
];

/** Rows of the template's table of records: 10, 30, 50, 70, 90 mil of a straight chain, as found and as left. */
function pointRows(): Cell[][] {
  return series.flatMap(([name, perMil]) =>
    [10, 30, 50, 70, 90].map((gap) =>
      recordColumns('mil').map(({ header }): Cell => {
        if (header === 'Tag') return 'A-1';
        if (header === 'Series') return name;
        if (header === 'Temperature [°C]') return 20;
        return header === 'Gap [mil]' ? gap : header === 'Output [V]' ? -perMil * gap : null;
      }),
    ),
  );
}

it('the template’s table of records, filled in, is read as calibration records', () => {
  const book = readWorkbook('template.xlsx', template());
  const sheets = book.sheets.map((sheet) => {
    if (sheet.name === 'Probe records')
      return { ...sheet, rows: [...sheet.rows.slice(0, 4), ...pointRows()] };
    const row = (sheet.rows[2] ?? []).map((header) => typed[cellText(header)] ?? null);
    return row[0] === 'A-1' ? { ...sheet, rows: [...sheet.rows.slice(0, 3), row] } : sheet;
  });
  const { channels, problems } = audit({ ...book, sheets });
  expect(problems.filter(({ severity }) => severity !== 'note')).toEqual([]);
  // By hand: as left 0.19 V/mil throughout, so that −10 V stands at 10/0.19 mil; as found 0.2 V/mil and 50 mil.
  const [channel] = channels;
  const [now, found] = [channel?.record, channel?.asFound?.record];
  expect(now?.average).toBeCloseTo(190, 9);
  expect(now?.operatingGap).toBeCloseTo(10 / 0.19, 9);
  expect(found?.average).toBeCloseTo(200, 9);
  expect(found?.operatingGap).toBeCloseTo(50, 9);
  expect(now).toMatchObject({ series: 'as left', gapUnit: 'mil', others: [{ series: 'as found' }] });
});
