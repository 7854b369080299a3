import type { ThresholdResult } from '../../audit/model/threshold.ts';
import type { ChannelResult } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import type { BarChart } from '../charts/model.ts';
import { tones } from '../style/palette.ts';
import type { ModelCell } from '../model.ts';
import { clipped } from './paper.ts';
import { lastColumn, space, type AnnexPages, type Block } from './annexPages.ts';
import { inOrder, numberColumns, workingColumns, type Place } from './numberLines.ts';

/** One pair of bars: where a threshold is set, and where it really acts. */
interface Bar {
  readonly channel: ChannelResult;
  readonly threshold: ThresholdResult;
}

/** Bars of one unit, to be drawn together. */
export interface Drawing {
  readonly unit: string;
  readonly bars: readonly Bar[];
}

/** Pairs of bars in one drawing: twelve channels with their alert and danger. */
const mostBars = 24;

/** Alerts and dangers of these channels as they stand now, a drawing a unit, each small enough to be read on a page. */
export function drawingsOf(channels: readonly ChannelResult[]): readonly Drawing[] {
  const byUnit = new Map<string, Bar[][]>();
  for (const channel of channels) {
    const bars = inOrder(channel.thresholds)
      .filter((threshold) => threshold.multiplier === 1 && threshold.effective !== null)
      .map((threshold) => ({ channel, threshold }));
    if (bars.length === 0) continue;
    const key = unitOf(channel) + (channel.kind === 'axial' ? ', position' : '');
    byUnit.set(key, [...(byUnit.get(key) ?? []), bars]);
  }
  return [...byUnit].flatMap(([unit, own]) => portions(own).map((bars) => ({ unit, bars })));
}

function unitOf({ unit, detection }: ChannelResult): string {
  return [unit, detection].filter((part) => part !== null).join(' ');
}

/** Channels in portions as even as they can be; the bars of one stay together. */
function portions(channels: readonly (readonly Bar[])[]): Bar[][] {
  const total = channels.reduce((sum, bars) => sum + bars.length, 0);
  const even = Math.ceil(total / Math.ceil(total / mostBars));
  const all: Bar[][] = [];
  for (const bars of channels) {
    const last = all.at(-1);
    if (last && last.length < even && last.length + bars.length <= mostBars) last.push(...bars);
    else all.push([...bars]);
  }
  return all;
}

/** Rows of 15 points under a drawing: title, legend and axis, and room for each pair of bars. */
export function rowsOf({ bars }: Drawing): number {
  return Math.max(bars.length + 1, Math.ceil((88 + 17 * bars.length) / 15));
}

/** First of the columns from which a drawing draws: names, set at, acts at; to the right of the lines' workings. */
export const firstDrawnColumn = lastColumn + workingColumns + 3;

/** The cells from which a drawing draws, row by row from its first; they follow the lines of numbers. */
export function drawnCells(
  drawing: Drawing,
  { rowOf }: AnnexPages,
  place: Place,
): (readonly (ModelCell | undefined)[])[] {
  return drawing.bars.map(({ channel, threshold }) => {
    const row = rowOf.get(threshold);
    const { setpoint, effective, name } = threshold;
    const idle = threshold.unreachable.includes('above full scale');
    const doubt = threshold.unreachable.length > 0 ? ', cannot act' : '';
    const value = (number: number | null, column: string): ModelCell | undefined =>
      number === null || row === undefined
        ? undefined
        : { value: number, style: 'text', formula: place(`$${column}$${row}`) };
    return [
      cell(`${clipped(channel.tag, 30)} ${name}${doubt}`, 'text'),
      value(setpoint, numberColumns.set),
      idle ? undefined : value(effective, numberColumns.acts),
    ];
  });
}

/** The drawing over its rows: pale and patterned where a threshold is set, dark where it acts, so that grey paper shows both. */
export function barChart({ unit, bars }: Drawing, top: number, rows: number): BarChart {
  const down = (column: number) => ({
    area: { top, bottom: top + bars.length - 1, left: column, right: column },
  });
  return {
    kind: 'bar',
    bars: 'horizontal',
    title: `Pale: set at. Dark: really acts at. In ${unit}`,
    legend: false,
    alternativeText: `Where ${bars.length} thresholds are set and where they really act, in ${unit}; the numbers stand in the lines of the channels.`,
    place: { top, bottom: top + rows - 1, left: 1, right: lastColumn },
    categoryAxis: {},
    valueAxis: { numberFormat: 'General' },
    series: [
      {
        name: 'set at',
        categories: down(firstDrawnColumn),
        values: down(firstDrawnColumn + 1),
        color: tones.ink,
        pattern: 'dotted',
      },
      {
        name: 'really acts at',
        categories: down(firstDrawnColumn),
        values: down(firstDrawnColumn + 2),
        color: tones.ink,
      },
    ],
  };
}

/** Empty rows for a drawing, with room before it. */
export function roomFor(drawing: Drawing): Block {
  return [space, ...Array.from({ length: rowsOf(drawing) }, () => ({ entries: [], height: 15 }))];
}
