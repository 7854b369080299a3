import { columnNumber } from '../../../cells/address.ts';
import type { ChannelResult, Report } from '../../../audit/model/report.ts';

/** From which column to which the row of a channel runs in the channel list, counted from 1. */
export function rowExtent({ columns }: Report, channel: ChannelResult): { from: number; to: number } {
  const { sheet } = channel.source.channels;
  const numbers = columns
    .filter((column) => column.table === 'channel list' && column.sheet === sheet)
    .map(({ column }) => columnNumber(column));
  return numbers.length === 0 ? { from: 1, to: 1 } : { from: Math.min(...numbers), to: Math.max(...numbers) };
}
