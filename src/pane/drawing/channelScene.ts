import type { ChannelResult } from '../../audit/model/report.ts';
import { sceneOf, type Lane, type Scene } from './scene.ts';
import { thresholdName, trips, type ThresholdResult } from '../../audit/model/threshold.ts';

/** The drawing of a channel as it stands now: its thresholds in the report's order, limit, linear reach, present real reading. */
export function channelScene({ unit, thresholds, inputs }: ChannelResult): Scene | null {
  return sceneOf({
    unit: unit ?? '',
    step: inputs.resolution,
    lanes: thresholds.filter(({ setpoint }) => setpoint !== null).map(laneOf),
    limit: inputs.limit,
    reach: inputs.linearReach,
    reading: inputs.realReading,
  });
}

function laneOf(threshold: ThresholdResult): Lane {
  const { name, setpoint, multiplier, effective, low, high, verdict } = threshold;
  const acting = verdict !== 'unreachable' && verdict !== 'incomplete';
  return {
    name: thresholdName(threshold),
    acts: trips(name) ? 'trips' : 'alarms',
    intended: setpoint === null ? null : multiplier * setpoint,
    effective: acting ? effective : null,
    low: acting ? low : null,
    high: acting ? high : null,
    verdict,
  };
}
