import type { ThresholdResult } from '../../audit/model/threshold.ts';
import type { ChannelResult } from '../../audit/model/report.ts';
import { amount } from '../../audit/model/wording.ts';
import { cell } from '../cells.ts';
import { wide } from '../look/layout.ts';
import { decimalsFor } from '../look/significant.ts';
import { needsAttention } from './attention.ts';
import { asFound } from './asLeft.ts';
import { clipped } from './clipped.ts';
import type { Machine } from '../machines.ts';
import { inOrder } from './numberLines.ts';
import { heading, line, space, table, type Block, type PageLine } from './page.ts';

/** By how many days the thresholds that don't act as meant act later at the present growth, and how far it has grown then. */
export function timeBlocks({ channels }: Machine): Block[] {
  const wrong = channels.filter(needsAttention);
  if (wrong.length === 0) return [];
  const lines = wrong.flatMap((channel) =>
    inOrder(channel.thresholds)
      .filter(({ multiplier, daysLate }) => multiplier === 1 && daysLate !== null)
      .map((threshold) => timeLine(channel, threshold)),
  );
  const title = heading(asFound('How much later in time, at the present growth', channels));
  if (lines.length === 0) {
    return [[space, ...title, line('Not known: no growth is given for the channels above.', 'remark')]];
  }
  return table([space, ...title], headers, lines);
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
  const level = `level${decimalsFor(setpoint)}`;
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
