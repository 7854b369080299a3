import { convert } from '../../../units/convert.ts';
import { parseUnit } from '../../../units/parse.ts';
import type { Channel } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import { amount, percent } from '../../model/wording.ts';
import type { Rule } from './rule.ts';

/** Alert that does not come before danger. */
export const alertNotBelowDanger: Rule = ({ channel }, say) => {
  const pairs = [
    ['alert', channel.alert, channel.danger],
    ['counterAlert', channel.counterAlert, channel.counterDanger],
  ] as const;
  for (const [column, alert, danger] of pairs) {
    if (alert === null || danger === null || Math.abs(alert) < Math.abs(danger)) continue;
    const unit = channel.unit.text;
    say({
      rule: 'alert-not-below-danger',
      severity: 'warning',
      message: `The alert of ${amount(alert, unit)} is not below the danger of ${amount(danger, unit)}: it gives no warning before the trip.`,
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
export const configuredFarFromRated: Rule = ({ channel, policy }, say) => {
  const rated = ratedSensitivity(channel, policy);
  if (rated === null || Math.abs(channel.configured / rated - 1) <= policy.ratedTolerance) return;
  const unit = channel.sensitivityUnit.text;
  say({
    rule: 'configured-far-from-rated',
    severity: 'warning',
    message: `The configured sensitivity of ${amount(channel.configured, unit)} is ${percent(channel.configured / rated - 1)} off the rated ${amount(rated, unit)} of a ${channel.kind} channel.`,
    table: 'settings',
    column: 'configured',
  });
};

/** Alarm delays beyond the policy's. */
export const longDelay: Rule = ({ channel, policy, thresholds }, say) => {
  const delays = [
    ['alert', channel.alertDelay, 'alertDelay'],
    ['danger', channel.dangerDelay, 'dangerDelay'],
  ] as const;
  for (const [name, delay, column] of delays) {
    if (delay === null || delay <= policy.delays[name]) continue;
    const level = thresholds.find((threshold) => threshold.name === name)?.levelAtTrip ?? null;
    const grown =
      level === null ? '' : ` At the present growth the level is then ${amount(level, channel.unit.text)}.`;
    say({
      rule: `${name}-delay-long`,
      severity: 'warning',
      message: `The ${name} delay of ${amount(delay, 's')} is longer than the ${amount(policy.delays[name], 's')} of the policy.${grown}`,
      table: 'settings',
      column,
    });
  }
};

/** A channel in bypass protects nothing. */
export const inBypass: Rule = ({ channel }, say) => {
  if (!channel.bypass) return;
  say({
    rule: 'channel-in-bypass',
    severity: 'warning',
    message: 'The channel is in bypass: it trips nothing until the bypass is taken out.',
    table: 'settings',
    column: 'bypass',
  });
};

/** A chain so sensitive that its linear volts cover less displacement than it should. */
export const shortLinearRange: Rule = ({ channel, policy }, say) => {
  const unit = parseUnit(policy.minimumLinearRange.unit);
  if (!unit || channel.unit.dimension !== 'displacement' || channel.kind === 'loop') return;
  const least = convert(policy.minimumLinearRange.value, unit, channel.unit);
  const span = policy.linearVolts.near - policy.linearVolts.far;
  const covered = (span * channel.unitsPerVolt) / channel.measured;
  if (covered >= least * (1 - policy.tolerance)) return;
  const text = channel.unit.text;
  say({
    rule: 'linear-range-short',
    severity: 'note',
    message: `At the measured sensitivity the linear ${amount(span, 'V')} cover ${amount(covered, text)}, less than the ${amount(least, text)} of the policy.`,
    table: 'channels',
    column: 'measured',
  });
};
