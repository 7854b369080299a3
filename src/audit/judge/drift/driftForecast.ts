import { isoDate } from '../../../cells/cell.ts';
import { reachesLevel } from '../../../method/drift/reachesLevel.ts';
import { reachesLevelSpan } from '../../../method/drift/reachesLevelSpan.ts';
import type { StraightLine } from '../../../method/record/straightLine.ts';
import type { DriftForecast } from '../../model/drift.ts';

/** What the drift of one channel is worked out with. */
export interface DriftLimits {
  readonly configured: number;
  readonly unit: string;
  /** Accepted departure of the sensitivity from the configured one, as a fraction. */
  readonly tolerance: number;
  /** Day of the audit, from 1970-01-01. */
  readonly today: number;
}

/** The last day that a date of four digits can name: 9999-12-31, counted from 1970-01-01. */
const lastDay = 2_932_896;

/**
 * When the line through a channel's readings leaves the tolerance Kc·(1 ± t) on the side towards which it runs. `line` is
 * in days from `origin` (a day from 1970-01-01); `coverage` is Student's t for its scatter. A line that lies beyond the
 * tolerance on the other side gets no dates: it runs back into it.
 */
export function driftForecast(
  line: StraightLine,
  origin: number,
  coverage: number,
  { configured, tolerance, today }: DriftLimits,
): DriftForecast {
  const now = line.intercept + line.slope * (today - origin);
  const [low, high] = [configured * (1 - tolerance), configured * (1 + tolerance)];
  const state = now >= low && now <= high ? 'inside' : 'outside';
  const side = Math.sign(line.slope);
  const none = { state, limit: null, days: null, on: null, earliest: null, latest: null } as const;
  if (side === 0 || (side > 0 ? now < low : now > high)) return none;
  const limit = side > 0 ? high : low;
  const days = reachesLevel(line, limit);
  const span = reachesLevelSpan(line, limit, coverage);
  return {
    state,
    limit,
    days: Number.isFinite(days) ? days : null,
    on: dateOf(origin + Math.floor(days)),
    earliest: dateOf(Math.min(lastDay, origin + Math.floor(span.from))),
    latest: dateOf(origin + Math.ceil(span.to)),
  };
}

/** A day as a date; `null` where a calendar of four-digit years does not reach it. */
function dateOf(day: number): string | null {
  return day >= 0 && day <= lastDay ? isoDate(day) : null;
}
