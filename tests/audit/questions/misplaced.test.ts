import { describe, expect, test } from 'vitest';
import { misplacedText } from '../../../src/audit/advise/questions/misplacedText.ts';
import type { ColumnMap } from '../../../src/audit/model/columnMap.ts';
import { finish } from '../../../src/audit/model/steps.ts';
import { misplacedIn } from '../../../src/audit/read/mapPlaces.ts';
import { understand } from '../../../src/audit/read/understand/understand.ts';
import { book } from '../book.ts';

const probes = book([
  'Probes',
  [
    ['Tag', 'Actual SF (mV/mil)', 'SF in monitor (mV/mil)', 'HI (mil)', 'HIHI (mil)'],
    ['1X', 160, 200, 3, 5],
    ['1Y', 201, 200, 3, 5],
  ],
]);

/** What is said of a map; nothing where the workbook bears all of it out. */
function said(map: ColumnMap): string {
  const { tables } = finish(understand(probes, map));
  const [first, ...more] = misplacedIn(map, tables, probes);
  return first ? misplacedText([first, ...more]) : '';
}

const table = { sheet: 'Probes', header: 1 };
const danger = { at: 'E', header: 'HIHI (mil)', unit: 'mil' };

describe('a map that names what is not there', () => {
  test('what is there passes: columns by letters and headers, letter case aside, cells, and no column at all', () => {
    expect(
      said({
        tables: [
          {
            ...table,
            sheet: 'probes',
            columns: { danger, alert: 'HI (mil)', tag: 'A', limit: null },
            units: { alert: 'mil' },
            notOfAudit: ['B'],
          },
        ],
        cells: { 'Probes!B2': 161 },
        names: { 'not there': '1X' },
      }),
    ).toBe('');
  });

  test('a sheet, with those that are', () => {
    expect(said({ tables: [{ sheet: 'Probe', header: 1 }] })).toBe(
      "Column map, tables: there is no sheet 'Probe'. The sheets are: 'Probes'.",
    );
  });

  test('a list, with those of the sheet', () => {
    expect(said({ tables: [{ sheet: 'Probes', header: 3 }] })).toBe(
      "Column map, sheet 'Probes': there is no list in row 3. It has the list in row 1. Correct 'header', or leave the list out.",
    );
  });

  test('a column that is not there, one with another header by now, a meaning and a unit that are none', () => {
    const of = (columns: Record<string, string | typeof danger>): string =>
      said({ tables: [{ ...table, columns }] });
    const where = "Column map, sheet 'Probes', list in row 1";
    expect(of({ danger: 'Z' })).toBe(
      `${where}, danger: there is no column Z. Correct 'at', or leave it out.`,
    );
    expect(of({ danger: { ...danger, header: 'HH' } })).toBe(
      `${where}, danger: column E is 'HIHI (mil)' by now, not 'HH'. Correct 'at' and 'header', or make the proposal anew.`,
    );
    expect(of({ dangr: 'E' })).toContain(`${where}: 'dangr' is no standard header. They are: tag, `);
    expect(of({ danger: { ...danger, unit: 'furlong' } })).toBe(
      `${where}, unit of danger: 'furlong' is no unit known here.`,
    );
    expect(said({ tables: [{ ...table, notOfAudit: ['Q'] }] })).toContain('notOfAudit: there is no column Q');
  });

  test('a cell in which nothing stands, and how many more entries do not fit', () => {
    const cells = { 'Probes!B9': 160, 'Elsewhere!B2': 160, Probes: 1 };
    expect(said({ cells })).toBe(
      'Column map, cells: nothing stands in Probes!B9. Correct the address, or leave it out. 2 more entries do not fit either.',
    );
  });
});
