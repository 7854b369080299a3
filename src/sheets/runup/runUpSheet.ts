import { channelKey } from '../../audit/read/tables/tagKey.ts';
import { runUpName, runUpText } from '../../audit/advise/runUpText.ts';
import type {
  ResponseChannel,
  RunUpChannel,
  RunUpResult,
  RunUpThreshold,
  Report,
} from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import type { ScatterChart } from '../charts/model.ts';
import { type Column, columnList } from '../column.ts';
import { formulaList } from '../formulaList.ts';
import { tones } from '../style/palette.ts';
import { type LevelStyleOf, levelStylesOf } from '../levelStylesOf.ts';
import { fittedWidths } from '../style/fittedColumns.ts';
import { footerOf } from '../style/print.ts';
import { severityShades, shadesFor } from '../style/shades.ts';
import { givenStyle } from '../style/significant.ts';
import { frameStyles, levelStyles } from '../style/styles.ts';
import type { ModelRow, SheetModel } from '../model.ts';
import { isRatio } from '../results/acting.ts';
import { sheetNames, titleOf } from '../titles.ts';
import { runUpBlock } from './runUpBlock.ts';

/** One threshold of one channel. */
interface Line extends RunUpThreshold {
  readonly channel: RunUpChannel;
  /** Style of its levels, by the step of the instrument. */
  readonly level: string;
}

const meant = ({ multiplier, setpoint }: Line): number => multiplier * setpoint;
const level = (line: Line): string => line.level;

const columns: readonly Column<Line>[] = [
  { id: 'tag', header: 'Tag', width: 13, style: 'strong', value: ({ channel }) => channel.tag },
  { id: 'machine', header: 'Machine', width: 20, style: 'wrapped', value: ({ channel }) => channel.machine },
  { id: 'threshold', header: 'Threshold', width: 16, style: 'wrapped', value: runUpName },
  { id: 'outcome', header: 'On this run-up', width: 14, style: 'strong', value: ({ outcome }) => outcome },
  { id: 'acts', header: 'Acts at, r/min', width: 12, style: 'speed', value: ({ acts }) => acts },
  { id: 'should', header: 'Should at, r/min', width: 12, style: 'speed', value: ({ should }) => should },
  { id: 'set', header: 'Set', width: 12, style: (line) => givenStyle(meant(line)), value: meant },
  {
    id: 'real',
    header: 'Really, where it acts',
    width: 12,
    style: level,
    value: ({ realAtTrip }) => realAtTrip,
  },
  { id: 'peak', header: 'Largest real', width: 12, style: level, value: ({ channel }) => channel.peak },
  { id: 'at', header: 'at, r/min', width: 12, style: 'speed', value: ({ channel }) => channel.peakSpeed },
  { id: 'unit', header: 'Unit', width: 8, style: 'text', value: ({ channel }) => channel.unit },
  {
    id: 'are',
    header: 'Amplitudes were',
    width: 12,
    style: 'text',
    value: ({ channel }) => channel.amplitudes,
  },
  {
    id: 'by',
    header: 'Sensitivity by',
    width: 22,
    style: 'wrapped',
    value: ({ channel }) => channel.sensitivityFrom,
  },
  { id: 'source', header: 'Read from', width: 18, style: 'wrapped', value: ({ channel }) => channel.source },
  {
    id: 'words',
    header: 'In words',
    width: 60,
    style: 'wrapped',
    value: (line) => runUpText(line.channel, line),
  },
];

const list = columnList(columns, { headersAsCells: true });

/** Channels that are drawn. */
const mostDrawn = 60;
const headerRow = 5;
/** Columns that are printed. */
const printedColumns = 16;

/** Run-ups: a line for each threshold of each channel, where it acts at running speed, and a drawing of each channel. */
export function runUpSheet(report: Report, { channels, responses }: RunUpResult): SheetModel {
  const formulas = formulaList();
  const levelStyle = levelStylesOf(report);
  const lines = channels.flatMap((channel) =>
    channel.thresholds.map((threshold) =>
      list.row({ ...threshold, channel, level: levelStyle(channel, threshold.setpoint) }),
    ),
  );
  const atSpeed = responses.flatMap((response) => responseRows(response, levelStyle));
  const ratios = new Set(report.channels.filter(isRatio).map(channelKey));
  const levelStyleOf = (channel: RunUpChannel): string =>
    levelStyle(channel, channel.thresholds[0]?.setpoint ?? null);
  const blocks: ModelRow[] = [];
  const charts: ScatterChart[] = [];
  let top = headerRow + lines.length + 1 + atSpeed.length + 1;
  for (const channel of channels.slice(0, mostDrawn)) {
    const ratio = ratios.has(channelKey(channel));
    const { rows, chart } = runUpBlock(channel, ratio, top, levelStyleOf(channel), formulas.place);
    blocks.push(...rows);
    charts.push(chart);
    top += rows.length;
  }
  const rowCount = headerRow + lines.length + 1 + atSpeed.length + blocks.length;
  const outcomes = list.below('outcome', headerRow + 1, headerRow + Math.max(1, lines.length));
  return {
    name: sheetNames['run-up'],
    widths: fittedWidths(list.columns, [...lines, ...atSpeed]),
    styles: {
      ...frameStyles,
      ...levelStyles,
      speed: { numberFormat: '#,##0_0', valign: 'top' },
      tag: { bold: true, size: 13, color: tones.ink, underline: true },
    },
    formulas: formulas.all,
    rowCount,
    *rows() {
      yield { height: 24, cells: [cell(titleOf('run-up', report), 'title')] };
      yield { height: 30, cells: [cell(report.caution, 'caution')] };
      yield { height: 30, cells: [cell(howToRead, 'wrapped')] };
      yield { cells: [] };
      yield { height: 30, cells: list.headers };
      yield* lines;
      yield { cells: [] };
      yield* atSpeed;
      yield* blocks;
    },
    freeze: { rows: headerRow, columns: 1 },
    merges: [2, 3].map((row) => ({ top: row, left: 1, bottom: row, right: 12 })),
    shades: shadesFor(outcomes, { 'no action': severityShades.critical, late: severityShades.warning }),
    charts,
    print: {
      landscape: true,
      footer: footerOf(report),
      area: { top: 1, left: 1, bottom: Math.max(1, rowCount), right: printedColumns },
    },
  };
}

const howToRead =
  'At which speed each threshold acts on this run-up as the monitor shows it, and at which it should have acted on the real vibration. The points are joined by straight lines. A sensitivity against speed holds for the component at that speed, not for an overall value.';

/** Where the thresholds of a channel act at its running speed. */
function responseRows(channel: ResponseChannel, looks: LevelStyleOf): ModelRow[] {
  const { tag, machine, unit, sensitivityFrom, atSpeed } = channel;
  return atSpeed.thresholds.map(({ name, effective }) =>
    list.arranged({
      tag: cell(tag, 'strong'),
      machine: cell(machine, 'wrapped'),
      threshold: cell(name, 'text'),
      outcome: cell('at running speed', 'text'),
      acts: cell(atSpeed.speed, 'speed'),
      real: cell(effective, looks(channel, effective)),
      unit: cell(unit, 'text'),
      by: cell(sensitivityFrom, 'wrapped'),
    }),
  );
}
