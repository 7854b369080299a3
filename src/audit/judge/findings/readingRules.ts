import { leavesFaultLimits, swing } from '../../../method/reach/faultLimits.ts';
import { pointsTo } from '../../../method/readings/pointsTo.ts';
import { convertDetection } from '../../../units/detection.ts';
import { amount, percent } from '../../model/wording.ts';
import type { Rule } from './rule.ts';
import { ratedSensitivity } from './settingsRules.ts';
import { ruleName, subject } from './thresholdCell.ts';

/** A swing at the setpoint that crosses a circuit-fault limit may mark the channel faulty before it trips. */
export const leavesFaults: Rule = ({ channel, thresholds }, say) => {
  const { gapVoltage, faultLimits, kind, detection, unitsPerVolt } = channel;
  if (kind !== 'radial' || gapVoltage === null || faultLimits === null || detection === null) return;
  for (const threshold of thresholds) {
    if (threshold.setpoint === null) continue;
    const peakToPeak = convertDetection(threshold.setpoint, detection, 'p-p');
    const perUnit = (1000 * channel.configured) / unitsPerVolt;
    const { nearest, farthest } = swing(gapVoltage, peakToPeak, perUnit, threshold.multiplier);
    if (
      !leavesFaultLimits(
        gapVoltage,
        peakToPeak,
        perUnit,
        threshold.multiplier,
        faultLimits.near,
        faultLimits.far,
      )
    )
      continue;
    say({
      rule: ruleName(threshold.name, 'swing-leaves-fault-limits'),
      severity: 'warning',
      message:
        `The voltage at ${subject(threshold, channel)} swings from ${amount(farthest, 'V')} to ${amount(nearest, 'V')}, outside the fault limits of ${amount(faultLimits.far, 'V')} to ${amount(faultLimits.near, 'V')}: ` +
        `the channel may be marked faulty before it trips, unless the fault is judged on the filtered gap voltage.`,
      table: 'settings',
      column: 'faultLow',
    });
  }
};

/** A compensated setpoint below the present reading would trip on entry. */
export const readingBeyondInterim: Rule = ({ channel, thresholds }, say) => {
  const { reading, unit } = channel;
  if (reading === null) return;
  for (const threshold of thresholds) {
    const { interimSetpoint, multiplier, setpoint, shift } = threshold;
    if (interimSetpoint === null || setpoint === null || multiplier !== 1 || shift === null || shift <= 0)
      continue;
    const sign = Math.sign(setpoint);
    if (sign * reading < sign * interimSetpoint) continue;
    say({
      rule: ruleName(threshold.name, 'interim-below-reading'),
      severity: 'warning',
      message: `The present reading of ${amount(reading, unit.text)} is already at or beyond ${amount(interimSetpoint, unit.text)}, the interim setpoint that would restore ${subject(threshold, channel)}: it would act on entry.`,
      table: 'channels',
      column: 'reading',
    });
  }
};

/** A step of the monitor's that is too coarse for any compensated setpoint. */
export const noInterim: Rule = ({ channel, thresholds }, say) => {
  for (const threshold of thresholds) {
    const { interimSetpoint, multiplier, indicatedAtSetpoint, verdict } = threshold;
    if (
      interimSetpoint !== null ||
      multiplier !== 1 ||
      verdict === 'incomplete' ||
      indicatedAtSetpoint === null
    )
      continue;
    say({
      rule: ruleName(threshold.name, 'has-no-interim-setpoint'),
      severity: 'note',
      message: `No setpoint restores ${subject(threshold, channel)}: the monitor shows ${amount(indicatedAtSetpoint, channel.unit.text)} there, and no setting of its own side and step lies before that.`,
      table: 'settings',
      column: 'resolution',
    });
  }
};

const hints = {
  'too much cable':
    'both are low in magnitude, consistent with too much cable in the chain. Check the extension cable length next',
  'too little cable':
    'both are high in magnitude, consistent with too little cable in the chain. Check the extension cable length next',
  'probe position':
    'the sensitivity is right and the gap is off, which points to the probe position. Check the mechanical gap next',
  'hidden by the gap voltage':
    'the gap voltage looks right while the sensitivity is off: the gap voltage hides the fault. The probe may have been moved to make it look right. Check cable and target first; a right gap voltage does not clear the channel',
  'no single cause': 'no single usual cause fits. Check the target material and every part of the chain',
} as const;

/** What the pair of sensitivity and gap voltage points to, against a reference reading of the same channel. A hint only. */
export const readingsPointTo: Rule = ({ channel, policy }, say) => {
  const { kind, measured, gapVoltage, referenceGapVoltage, sensitivityUnit } = channel;
  if ((kind !== 'radial' && kind !== 'axial') || gapVoltage === null || referenceGapVoltage === null) return;
  const reference = channel.referenceSensitivity ?? ratedSensitivity(channel, policy) ?? channel.configured;
  const cause = pointsTo(
    measured,
    reference,
    gapVoltage,
    referenceGapVoltage,
    policy.tolerance,
    policy.gapVoltageTolerance,
  );
  if (cause === undefined || cause === 'nothing') return;
  const hidden = cause === 'hidden by the gap voltage';
  say({
    rule: hidden ? 'gap-voltage-hides-fault' : 'readings-point-to-a-cause',
    severity: hidden ? 'warning' : 'note',
    message:
      `Sensitivity ${amount(measured, sensitivityUnit.text)} against ${amount(reference, sensitivityUnit.text)} (${percent(measured / reference - 1)}) and gap voltage ` +
      `${amount(gapVoltage, 'V')} against ${amount(referenceGapVoltage, 'V')}: ${hints[cause]}.`,
    table: 'channels',
    column: 'gapVoltage',
  });
};
