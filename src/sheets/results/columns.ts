import { columnList } from '../column.ts';
import { sourceOf } from '../links.ts';
import type { Band } from './column.ts';
import { formulas } from './formulas.ts';
import type { Line } from './line.ts';
import { policyCells } from './policyCells.ts';
import { actingBand, furtherBand } from './chainBand.ts';
import { chainBand, channelBand, positionBand, reachBand, settingBand } from './inputBands.ts';
import { listedBand, otherLinesBand } from './lineBands.ts';
import { interimBand, presentBand } from './presentBands.ts';
import { runoutBand } from './runoutBand.ts';
import { effectBand, gapsBand, limitBand, verdictBand } from './resultBands.ts';

const actionBand: Band = {
  caption: 'Needs action',
  columns: [
    {
      id: 'action',
      header: 'What is wrong',
      width: 70,
      style: 'text',
      value: ({ action }) => action.headlines,
    },
    { id: 'doNext', header: 'Do next', width: 60, style: 'text', value: ({ action }) => action.doNext },
  ],
};

const sourceBand: Band = {
  caption: 'Source',
  columns: [
    {
      id: 'calibratedOn',
      header: 'Calibrated on',
      width: 12,
      style: 'text',
      value: ({ channel }) => channel.inputs.calibratedOn,
    },
    {
      id: 'sheet',
      header: 'Channel list',
      width: 14,
      style: 'text',
      value: ({ channel }) => channel.source.channels.sheet,
    },
    {
      id: 'row',
      header: 'Row',
      width: 7,
      style: 'countLink',
      value: ({ channel }) => channel.source.channels.row,
      link: ({ channel }) => sourceOf(channel.source.channels),
    },
    {
      id: 'settingsSheet',
      header: 'Monitor settings',
      width: 14,
      style: 'text',
      value: ({ channel }) => channel.source.settings?.sheet ?? null,
    },
    {
      id: 'settingsRow',
      header: 'Settings row',
      width: 9,
      style: 'countLink',
      value: ({ channel }) => channel.source.settings?.row ?? null,
      link: ({ channel: { source } }) => (source.settings ? sourceOf(source.settings) : undefined),
    },
  ],
};

/** Columns of the results sheet from left to right. */
export const bands: readonly Band[] = [
  channelBand,
  verdictBand,
  settingBand,
  effectBand,
  chainBand,
  reachBand,
  positionBand,
  furtherBand,
  actingBand,
  listedBand,
  otherLinesBand,
  gapsBand,
  limitBand,
  presentBand,
  runoutBand,
  interimBand,
  actionBand,
  sourceBand,
];

export const columns = bands.flatMap((band) => band.columns);

export const list = columnList<Line>(
  columns.map(({ formula, ...column }) =>
    formula === undefined ? column : { ...column, formula: formulas[formula] },
  ),
  { headersAsCells: true, cells: policyCells, formulasIn: ({ worked }) => worked },
);

/** Columns that go on paper: the verdict with its setting, effect and chain. The workings to their right are for the screen. */
export const printedColumns = [channelBand, verdictBand, settingBand, effectBand, chainBand].flatMap(
  (band) => band.columns,
).length;
