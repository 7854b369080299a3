import { factOfThreshold } from '../../model/findings.ts';
import type { Rule } from './rule.ts';
import { columnOfThreshold, setpointOf } from './thresholdCell.ts';
import { trips } from '../../model/threshold.ts';

/** Danger that acts beyond the greatest real displacement that is acceptable for the machine. */
export const beyondLimit: Rule = ({ channel, thresholds }, say) => {
  const { limit } = channel;
  if (limit === null) return;
  for (const threshold of thresholds) {
    const { name, effective, probabilityBeyondLimit: probability } = threshold;
    if (!trips(name) || threshold.multiplier !== 1 || effective === null || Math.abs(effective) <= limit)
      continue;
    const values = { ...setpointOf(threshold, channel), effective, limit, probability };
    say({
      ...factOfThreshold('beyond-limit', 'critical', threshold, values),
      table: 'channels',
      column: 'limit',
    });
  }
};

/** A threshold that has moved into a worse zone of shaft vibration than it was set for (ISO 20816-3 zones, from memory). */
export const worseZone: Rule = ({ channel, thresholds }, say) => {
  for (const threshold of thresholds) {
    const { name, zone, intendedZone, multiplier } = threshold;
    if (multiplier !== 1 || zone === null || intendedZone === null || zone <= intendedZone) continue;
    const values = { ...setpointOf(threshold, channel), zone, intendedZone, speed: channel.speed ?? NaN };
    say({
      ...factOfThreshold('in-worse-zone', trips(name) ? 'warning' : 'note', threshold, values),
      table: 'settings',
      column: columnOfThreshold(name),
    });
  }
};
