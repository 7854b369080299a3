import { expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import type { Cell } from '../../src/cells/cell.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import { isClean } from '../../src/evidence/verification.ts';
import { verify } from '../../src/evidence/verify.ts';
import { readWorkbook } from '../../src/hosts/file/read/workbook.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';
import { resultSheets } from '../../src/sheets/resultSheets.ts';
import { book, sheet } from '../audit/book.ts';
import { now } from './written.ts';

/** Names that every object of the language has something under. */
const odd = ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'valueOf', '__defineGetter__'];

/** Two channels of one group on sheets of these names, one row of each table hidden. */
function plantOf(channels: string, monitor: string, name: string): Workbook {
  const hidden = { hiddenRows: new Set([3]) };
  const rows = (...cells: Cell[]): Cell[][] => ['', '2'].map((end) => [`${name}${end}`, ...cells]);
  return book(
    sheet(
      channels,
      [['Tag', 'Machine', 'Location', 'Measured sensitivity (mV/mil)'], ...rows(name, name, 160)],
      hidden,
    ),
    sheet(
      monitor,
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Voting group', 'Voting'],
        ...rows(200, 3, 5, name, '1oo2'),
      ],
      hidden,
    ),
  );
}

it.each(odd)('sheets, tags, machines and groups called %s are names like any other', (name) => {
  const plain = audit(plantOf('Channels', 'Monitor', 'VT'), { now });
  for (const [channels, monitor] of [
    [name, 'Monitor'],
    ['Channels', name],
  ] as const) {
    const plant = plantOf(channels, monitor, name);
    const report = audit(plant, { now });
    expect(report.summary).toEqual(plain.summary);
    expect(report.groups.map(({ effective }) => effective)).toEqual(
      plain.groups.map(({ effective }) => effective),
    );
    expect(JSON.stringify(report).split(name).length).toBeGreaterThan(5);
    const results = readWorkbook('r.xlsx', newWorkbook(resultSheets(report))).sheets;
    const checked = verify({ ...plant, sheets: [...plant.sheets, ...results] });
    expect(isClean(checked)).toBe(true);
  }
});
