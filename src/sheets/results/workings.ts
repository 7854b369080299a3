import type { Direction } from '../../method/axial/direction.ts';
import { signOf } from '../../method/axial/direction.ts';
import { axialVoltageAt } from '../../method/axial/voltageAt.ts';
import type { Line } from './line.ts';

/** Intermediate results that stand beside the audit's own so that a reader can follow it; `null` where they don't apply. */

/** +1 where moving towards the probe is positive, −1 where moving away is. */
export function directionSign({ channel }: Pick<Line, 'channel'>): number | null {
  const { direction } = channel.inputs;
  return direction === null ? null : signOf(direction as Direction);
}

/**
 * s·(V0c − V0m): by how much a moved zero shifts every threshold at Km = 1, in the channel's unit; 0 where either voltage is
 * not known, `null` for channels that have no zero.
 */
export function zeroMoved({ channel }: Pick<Line, 'channel'>): number | null {
  const { zeroConfigured, zeroMeasured, unitsPerVolt } = channel.inputs;
  const sign = directionSign({ channel });
  if (unitsPerVolt === null) return null;
  if (zeroConfigured === null || zeroMeasured === null || sign === null) return 0;
  return sign * (zeroConfigured - zeroMeasured) * unitsPerVolt;
}

/** s·(V0c − V0m)/Km: real displacement by which a moved zero shifts every threshold; 0 where either voltage is not known. */
export function zeroShift(line: Line): number | null {
  const { measured } = line.channel.sensitivity;
  const moved = zeroMoved(line);
  return measured === null || moved === null ? null : moved / measured;
}

/** Gap voltage at which the monitor acts on a position setpoint, V. */
export function voltsAtSetpoint({ channel, threshold }: Line): number | null {
  const { zeroConfigured, direction, unitsPerVolt } = channel.inputs;
  const { configured } = channel.sensitivity;
  if (zeroConfigured === null || direction === null || unitsPerVolt === null || configured === null)
    return null;
  return axialVoltageAt(
    threshold.multiplier * (threshold.setpoint ?? NaN),
    (1000 * configured) / unitsPerVolt,
    zeroConfigured,
    direction as Direction,
  );
}

/** Real levels, as amounts, between which the tolerance lets a threshold act. */
export function acceptedFrom(line: Line): number | null {
  return intended(line, 1 + line.policy.tolerance);
}

export function acceptedTo(line: Line): number | null {
  return intended(line, 1 - line.policy.tolerance);
}

/** Real levels, as amounts, between which the threshold is taken to act by the policy's decision rule. */
export function judgedFrom(line: Line): number | null {
  return judged(line, 1);
}

export function judgedTo(line: Line): number | null {
  return judged(line, -1);
}

function intended({ worked, threshold }: Line, divisor: number): number | null {
  return worked ? Math.abs(threshold.multiplier * (threshold.setpoint ?? NaN)) / divisor : null;
}

function judged({ worked, threshold, channel, policy }: Line, side: 1 | -1): number | null {
  const guard = policy.rule === 'guarded' ? (channel.sensitivity.uncertainty ?? 0) : 0;
  return worked ? Math.abs(threshold.effective ?? NaN) / (1 + side * guard) : null;
}
