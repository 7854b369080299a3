import { factOfThreshold } from '../../model/findings.ts';
import type { Rule } from './rule.ts';
import { columnOfThreshold, setpointOf } from './thresholdCell.ts';
import { trips } from '../../model/threshold.ts';

/** Danger that acts, or with its uncertainty may act, beyond the greatest real displacement that the machine allows. */
export const beyondLimit: Rule = ({ channel, thresholds }, say) => {
  const { limit } = channel;
  if (limit === null) return;
  const at = { table: 'channels', column: 'limit' } as const;
  for (const threshold of thresholds) {
    const { beyondLimit: beyond, lines, probabilityBeyondLimit: probability } = threshold;
    if (beyond === null || beyond === 'no') continue;
    const level = setpointOf(threshold, channel);
    const sign = Math.sign(threshold.setpoint ?? 1);
    if (beyond === 'yes') {
      const latest = Math.max(...lines.map(({ effective }) => sign * (effective ?? -Infinity)));
      const values = { ...level, effective: sign * latest, limit, probability };
      say({ ...factOfThreshold('beyond-limit', 'critical', threshold, values), ...at });
    } else {
      const values = { ...level, limit, high: sign < 0 ? threshold.low : threshold.high };
      say({ ...factOfThreshold('may-be-beyond-limit', 'critical', threshold, values), ...at });
    }
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
