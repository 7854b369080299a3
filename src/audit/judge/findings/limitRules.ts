import { amount, percent } from '../../model/wording.ts';
import type { Rule } from './rule.ts';
import { columnOfThreshold, ruleName, subject } from './thresholdCell.ts';
import { trips } from '../../model/threshold.ts';

/** Danger that acts beyond the greatest real displacement that is acceptable for the machine. */
export const beyondLimit: Rule = ({ channel, thresholds }, say) => {
  const { limit } = channel;
  if (limit === null) return;
  for (const threshold of thresholds) {
    const { name, effective, probabilityBeyondLimit: probability } = threshold;
    if (!trips(name) || threshold.multiplier !== 1 || effective === null || Math.abs(effective) <= limit)
      continue;
    const chance =
      probability === null
        ? ''
        : ` The probability that it acts beyond the limit is ${percent(probability)}.`;
    say({
      rule: ruleName(name, 'beyond-limit'),
      severity: 'critical',
      message: `${subject(threshold, channel)} acts at ${amount(effective, channel.unit.text)}, beyond the limit of ${amount(limit, channel.unit.text)}.${chance}`,
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
    say({
      rule: ruleName(name, 'in-worse-zone'),
      severity: trips(name) ? 'warning' : 'note',
      message: `${subject(threshold, channel)} was set in zone ${intendedZone} and acts in zone ${zone} at ${amount(channel.speed ?? NaN, 'r/min')}.`,
      table: 'settings',
      column: columnOfThreshold(name),
    });
  }
};
