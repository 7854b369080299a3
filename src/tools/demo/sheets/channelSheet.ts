import type { Area } from '../../../cells/sheet.ts';
import type { ModelRow, SheetModel } from '../../../sheets/model.ts';
import type { ChannelRecord, Machine } from '../station/records.ts';
import { entryCells, headerCells, type SheetColumn } from './sheetColumn.ts';
import { handKeptStyles } from './writtenCell.ts';

const columns: readonly SheetColumn<ChannelRecord>[] = [
  { header: 'Tag no.', width: 11, of: (channel) => channel.tag },
  { header: 'Location', width: 26, of: (channel) => channel.location },
  { header: 'Channel type', width: 12, of: (channel) => channel.type },
  { header: 'Speed (r/min)', width: 9, of: (channel) => channel.speed },
  { header: 'Calibrated on', width: 13, of: (channel) => channel.calibrated },
  { header: 'Sensitivity, as found', width: 11, of: (channel) => channel.measured },
  { header: 'Unit', width: 11, of: (channel) => channel.unit, centred: true },
  { header: 'Uncertainty (%)', width: 12, of: (channel) => channel.uncertainty },
  { header: 'Gap voltage (V)', width: 11, of: (channel) => channel.gap },
  { header: 'Reference sensitivity', width: 11, of: (channel) => channel.referenceSensitivity },
  { header: 'Reference gap voltage (V)', width: 12, of: (channel) => channel.referenceGap },
  { header: 'Zero voltage (V)', width: 10, of: (channel) => channel.zero },
  { header: 'Direction', width: 10, of: (channel) => channel.direction, centred: true },
  { header: 'Limit', width: 7, of: (channel) => channel.limit },
  { header: 'Reading (as shown)', width: 10, of: (channel) => channel.reading },
  { header: 'Growth per day', width: 9, of: (channel) => channel.growth },
  { header: 'Doubling time (days)', width: 10, of: (channel) => channel.doubling },
  { header: 'As-left sensitivity', width: 11, of: (channel) => channel.asLeft },
  { header: 'As-left uncertainty (%)', width: 12, of: (channel) => channel.asLeftUncertainty },
  { header: 'As-left gap voltage (V)', width: 11, of: (channel) => channel.asLeftGap },
  { header: 'As-left zero voltage (V)', width: 11, of: (channel) => channel.asLeftZero },
  { header: 'Chain length (m)', width: 9, of: (channel) => channel.chainLength },
  { header: 'Cable lot', width: 11, of: (channel) => channel.batch, centred: true },
  { header: 'Shared uncertainty (%)', width: 11, of: (channel) => channel.sharedUncertainty },
  { header: 'Loop current at 0 % (mA)', width: 10, of: (channel) => channel.loopAtZero },
  { header: 'Loop current at 100 % (mA)', width: 10, of: (channel) => channel.loopAtSpan },
  { header: 'Last good on', width: 13, of: (channel) => channel.lastGood },
  { header: 'Sensitivity 2019 (mV/mil)', width: 11, of: (channel) => channel.measured2019 },
  { header: 'Remarks', width: 105, of: (channel) => channel.remarks },
];

/** Name of the sheet, and where its rows and columns stand; all count from 1, the machine is column A. */
export const channelSheetName = 'Channels';
export const channelHeaderRow = 5;
const firstRow = channelHeaderRow + 1;

/** Number of the column with this header. Throws a RangeError for a header the sheet does not have. */
export function channelColumn(header: string): number {
  const index = columns.findIndex((column) => column.header === header);
  if (index < 0) throw new RangeError(`the channel sheet has no column "${header}"`);
  return index + 2;
}

interface PlacedChannel {
  readonly row: number;
  readonly machine: string;
  readonly channel: ChannelRecord;
}

/** All channels with the rows in which they stand, machine by machine without gaps. */
export function placedChannels(machines: readonly Machine[]): readonly PlacedChannel[] {
  return machines
    .flatMap(({ name, channels }) => channels.map((channel) => ({ machine: name, channel })))
    .map((entry, index) => ({ row: firstRow + index, ...entry }));
}

/** The channel list as the station keeps it: titles above, one merged cell a machine, a heading without channels below. */
export function channelSheet(machines: readonly Machine[]): SheetModel {
  const placed = placedChannels(machines);
  const above: ModelRow[] = [
    { cells: [{ value: 'Harbour Station – machinery protection, channel list', style: 'title' }] },
    {
      cells: [
        {
          value: 'As found at the last calibration of each channel; shaft vibration in peak to peak',
          style: 'subtitle',
        },
      ],
    },
    { cells: [{ value: 'Invented station: no such place, machine or reading exists', style: 'subtitle' }] },
    { cells: [] },
    {
      height: 45,
      cells: headerCells([{ header: 'Machine' }, ...columns]),
    },
  ];
  const rows = placed.map(({ row, machine, channel }): ModelRow => {
    const first = placed.find((other) => other.machine === machine)?.row === row;
    return {
      cells: [first ? { value: machine, style: 'machine' } : undefined, ...entryCells(columns, channel)],
    };
  });
  const below: ModelRow[] = [
    { cells: [undefined, { value: 'Probes in stores: none at present', style: 'heading' }] },
  ];
  const all = [...above, ...rows, ...below];
  return {
    name: channelSheetName,
    widths: [22, ...columns.map(({ width }) => width)],
    styles: handKeptStyles,
    formulas: [],
    rowCount: all.length,
    rows: () => all,
    freeze: { rows: channelHeaderRow, columns: 2 },
    merges: machines.flatMap(({ name }) => machineArea(placed, name)),
    print: { landscape: true, repeatRows: { from: channelHeaderRow, to: channelHeaderRow } },
  };
}

function machineArea(placed: readonly PlacedChannel[], name: string): Area[] {
  const rows = placed.filter(({ machine }) => machine === name).map(({ row }) => row);
  return rows.length > 1 ? [{ top: Math.min(...rows), bottom: Math.max(...rows), left: 1, right: 1 }] : [];
}
