import { leavesFaultLimits, swing } from '../../../method/reach.ts';
import { lengthOff } from '../../../method/lengthOff.ts';
import { pointsTo } from '../../../method/pointsTo.ts';
import { convertDetection } from '../../../units/detection.ts';
import type { LengthHint } from '../../model/rules/settingsRules.ts';
import { exceeds } from '../lines/line.ts';
import { divisorOf } from '../lines/spreads.ts';
import { factOf, factOfThreshold } from '../../model/findings.ts';
import { type Rule, setpointOf } from './rule.ts';
import { ratedSensitivity } from './settingsRules.ts';

/** A swing at the setpoint that crosses a circuit-fault limit may mark the channel faulty before it trips. */
export const leavesFaults: Rule = ({ channel, thresholds }, addFinding) => {
  const { gapVoltage, faultLimits, kind, detection, unitsPerVolt } = channel;
  if (kind !== 'radial' || gapVoltage === null || faultLimits === null || detection === null) return;
  for (const threshold of thresholds) {
    if (threshold.setpoint === null) continue;
    const peakToPeak = convertDetection(threshold.setpoint, detection, 'p-p');
    const perUnit = (1000 * divisorOf(channel)) / unitsPerVolt;
    const { nearest, farthest } = swing(gapVoltage, peakToPeak, perUnit, threshold.multiplier);
    if (
      !leavesFaultLimits(
        gapVoltage,
        peakToPeak,
        perUnit,
        threshold.multiplier,
        faultLimits.near ?? Infinity,
        faultLimits.far ?? -Infinity,
      )
    )
      continue;
    const values = {
      ...setpointOf(threshold, channel),
      swing: { near: nearest, far: farthest },
      faultLimits,
    };
    addFinding({
      ...factOfThreshold('swing-leaves-fault-limits', 'warning', threshold, values),
      table: 'settings',
      column: 'faultLow',
    });
  }
};

/** A setpoint to enter in the meantime, which late thresholds alone have, below the present reading: it would trip on entry. */
export const readingBeyondInterim: Rule = ({ channel, thresholds }, addFinding) => {
  const { reading } = channel;
  if (reading === null) return;
  for (const threshold of thresholds) {
    const { interimSetpoint, setpoint } = threshold;
    if (interimSetpoint === null || setpoint === null) continue;
    const sign = Math.sign(setpoint);
    if (sign * reading < sign * interimSetpoint) continue;
    const values = { ...setpointOf(threshold, channel), reading, interimSetpoint };
    addFinding({
      ...factOfThreshold('interim-below-reading', 'warning', threshold, values),
      table: 'channels',
      column: 'reading',
    });
  }
};

/** A reading that no monitor of that full scale can show. */
export const readingAboveFullScale: Rule = ({ channel }, addFinding) => {
  const { reading, fullScale, unit } = channel;
  if (reading === null || fullScale === null || !exceeds(Math.abs(reading), fullScale)) return;
  const values = { reading, fullScale, unit: unit.text };
  addFinding({
    ...factOf('reading-above-full-scale', 'warning', values),
    table: 'channels',
    column: 'reading',
  });
};

/** A late threshold for which no setpoint can be offered in the meantime. */
export const noInterim: Rule = ({ channel, thresholds }, addFinding) => {
  for (const threshold of thresholds) {
    const { interimSetpoint, multiplier, indicatedAtSetpoint, verdict } = threshold;
    if (interimSetpoint !== null || multiplier !== 1 || verdict !== 'late') continue;
    const values = { ...setpointOf(threshold, channel), indicated: indicatedAtSetpoint };
    addFinding({
      ...factOfThreshold('has-no-interim-setpoint', 'note', threshold, values),
      table: 'settings',
      column: 'resolution',
    });
  }
};

/** How much too long or too short a chain of that nominal length seems; `null` where none is given. */
function lengthHint(nominal: number | null, off: LengthHint['off'] | undefined): LengthHint | null {
  return nominal === null || off === undefined ? null : { nominal, off };
}

/** What the pair of sensitivity and gap voltage points to, against a reference reading of the same channel. A hint only. */
export const readingsPointTo: Rule = ({ channel, policy }, addFinding) => {
  const { kind, measured, gapVoltage, referenceGapVoltage, sensitivityUnit, chainLength } = channel;
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
  const readings = {
    measured,
    reference,
    off: measured / reference - 1,
    unit: sensitivityUnit.text,
    gapVoltage,
    referenceGapVoltage,
    length: lengthHint(chainLength, lengthOff(measured, reference, gapVoltage, referenceGapVoltage)),
  };
  const fact =
    cause === 'hidden by the gap voltage'
      ? factOf('gap-voltage-hides-fault', 'warning', { ...readings, cause })
      : factOf('readings-point-to-a-cause', 'note', { ...readings, cause });
  addFinding({ ...fact, table: 'channels', column: 'gapVoltage' });
};
