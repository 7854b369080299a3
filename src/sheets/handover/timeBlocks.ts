import type { ThresholdResult } from '../../audit/model/threshold.ts';
import type { ChannelResult } from '../../audit/model/report.ts';
import { amount } from '../../audit/model/wording.ts';
import { cell } from '../cells.ts';
import { wide } from '../style/layout.ts';
import { levelDecimals } from '../style/significant.ts';
import { heading, line, table, type Block } from './annexPages.ts';
import { inOrder } from './numberLines.ts';
import { type PageLine, clipped } from './paper.ts';

/** By how many days thresholds act later at the present growth, and how far it has grown then. */
export function timeBlocks(channels: readonly ChannelResult[]): Block[] {
  if (channels.length === 0) return [];
  const lines = channels.flatMap((channel) =>
    inOrder(channel.thresholds)
      .filter(({ multiplier, daysLate }) => multiplier === 1 && daysLate !== null)
      .map((threshold) => timeLine(channel, threshold)),
  );
  const title = heading('How much later in time, at the present growth');
  if (lines.length === 0)
    return [[...title, line('Not known: no growth is given for these channels.', 'remark')]];
  return table(title, headers, lines);
}

const headers: PageLine = {
  height: 27,
  entries: [
    wide('Channel', 'labelLeft', 2),
    wide('Threshold', 'labelLeft', 2),
    wide('Growth', 'labelLeft', 2),
    cell('Later (+), days', 'label'),
    wide('Days until it acts, from the present level', 'label', 2),
    wide('Real level when the relay acts', 'label', 2),
    cell('Unit', 'labelCentred'),
  ],
};

function timeLine({ tag, unit, inputs }: ChannelResult, threshold: ThresholdResult): PageLine {
  const { growthPerDay, doublingDays } = inputs;
  const growth =
    growthPerDay !== null
      ? `${amount(growthPerDay, unit ?? '')} a day`
      : doublingDays !== null
        ? `doubles in ${amount(doublingDays, 'days')}`
        : '';
  const { daysLate, daysToGo, levelAtTrip, setpoint, name } = threshold;
  const level = `level${levelDecimals(setpoint, inputs.resolution)}`;
  const number = (value: number | null, style: string) =>
    wide(value ?? '–', value === null ? 'dash' : style, 2);
  return {
    entries: [
      wide(clipped(tag), 'name', 2),
      wide(name, 'text', 2),
      wide(growth, 'wrapped', 2),
      cell(daysLate, 'signed1'),
      number(daysToGo, 'days'),
      number(levelAtTrip, level),
      cell(unit, 'centred'),
    ],
  };
}
