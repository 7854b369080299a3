import { sensitivityAt, sensitivityByResponse, highPass } from '../../../method/frequency.ts';
import { convert } from '../../../units/unit.ts';
import { parseUnit } from '../../../units/parse.ts';
import type { ChannelResult } from '../../model/report.ts';
import type { ResponseSource } from '../../model/runUp.ts';
import type { SpeedSeries } from '../../read/runup/readRunUps.ts';

/** The sensitivity of a chain at a speed in r/min, in the channel's sensitivity unit; `NaN` where it is not known there. */
export interface Response {
  readonly from: ResponseSource;
  readonly at: (speed: number) => number;
}

/** Why the sensitivity against speed is not known. */
export type NoResponse = 'no sensitivity' | 'no measuring frequency' | 'unit';

/**
 * The sensitivity of a channel against speed: straight between the points of its record, by the corner and damping of its
 * sensor, or one for all. The component at the speed of the shaft, not an overall value. Source: method, section 18.
 */
export function responseOf(
  { sensitivity }: Pick<ChannelResult, 'sensitivity'>,
  series: SpeedSeries | undefined,
): Response | NoResponse {
  const { measured, unit } = sensitivity;
  if (series?.sensor) {
    const { corner, damping, measuredAt } = series.sensor;
    if (measured === null) return 'no sensitivity';
    if (measuredAt === null) return 'no measuring frequency';
    const whereMeasured = highPass(measuredAt, corner, damping);
    return {
      from: 'corner and damping of the sensor',
      at: (speed) => sensitivityByResponse(measured, highPass(speed, corner, damping), whereMeasured),
    };
  }
  if (series) {
    const to = unit === null ? undefined : parseUnit(unit);
    const factor = series.unit && to ? convert(1, series.unit, to) : NaN;
    if (Number.isNaN(factor)) return 'unit';
    const record = {
      frequencies: series.points.map(({ speed }) => speed),
      sensitivities: series.points.map(({ value }) => value * factor),
    };
    return { from: 'record against speed', at: (speed) => sensitivityAt(record, speed) };
  }
  return measured === null ? 'no sensitivity' : { from: 'one sensitivity', at: () => measured };
}
