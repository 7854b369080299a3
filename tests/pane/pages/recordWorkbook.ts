import type { Cell } from '../../../src/cells/cell.ts';
import type { MemoryWorkbook } from '../../../src/pane/example/memoryPort.ts';

/** A tag and a series made to break out of being text. */
export const hostileRecord = {
  tag: '<img src=x onerror="document.title=1">',
  series: '"><script>x</script>',
} as const;

/** Gaps of 10 to 90 mil in steps of 5, and the volts of a chain of so many V/mil, flatter beyond 75 mil. */
function points(perMil: number): [gap: number, volts: number][] {
  return Array.from({ length: 17 }, (_, index): [number, number] => {
    const gap = 10 + 5 * index;
    return [gap, Number((-perMil * (gap - 0.2 * Math.max(0, gap - 75))).toFixed(3))];
  });
}

/** Three channels with calibration records, one of them with hostile texts and one too short for its danger; one without. */
export function recordWorkbook(): MemoryWorkbook {
  const records: (readonly [tag: string, series: string, perMil: number])[] = [
    ['V-1', 'as found', 0.16],
    ['V-1', 'as left', 0.2],
    [hostileRecord.tag, hostileRecord.series, 0.2],
    ['V-3', '', 0.2],
  ];
  const rows: readonly (readonly Cell[])[] = [
    ['Tag', 'Series', 'Gap (mil)', 'Output (V)'],
    ...records.flatMap(([tag, series, perMil]) =>
      points(perMil).map(([gap, volts]) => [tag, series, gap, volts]),
    ),
  ];
  const sheet = (name: string, cells: readonly (readonly Cell[])[]) => ({
    name,
    rows: cells,
    hidden: false,
    hiddenRows: new Set<number>(),
    tables: [],
  });
  return {
    workbook: {
      name: 'records.xlsx',
      sheets: [
        sheet('Channels', [
          ['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Gap voltage (V)'],
          ['V-1', 'M-1', 160, -8],
          [hostileRecord.tag, 'M-1', 200, -10],
          ['V-3', 'M-1', 200, -2.2],
          ['V-4', 'M-1', 200, -10],
        ]),
        sheet('Monitor', [
          ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
          ...['V-1', hostileRecord.tag, 'V-3', 'V-4'].map((tag) => [tag, 200, 3, 5]),
        ]),
        sheet('Rec<b>ords', rows),
      ],
    },
    selection: { sheet: 'Channels', area: { top: 2, left: 1, bottom: 2, right: 1 } },
  };
}
