import { newWorkbook } from '../../hosts/file/write/newWorkbook.ts';
import { packParts, unpackParts } from './package/parts.ts';
import { sheetPartName } from './package/sheetElement.ts';
import { addBarChart } from './parts/barChart.ts';
import { addComments } from './parts/cellComments.ts';
import { addListTable } from './parts/listTable.ts';
import { hideRows, textsToErrors } from './parts/sheetSlips.ts';
import { changeLogArea, changeLogColumns, changeLogSheet } from './sheets/changeLogSheet.ts';
import {
  channelColumn,
  channelHeaderRow,
  channelSheet,
  channelSheetName,
  placedChannels,
} from './sheets/channelSheet.ts';
import { historySheet } from './sheets/historySheet.ts';
import { gapChartSheet, notesSheet } from './sheets/notesSheet.ts';
import { probeRecordSheets } from './sheets/probeRecordSheets.ts';
import { runUpSheet } from './sheets/runUpSheet.ts';
import { settingsSheet } from './sheets/settingsSheet.ts';
import { trendSheet } from './sheets/trendSheet.ts';
import { machines, secondRack } from './station/station.ts';

/**
 * The workbook of an invented station, as .xlsx: a channel list and monitor settings in the station's own layout, a
 * chart, a change log and notes. Most channels are sound; each of the others shows one fault and tells its story in
 * the remarks. The same bytes at every call.
 */
export function harbourStation(): Uint8Array {
  const sheets = [
    channelSheet(machines),
    settingsSheet(machines, secondRack),
    gapChartSheet(),
    changeLogSheet(),
    ...probeRecordSheets(),
    historySheet(),
    trendSheet(),
    runUpSheet(),
    notesSheet(),
  ];
  const parts = unpackParts(newWorkbook(sheets));
  const [channels, , chart, changes] = sheets.map((_, index) => sheetPartName(index + 1)) as [
    string,
    string,
    string,
    string,
  ];
  const placed = placedChannels(machines);
  hideRows(
    parts,
    channels,
    placed.filter(({ channel }) => channel.hidden !== undefined).map(({ row }) => row),
  );
  textsToErrors(parts, channels, '#REF!');
  addComments(
    parts,
    channels,
    placed.flatMap(({ row, channel: { tag } }) =>
      comments
        .filter((comment) => comment.tag === tag)
        .map(({ header, text }) => ({ row, column: channelColumn(header), text })),
    ),
  );
  addBarChart(
    parts,
    chart,
    {
      title: 'Gap voltage by channel',
      valueAxis: 'V',
      sheetName: channelSheetName,
      nameColumn: channelColumn('Tag no.'),
      valueColumn: channelColumn('Gap voltage (V)'),
      headerRow: channelHeaderRow,
      header: 'Gap voltage (V)',
      top: channelHeaderRow + 1,
      bars: placed.map(({ channel: { tag = '', gap } }) => ({
        name: String(tag),
        value: typeof gap === 'number' ? gap : null,
      })),
    },
    16,
    26,
  );
  addListTable(parts, changes, 'ChangeLog', changeLogArea, changeLogColumns);
  return packParts(parts);
}

const comments = [
  {
    tag: 'K101-1X',
    header: 'Sensitivity, as found',
    text: 'Taken twice, two days apart, with the same result.',
  },
  { tag: 'K101-2Y', header: 'Gap voltage (V)', text: 'Looks right. Is the sensitivity?' },
] as const;
