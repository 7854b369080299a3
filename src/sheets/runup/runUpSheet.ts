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
import { formulaList } from '../formulaList.ts';
import { tones } from '../look/palette.ts';
import { type LevelLooks, levelLooks } from '../levelLooks.ts';
import { fittedLine, fittedWidths, headerCells } from '../look/fittedColumns.ts';
import { footerOf } from '../look/print.ts';
import { severityShades, shadesFor } from '../look/shades.ts';
import { givenStyle } from '../look/significant.ts';
import { frameStyles, levelStyles } from '../look/styles.ts';
import type { ModelCell, ModelRow, ModelValue, SheetModel } from '../model.ts';
import { isRatio } from '../results/acting.ts';
import { sheetNames, titleOf } from '../titles.ts';
import { runUpBlock } from './runUpBlock.ts';

interface Line {
  readonly channel: RunUpChannel;
  readonly threshold: RunUpThreshold;
}

interface RunUpColumn {
  readonly header: string;
  readonly width: number;
  /** `given`: as it was given; `level`: by the step of the instrument. */
  readonly style: string;
  readonly value: (line: Line) => ModelValue;
}

const columns: readonly RunUpColumn[] = [
  { header: 'Tag', width: 13, style: 'strong', value: ({ channel }) => channel.tag },
  { header: 'Machine', width: 20, style: 'oneLine', value: ({ channel }) => channel.machine },
  { header: 'Threshold', width: 16, style: 'oneLine', value: ({ threshold }) => runUpName(threshold) },
  { header: 'On this run-up', width: 14, style: 'strong', value: ({ threshold }) => threshold.outcome },
  { header: 'Acts at, r/min', width: 12, style: 'speed', value: ({ threshold }) => threshold.acts },
  { header: 'Should at, r/min', width: 12, style: 'speed', value: ({ threshold }) => threshold.should },
  {
    header: 'Set',
    width: 12,
    style: 'given',
    value: ({ threshold }) => threshold.multiplier * threshold.setpoint,
  },
  {
    header: 'Really, where it acts',
    width: 12,
    style: 'level',
    value: ({ threshold }) => threshold.realAtTrip,
  },
  { header: 'Largest real', width: 12, style: 'level', value: ({ channel }) => channel.peak },
  { header: 'at, r/min', width: 12, style: 'speed', value: ({ channel }) => channel.peakSpeed },
  { header: 'Unit', width: 8, style: 'text', value: ({ channel }) => channel.unit },
  { header: 'Amplitudes were', width: 12, style: 'text', value: ({ channel }) => channel.amplitudes },
  { header: 'Sensitivity by', width: 22, style: 'oneLine', value: ({ channel }) => channel.sensitivityFrom },
  { header: 'Read from', width: 18, style: 'oneLine', value: ({ channel }) => channel.source },
  {
    header: 'In words',
    width: 60,
    style: 'oneLine',
    value: ({ channel, threshold }) => runUpText(channel, threshold),
  },
];

/** Channels that are drawn. */
const mostDrawn = 60;
const headerRow = 5;
/** Columns that are printed. */
const printedColumns = 16;

/** Run-ups: a line for each threshold of each channel, where it acts at running speed, and a drawing of each channel. */
export function runUpSheet(report: Report, { channels, responses }: RunUpResult): SheetModel {
  const formulas = formulaList();
  const looks = levelLooks(report);
  const lines = channels.flatMap((channel) =>
    channel.thresholds.map((threshold) => lineRow({ channel, threshold }, looks)),
  );
  const atSpeed = responses.flatMap((response) => responseRows(response, looks));
  const ratios = new Set(report.channels.filter(isRatio).map(channelKey));
  const lookOf = (channel: RunUpChannel): string => looks(channel, channel.thresholds[0]?.setpoint ?? null);
  const blocks: ModelRow[] = [];
  const charts: ScatterChart[] = [];
  let top = headerRow + lines.length + 1 + atSpeed.length + 1;
  for (const channel of channels.slice(0, mostDrawn)) {
    const ratio = ratios.has(channelKey(channel));
    const { rows, chart } = runUpBlock(channel, ratio, top, lookOf(channel), formulas.place);
    blocks.push(...rows);
    charts.push(chart);
    top += rows.length;
  }
  const rowCount = headerRow + lines.length + 1 + atSpeed.length + blocks.length;
  const outcomes = { top: headerRow + 1, left: 4, bottom: headerRow + Math.max(1, lines.length), right: 4 };
  return {
    name: sheetNames['run-up'],
    widths: fittedWidths(columns, [...lines, ...atSpeed]),
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
      yield { height: 30, cells: headerCells(columns) };
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

function lineRow(line: Line, looks: LevelLooks): ModelRow {
  const level = looks(line.channel, line.threshold.setpoint);
  const cellOf = ({ value, style }: RunUpColumn): ModelCell | undefined => {
    const found = value(line);
    const given = style === 'given' && typeof found === 'number';
    return cell(found, style === 'level' ? level : given ? givenStyle(found) : style);
  };
  return fittedLine(columns, { cells: columns.map(cellOf) });
}

/** Where the thresholds of a channel act at its running speed. */
function responseRows(channel: ResponseChannel, looks: LevelLooks): ModelRow[] {
  const { tag, unit, sensitivityFrom, atSpeed } = channel;
  return atSpeed.thresholds.map(({ name, effective }) =>
    fittedLine(columns, {
      cells: [
        cell(tag, 'strong'),
        cell(sensitivityFrom, 'oneLine'),
        cell(name, 'text'),
        cell('at running speed', 'text'),
        cell(atSpeed.speed, 'speed'),
        undefined,
        undefined,
        cell(effective, looks(channel, effective)),
        undefined,
        undefined,
        cell(unit, 'text'),
      ],
    }),
  );
}
