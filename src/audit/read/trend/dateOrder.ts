import type { TrendClock, TrendSource } from '../../model/trend.ts';
import { dateOrderIn } from './timeReader.ts';
import type { TrendHead } from './trendHead.ts';

/** Rows in which a date is looked for that tells the order of day and month. */
const orderRows = 5_000;

/** The order of day and month in the dates of a table, where its first rows tell one alone. */
export function dateOrderOf(source: TrendSource, { row, time, date }: TrendHead): TrendClock['dates'] {
  let at = 0;
  const found = new Set<TrendClock['dates']>();
  for (const cells of source.rows()) {
    if (++at <= row) continue;
    if (at > row + orderRows) break;
    const cell = cells[(date ?? time) - 1];
    if (typeof cell === 'string') found.add(dateOrderIn(cell));
  }
  found.delete(null);
  const [order = null] = found;
  return found.size === 1 ? order : null;
}
