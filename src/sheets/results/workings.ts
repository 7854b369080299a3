import { type Direction, axialVoltageAt } from '../../method/axial/position.ts';
import { signOf } from '../../method/axial/position.ts';
import type { FaultLimits } from '../../audit/model/channel.ts';
import type { UnreachableReason } from '../../audit/model/threshold.ts';
import { finite } from '../cells.ts';
import { actingOf, divisorOf } from './acting.ts';
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
  return line.channel.kind === 'axial' || line.channel.inputs.loop !== null
    ? (actingOf(line)?.shift ?? null)
    : null;
}

/** Gap voltage at which the monitor acts on a position setpoint, V: where no direction is given, that towards the probe. */
export function voltsAtSetpoint(line: Line): number | null {
  return voltsAt(line, (line.channel.inputs.direction as Direction | null) ?? 'toward');
}

/** The same the other way, where no direction is given and both are looked at. */
export function voltsOtherWay(line: Line): number | null {
  return line.channel.inputs.direction === null ? voltsAt(line, 'away') : null;
}

function voltsAt({ channel, threshold }: Line, direction: Direction): number | null {
  const { zeroConfigured, unitsPerVolt } = channel.inputs;
  const configured = divisorOf(channel);
  if (zeroConfigured === null || unitsPerVolt === null || configured === null) return null;
  return finite(
    axialVoltageAt(
      threshold.multiplier * (threshold.setpoint ?? NaN),
      (1000 * configured) / unitsPerVolt,
      zeroConfigured,
      direction,
    ),
  );
}

/** Real levels, as amounts, between which the tolerance lets a threshold act. */
export function acceptedFrom(line: Line): number | null {
  return intended(line, 1 + line.policy.tolerance);
}

export function acceptedTo(line: Line): number | null {
  return intended(line, 1 - line.policy.tolerance);
}

/** Real levels, as amounts, between which the threshold is taken to act by the policy's decision rule and the listed sensitivity. */
export function judgedFrom(line: Line): number | null {
  return judged(line, 1);
}

export function judgedTo(line: Line): number | null {
  return judged(line, -1);
}

function intended({ worked, threshold }: Line, divisor: number): number | null {
  return worked ? Math.abs(threshold.multiplier * (threshold.setpoint ?? NaN)) / divisor : null;
}

function judged({ listed, threshold, policy }: Line, side: 1 | -1): number | null {
  if (!listed) return null;
  const { low, high } = listed;
  if (policy.rule !== 'guarded' || low === null || high === null) return Math.abs(listed.effective ?? NaN);
  const away = [low, high].map((end) => Math.sign(threshold.setpoint ?? 1) * end);
  return side === 1 ? Math.min(...away) : Math.max(...away);
}

/** Why the threshold can't act by the listed sensitivity, in the order in which the audit names the reasons. */
export function listedReasons(line: Line): readonly UnreachableReason[] {
  const { listed, threshold, channel, policy } = line;
  const { fullScale, linearReach, faultLimits } = channel.inputs;
  const [setpoint, effective] = [threshold.setpoint, listed?.effective ?? null];
  if (setpoint === null || effective === null) return [];
  const volts = [voltsAtSetpoint(line), voltsOtherWay(line)].filter((volt) => volt !== null);
  const outside = ({ near, far }: FaultLimits) =>
    volts.some((volt) => volt > (near ?? Infinity) + 1e-9 || volt < (far ?? -Infinity) - 1e-9);
  const found: Readonly<Record<UnreachableReason, boolean>> = {
    'above full scale': fullScale !== null && exceeds(Math.abs(threshold.multiplier * setpoint), fullScale),
    'on the other side of zero': effective * setpoint <= 0,
    'out of the linear reach':
      (linearReach !== null && exceeds(effective, linearReach)) || outside(policy.linearVolts),
    'outside the fault limits': faultLimits !== null && outside(faultLimits),
  };
  return (Object.keys(found) as UnreachableReason[]).filter((reason) => found[reason]);
}

/** Above a limit by more than the rounding of the arithmetic that led to it. */
function exceeds(level: number, limit: number): boolean {
  return level > limit + 1e-12 * Math.abs(limit);
}

/** The panel reading by the listed sensitivity as an amount, and no more than the monitor can show; not rounded. */
export function panelLeast({ listed, channel }: Line): number | null {
  if (!listed || listed.panel === null) return null;
  return Math.min(Math.abs(listed.panel), channel.inputs.fullScale ?? Infinity);
}

/** The step to which that is rounded: the monitor's, or the one of two significant digits. */
export function panelStep(line: Line): number | null {
  const least = panelLeast(line);
  if (least === null) return null;
  return line.channel.inputs.resolution ?? 10 ** (Math.floor(Math.log10(least)) - 1);
}
