import { convert } from '../../../units/unit.ts';
import { parseUnit } from '../../../units/parse.ts';
import type { Channel } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import { factOf, factOfThreshold } from '../../model/findings.ts';
import { runoutOf } from '../runoutOf.ts';
import type { Rule } from './rule.ts';

/** Alert that does not come before danger. */
export const alertNotBelowDanger: Rule = ({ channel }, addFinding) => {
  const pairs = [
    ['alert', channel.alert, channel.danger],
    ['counterAlert', channel.counterAlert, channel.counterDanger],
  ] as const;
  for (const [column, alert, danger] of pairs) {
    if (alert === null || danger === null || Math.abs(alert) < Math.abs(danger)) continue;
    const unit = channel.unit.text;
    addFinding({
      ...factOf('alert-not-below-danger', 'warning', { alert, danger, unit }),
      table: 'settings',
      column,
    });
  }
};

/** The policy's rated sensitivity for a channel's kind, in the channel's unit; `null` where there is none that fits. */
export function ratedSensitivity(channel: Channel, policy: Policy): number | null {
  const rated = policy.ratedSensitivity[channel.kind];
  const unit = rated && parseUnit(rated.unit);
  if (!rated || unit?.dimension !== channel.sensitivityUnit.dimension) return null;
  return convert(rated.value, unit, channel.sensitivityUnit);
}

/** A configured sensitivity that is not near what the sensor is rated at. */
export const configuredFarFromRated: Rule = ({ channel, policy }, addFinding) => {
  const rated = ratedSensitivity(channel, policy);
  if (rated === null || Math.abs(channel.configured / rated - 1) <= policy.ratedTolerance) return;
  const { configured, kind, sensitivityUnit } = channel;
  const unit = sensitivityUnit.text;
  const off = configured / rated - 1;
  addFinding({
    ...factOf('configured-far-from-rated', 'warning', { configured, rated, off, unit, kind }),
    table: 'settings',
    column: 'configured',
  });
};

/** A monitor that shows more or less than what is injected. */
export const monitorGainOff: Rule = ({ channel: { gain }, policy: { tolerance } }, addFinding) => {
  const off = gain - 1;
  if (Math.abs(off) <= tolerance * (1 + 1e-12)) return;
  addFinding({
    ...factOf('monitor-gain-off', 'warning', { gain, off, tolerance }),
    table: 'settings',
    column: 'gain',
  });
};

/** Part of a danger above which a runout is said; our choice, no source. */
const LARGE_RUNOUT = 0.25;

/** A runout that is a large part of a danger: what the danger on uncompensated values then really means. */
export const runoutLarge: Rule = ({ channel, thresholds }, addFinding) => {
  const runout = runoutOf(channel, thresholds);
  if (!runout) return;
  for (const threshold of thresholds) {
    const { name, multiplier, setpoint, effective } = threshold;
    if (name !== 'danger' || multiplier !== 1 || setpoint === null || effective === null) continue;
    const part = runout.real / setpoint;
    const at = runout.thresholds.find((one) => one.name === name && one.multiplier === multiplier);
    if (part <= LARGE_RUNOUT * (1 + 1e-12) || !at) continue;
    const { real, least, most } = at;
    const values = {
      runout: runout.real,
      setpoint,
      part,
      effective,
      real,
      least,
      most,
      unit: channel.unit.text,
    };
    addFinding({
      ...factOfThreshold('runout-large', 'note', threshold, values),
      table: 'channels',
      column: 'runoutAmplitude',
    });
  }
};

/** Alarm delays beyond the policy's. */
export const longDelay: Rule = ({ channel, policy, thresholds }, addFinding) => {
  const delays = [
    ['alert', channel.alertDelay, 'alertDelay'],
    ['danger', channel.dangerDelay, 'dangerDelay'],
  ] as const;
  for (const [name, delay, column] of delays) {
    if (delay === null || delay <= policy.delays[name]) continue;
    const level = thresholds.find((threshold) => threshold.name === name)?.levelAtTrip ?? null;
    const values = { delay, allowed: policy.delays[name], level, unit: channel.unit.text };
    addFinding({
      ...factOfThreshold('delay-long', 'warning', { name, multiplier: 1 }, values),
      table: 'settings',
      column,
    });
  }
};

/** A channel in bypass protects nothing. */
export const inBypass: Rule = ({ channel }, addFinding) => {
  if (!channel.bypass) return;
  addFinding({
    ...factOf('channel-in-bypass', 'warning', {}),
    table: 'settings',
    column: 'bypass',
  });
};

/** A chain so sensitive that its linear volts cover less displacement than it should. */
export const shortLinearRange: Rule = ({ channel, policy }, addFinding) => {
  const unit = parseUnit(policy.minimumLinearRange.unit);
  if (!unit || channel.unit.dimension !== 'displacement' || channel.kind === 'loop') return;
  const least = convert(policy.minimumLinearRange.value, unit, channel.unit);
  const span = policy.linearVolts.near - policy.linearVolts.far;
  const covered = (span * channel.unitsPerVolt) / channel.measured;
  if (covered >= least * (1 - policy.tolerance)) return;
  addFinding({
    ...factOf('linear-range-short', 'note', { span, covered, least, unit: channel.unit.text }),
    table: 'channels',
    column: 'measured',
  });
};
