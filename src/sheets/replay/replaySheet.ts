import { channelKey } from '../../audit/read/tables/tagKey.ts';
import type { ReplayedChannel, ReplayResult, Report } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import type { ScatterChart } from '../charts/model.ts';
import { formulaList } from '../formulaList.ts';
import { tones } from '../style/palette.ts';
import { type LevelStyleOf, levelStylesOf } from '../levelStylesOf.ts';
import { fittedWidths } from '../style/fittedColumns.ts';
import { footerOf, leftOut, roomFor } from '../style/print.ts';
import { severityShades, shadesFor } from '../style/shades.ts';
import { frameStyles, levelStyles } from '../style/styles.ts';
import type { ModelRow, SheetModel } from '../model.ts';
import { sheetNames, titleOf } from '../titles.ts';
import { isRatio } from '../results/acting.ts';
import { crossingList, type Crossing } from './crossings.ts';
import { drawnThreshold } from '../../audit/model/replay.ts';
import { timelineBlock } from './timelineBlock.ts';

/** Channels that are drawn: those of which most is to be said. */
const mostDrawn = 60;

/** Columns that are printed: what happened, and the drawings. */
const printedColumns = 16;

/** Recorded readings replayed: a line for each threshold of each channel, and a drawing of each channel where something happened. */
export function replaySheet(report: Report, replay: ReplayResult): SheetModel {
  const formulas = formulaList();
  const levelStyle = levelStylesOf(report);
  const sources = replay.sources.map(sourceText);
  const headerRow = 5 + sources.length;
  const all = crossingsOf(report, replay, levelStyle);
  const shown = all.slice(0, roomFor(all.length, headerRow + mostDrawn * 400));
  const lines = shown.map((crossing) => crossingList.row(crossing, formulas.place));
  const blocks: ModelRow[] = [];
  const charts: ScatterChart[] = [];
  let top = headerRow + lines.length + 2;
  for (const channel of drawnChannels(replay)) {
    const threshold = drawnThreshold(channel);
    if (!threshold) continue;
    const { rows, chart } = timelineBlock(channel, threshold, top, levelStyle(channel, threshold.setpoint));
    blocks.push(...rows);
    charts.push(chart);
    top += rows.length;
  }
  const late = { top: headerRow + 1, left: 4, bottom: headerRow + Math.max(1, lines.length), right: 4 };
  return {
    name: sheetNames.replay,
    widths: fittedWidths(crossingList.columns, lines),
    styles: {
      ...frameStyles,
      ...levelStyles,
      seconds: { numberFormat: '0.0##_0', valign: 'top' },
      minutes: { numberFormat: '0.00_0', valign: 'top' },
      tag: { bold: true, size: 13, color: tones.ink, underline: true },
    },
    formulas: formulas.all,
    rowCount: headerRow + lines.length + 1 + blocks.length,
    *rows() {
      yield { height: 24, cells: [cell(titleOf('replay', report), 'title')] };
      yield { height: 30, cells: [cell(report.caution, 'caution')] };
      yield { height: 45, cells: [cell(howToRead + leftOut(all.length, shown.length), 'wrapped')] };
      for (const text of sources) yield { cells: [cell(text, 'text')] };
      yield { cells: [] };
      yield { height: 45, cells: crossingList.headers };
      yield* lines;
      yield { cells: [] };
      yield* blocks;
    },
    freeze: { rows: headerRow, columns: 1 },
    merges: [2, 3].map((row) => ({ top: row, left: 1, bottom: row, right: 12 })),
    shades: shadesFor(late, { 'did not act': severityShades.critical, 'not known': severityShades.warning }),
    charts,
    print: {
      landscape: true,
      footer: footerOf(report),
      area: {
        top: 1,
        left: 1,
        bottom: Math.max(1, headerRow + lines.length + 1 + blocks.length),
        right: printedColumns,
      },
    },
  };
}

const howToRead =
  '“Acted” is when the monitor acted by the readings as it showed them; “should have acted”, when it would have with the measured sensitivity. A missing reading counts as below the setpoint; in the columns “earliest possible”, as past it. Start-up multipliers are taken as off. Only recorded readings count: what happened between two of them is not seen.';

function sourceText({
  name,
  rows,
  rowsLeftOut,
  zone,
  notRead,
  from,
}: ReplayResult['sources'][number]): string {
  const left = rowsLeftOut > 0 ? `, ${rowsLeftOut} of them left out` : '';
  const unread = notRead.length > 0 ? `; ${notRead.length} of its tags match no channel` : '';
  const where = from === 'file' ? `File ${name}` : `Sheet '${name}'`;
  return `${where}: ${rows} rows${left}${unread}. Times ${zone === null ? 'name their offsets, shown in UTC' : `in ${zone}`}.`;
}

function crossingsOf({ channels }: Report, replay: ReplayResult, levelStyle: LevelStyleOf): Crossing[] {
  const ratios = new Set(channels.filter(isRatio).map(channelKey));
  return replay.channels.flatMap((channel) =>
    channel.thresholds.map((threshold) => ({
      channel,
      threshold,
      isRatio: ratios.has(channelKey(channel)),
      levelStyle: levelStyle(channel, threshold.setpoint),
    })),
  );
}

function drawnChannels({ channels }: ReplayResult): readonly ReplayedChannel[] {
  const events = channels.filter(({ thresholds }) =>
    thresholds.some(({ outcome }) => outcome !== 'not reached'),
  );
  return events.slice(0, mostDrawn);
}
