import type { ModelRow, SheetModel } from '../../../sheets/model.ts';
import type { Machine, SettingsRecord } from '../station/records.ts';
import { entryCells, headerCells, type SheetColumn } from './sheetColumn.ts';
import { handKeptStyles } from './writtenCell.ts';

const columns: readonly SheetColumn<SettingsRecord>[] = [
  { header: 'Rack/slot', width: 9, of: (settings) => settings.slot },
  { header: 'Channel tag', width: 11, of: (settings) => settings.tag },
  { header: 'Voting group', width: 17, of: (settings) => settings.group },
  { header: 'Voting', width: 8, of: (settings) => settings.voting, centred: true },
  { header: 'Full scale', width: 8, of: (settings) => settings.fullScale },
  { header: 'Alert', width: 8, of: (settings) => settings.alert },
  { header: 'Danger', width: 8, of: (settings) => settings.danger },
  { header: 'Unit', width: 10, of: (settings) => settings.unit, centred: true },
  { header: 'Detection', width: 10, of: (settings) => settings.detection, centred: true },
  { header: 'Setpoint resolution', width: 11, of: (settings) => settings.step },
  { header: 'Start-up multiplier', width: 10, of: (settings) => settings.multiplier },
  { header: 'Alert delay [s]', width: 8, of: (settings) => settings.alertDelay },
  { header: 'Danger delay [s]', width: 8, of: (settings) => settings.dangerDelay },
  { header: 'Scale factor', width: 8, of: (settings) => settings.configured },
  { header: 'Scale factor unit', width: 11, of: (settings) => settings.sensitivityUnit, centred: true },
  { header: 'Monitor gain', width: 8, of: (settings) => settings.gain },
  { header: 'Zero voltage [V]', width: 9, of: (settings) => settings.zero },
  { header: 'Counter alert', width: 9, of: (settings) => settings.counterAlert },
  { header: 'Counter danger', width: 9, of: (settings) => settings.counterDanger },
  { header: 'Fault limit high [V]', width: 10, of: (settings) => settings.faultHigh },
  { header: 'Fault limit low [V]', width: 10, of: (settings) => settings.faultLow },
  { header: 'Limit', width: 8, of: (settings) => settings.limit },
  { header: 'Bypass', width: 11, of: (settings) => settings.bypass, centred: true },
  { header: 'Remarks', width: 100, of: (settings) => settings.remarks },
];

const headerRow = 4;
const headers: ModelRow = {
  height: 45,
  cells: headerCells(columns),
};

/** The monitor settings as the station keeps them; the header stands once more before the second rack. */
export function settingsSheet(machines: readonly Machine[], secondRack: string): SheetModel {
  const rows = machines.flatMap(({ name, settings }): ModelRow[] => [
    ...(name === secondRack ? [headers] : []),
    ...settings.map((entry) => ({ cells: entryCells(columns, entry) })),
  ]);
  const all: ModelRow[] = [
    { cells: [{ value: 'Harbour Station – monitor settings as configured', style: 'title' }] },
    {
      cells: [
        { value: 'Copied from the racks by hand. Bypass: yes or no. Invented station', style: 'subtitle' },
      ],
    },
    { cells: [] },
    headers,
    ...rows,
  ];
  return {
    name: 'Monitor settings',
    widths: columns.map(({ width }) => width),
    styles: handKeptStyles,
    formulas: [],
    rowCount: all.length,
    rows: () => all,
    freeze: { rows: headerRow, columns: 2 },
    print: { landscape: true, repeatRows: { from: headerRow, to: headerRow } },
  };
}
