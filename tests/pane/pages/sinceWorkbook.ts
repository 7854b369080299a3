import { audit } from '../../../src/audit/audit.ts';
import type { Cell } from '../../../src/cells/cell.ts';
import type { Workbook } from '../../../src/cells/sheet.ts';
import type { MemoryWorkbook } from '../../../src/pane/example/memoryPort.ts';
import { resultSheets } from '../../../src/sheets/resultSheets.ts';

/** A tag made to break out of being text. */
export const hostileTag = '<img src=x onerror="document.title=1">';

const sheet = (name: string, rows: readonly (readonly Cell[])[]) => ({
  name,
  rows,
  hidden: false,
  hiddenRows: new Set<number>(),
  tables: [],
});

function plant(measured: readonly (readonly [tag: string, sensitivity: number])[]): Workbook {
  return {
    name: 'since.xlsx',
    sheets: [
      sheet('Channels', [['Tag', 'Measured sensitivity (mV/mil)'], ...measured]),
      sheet('Monitor', [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...measured.map(([tag]) => [tag, 200, 3, 5]),
      ]),
    ],
  };
}

/** A plant with the results of an earlier audit in two sheets: since then one chain got worse and one was repaired. */
export function sinceWorkbook(): MemoryWorkbook {
  const earlier = [
    ['V-1', 200],
    [hostileTag, 200],
    ['V-3', 160],
    ['Old', 200],
  ] as const;
  const report = audit(plant(earlier), { now: new Date('2025-03-14T08:05:00Z') });
  const results = resultSheets(report).flatMap((model) =>
    model.name === 'Audit results'
      ? [[...model.rows()].map((row) => row.cells.map((cell) => cell?.value ?? null))]
      : [],
  );
  const { name, sheets } = plant([
    ['V-1', 200],
    [hostileTag, 160],
    ['V-3', 200],
  ]);
  return {
    workbook: {
      name,
      sheets: [
        ...sheets,
        ...results.flatMap((rows) => [sheet('Results <b>1</b>', rows), sheet('Results 2', rows)]),
      ],
    },
    selection: { sheet: 'Channels', area: { top: 2, left: 1, bottom: 2, right: 1 } },
  };
}
