import type { Cell } from '../../src/cells/cell.ts';
import type { Sheet, SheetTable, Workbook } from '../../src/cells/sheet.ts';

export type Rows = readonly (readonly Cell[])[];

/** A sheet written as its rows; `more` for what a sheet has beside its cells. */
export function sheet(name: string, rows: Rows, more: Partial<Omit<Sheet, 'name' | 'rows'>> = {}): Sheet {
  return { name, rows, hidden: false, hiddenRows: new Set(), tables: [], ...more };
}

/** A workbook of plain sheets, each written as its rows. */
export function book(...sheets: readonly (Sheet | readonly [name: string, rows: Rows])[]): Workbook {
  return {
    name: 'test.xlsx',
    sheets: sheets.map((one) => ('rows' in one ? one : sheet(one[0], one[1]))),
  };
}

/** A spreadsheet table with its header row at the top. */
export function listObject(
  name: string,
  [top, left, bottom, right]: readonly [number, number, number, number],
  totalsRow = false,
): SheetTable {
  return { name, area: { top, left, bottom, right }, headerRow: true, totalsRow };
}

const channelHeader = ['Tag', 'Kind', 'Measured sensitivity (mV/mil)'] as const;
const settingsHeader = ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'] as const;

interface OneChannel {
  readonly kind?: string;
  readonly measured?: Cell;
  readonly configured?: Cell;
  readonly alert?: Cell;
  readonly danger?: Cell;
  /** Further columns of the channel list, by header. */
  readonly channel?: Readonly<Record<string, Cell>>;
  /** Further columns of the monitor settings, by header. */
  readonly settings?: Readonly<Record<string, Cell>>;
}

/**
 * A workbook with the one channel `V-1` in row 2 of the sheets `Channels` and `Monitor`. Unless told otherwise it is
 * radial and right: 200 mV/mil configured and measured, alert 3 mil, danger 5 mil. Further columns stand from D
 * (channels) and E (settings) on.
 */
export function oneChannel({
  kind = 'radial',
  measured = 200,
  configured = 200,
  alert = 3,
  danger = 5,
  channel = {},
  settings = {},
}: OneChannel): Workbook {
  return book(
    [
      'Channels',
      [
        [...channelHeader, ...Object.keys(channel)],
        ['V-1', kind, measured, ...Object.values(channel)],
      ],
    ],
    [
      'Monitor',
      [
        [...settingsHeader, ...Object.keys(settings)],
        ['V-1', configured, alert, danger, ...Object.values(settings)],
      ],
    ],
  );
}

/** A velocity channel `V-1`, measured at the 100 mV/(in/s) it is configured for, and sheets beside its two lists. */
export function velocityBook(...more: readonly (Sheet | readonly [name: string, rows: Rows])[]): Workbook {
  return book(
    [
      'Channels',
      [
        ['Tag', 'Kind', 'Measured sensitivity (mV/(in/s))'],
        ['V-1', 'velocity', 100],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/(in/s))', 'Alert (in/s)', 'Danger (in/s)'],
        ['V-1', 100, 0.3, 0.5],
      ],
    ],
    ...more,
  );
}
