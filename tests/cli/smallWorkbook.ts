import type { ModelCell } from '../../src/sheets/model.ts';
import { newWorkbook } from '../../src/hosts/file/write/newWorkbook.ts';

const headers = [
  'Tag',
  'Machine',
  'Measured sensitivity (mV/mil)',
  'Configured sensitivity (mV/mil)',
  'Alert (mil)',
  'Danger (mil)',
  'Full scale (mil)',
  'Voting group',
  'Voting',
  'Bypass',
] as const;

export interface SmallChannel {
  readonly tag: string;
  readonly machine: string;
  /** mV/mil; the monitor is configured for 200, alert 3 and danger 5 mil. */
  readonly measured: number;
  /** mil; 10 where left out. */
  readonly fullScale?: number;
  readonly group?: string;
  readonly bypass?: string;
}

/** A workbook of one sheet with both tables in one. */
export function smallWorkbook(channels: readonly SmallChannel[]): Uint8Array {
  const cells = (values: readonly (string | number | undefined)[]) => ({
    cells: values.map((value): ModelCell | undefined => (value === undefined ? undefined : { value })),
  });
  const rows = channels.map(({ tag, machine, measured, fullScale = 10, group, bypass }) =>
    cells([tag, machine, measured, 200, 3, 5, fullScale, group, group && '2oo2', bypass]),
  );
  return newWorkbook([
    {
      name: 'Channels',
      widths: headers.map(() => 14),
      styles: {},
      formulas: [],
      rowCount: rows.length + 1,
      rows: () => [cells(headers), ...rows],
      print: { landscape: true },
    },
  ]);
}
