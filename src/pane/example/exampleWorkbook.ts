import type { Cell } from '../../cells/cell.ts';
import type { Sheet } from '../../cells/sheet.ts';
import type { MemoryWorkbook } from './memoryPort.ts';

/** An invented pump set and its compressor, small enough to read at a glance. */
const channels: readonly (readonly Cell[])[] = [
  ['Channel list (invented example)'],
  [],
  [
    'Tag',
    'Machine',
    'Location',
    'Kind',
    'Measured sensitivity (mV/mil)',
    'Uncertainty (%)',
    'Gap voltage (V)',
    'Reference gap voltage (V)',
    'Measured zero voltage (V)',
    'Positive direction',
    'Speed (r/min)',
    'Limit (mil)',
    'Present reading (mil)',
  ],
  ['K1-1X', 'Compressor', 'drive end X', 'radial', 160, 3, -8, -10, null, null, 9600, 6, 1.8],
  ['K1-1Y', 'Compressor', 'drive end Y', 'radial', 198, 3, -9.9, -10, null, null, 9600, 6, 1.6],
  ['K1-2X', 'Compressor', 'free end X', 'radial', 231, 3, -10.1, -10, null, null, 9600, 6, 1.4],
  ['K1-2Y', 'Compressor', 'free end Y', 'radial', 192, 4, -10.2, -10, null, null, 9600, 6, 1.5],
  ['K1-TA', 'Compressor', 'thrust A', 'axial', 176, 3, -10.3, -10, -10.4, 'toward', null, 32, 6],
  ['K1-TB', 'Compressor', 'thrust B', 'axial', 201, 3, -10, -10, -10, 'toward', null, 32, 7],
  ['P7-1X', 'Pump', 'drive end X', 'radial', 200, 3, -9.8, -10, null, null, 2980, null, 2.2],
  ['P7-1Y', 'Pump', 'drive end Y', 'radial', 'not measured', null, null, null, null, null, 2980, null, 2],
];

const settings: readonly (readonly Cell[])[] = [
  [
    'Tag',
    'Configured sensitivity (mV/mil)',
    'Alert (mil)',
    'Danger (mil)',
    'Full scale (mil)',
    'Configured zero voltage (V)',
    'Counter alert (mil)',
    'Counter danger (mil)',
    'Resolution (mil)',
    'Voting group',
    'Voting',
  ],
  ['K1-1X', 200, 3, 5, 10, null, null, null, 0.1, 'K1 drive end', '1oo2'],
  ['K1-1Y', 200, 3, 5, 10, null, null, null, 0.1, 'K1 drive end', '1oo2'],
  ['K1-2X', 200, 3, 5, 10, null, null, null, 0.1, 'K1 free end', '2oo2'],
  ['K1-2Y', 200, 3, 5, 10, null, null, null, 0.1, 'K1 free end', '2oo2'],
  ['K1-TA', 200, 18, 25, 40, -10, 18, 25, 0.5, 'K1 thrust', '2oo2'],
  ['K1-TB', 200, 18, 25, 40, -10, 18, 25, 0.5, 'K1 thrust', '2oo2'],
  ['P7-1X', 200, 4, 12, 10, null, null, null, 0.1, null, null],
  ['P7-1Y', 200, 4, 6, 10, null, null, null, 0.1, null, null],
];

const oneSetpoint: readonly (readonly Cell[])[] = [
  ['Setpoint (mil)', 'Configured (mV/mil)', 'Measured (mV/mil)', 'Acts at (mil)'],
  [5, 200, 160],
];

function sheet(name: string, rows: Sheet['rows']): Sheet {
  return { name, hidden: false, rows, hiddenRows: new Set(), tables: [] };
}

/** The workbook of a page that has no spreadsheet program behind it; the numbers of one setpoint are selected. */
export const exampleWorkbook: MemoryWorkbook = {
  workbook: {
    name: 'example.xlsx',
    sheets: [sheet('Channels', channels), sheet('Monitor', settings), sheet('One setpoint', oneSetpoint)],
  },
  selection: { sheet: 'One setpoint', area: { top: 2, left: 1, bottom: 2, right: 3 } },
};
