import { compensated, realAtDanger } from '../../method/runout.ts';
import type { Channel } from '../model/channel.ts';
import type { RunoutResult, RunoutThreshold } from '../model/runout.ts';
import type { ThresholdResult } from '../model/threshold.ts';
import { divisorOf } from './lines/spreads.ts';

/**
 * What the runout of a channel means: its component now without it, and how far the shaft really moves where each threshold
 * acts on the uncompensated value; `null` without a slow-roll vector. As the chain stands now.
 */
export function runoutOf(channel: Channel, thresholds: readonly ThresholdResult[]): RunoutResult | null {
  const { vectors, measured } = channel;
  if (!vectors) return null;
  const { runout, runoutPhase, now } = vectors;
  const divisor = divisorOf(channel);
  const then = vectors.measuredThen ?? measured;
  const real = (runout * divisor) / then;
  const component =
    now === null || runoutPhase === null
      ? null
      : compensated(now, { amplitude: runout, phase: runoutPhase }, divisor, measured, then);
  const angle = component === null || component.amplitude === 0 ? null : (runoutPhase ?? 0) - component.phase;
  return {
    shown: runout,
    phase: runoutPhase,
    measuredThen: then,
    real,
    now,
    compensated: component,
    thresholds: thresholds.flatMap((threshold) => atThreshold(threshold, real, angle)),
  };
}

/** What the shaft really does at a threshold; nothing where it is not known where that acts. */
function atThreshold(
  { name, multiplier, effective }: ThresholdResult,
  runout: number,
  angle: number | null,
): RunoutThreshold[] {
  if (effective === null) return [];
  const { real, least, most } = realAtDanger(effective, runout, angle ?? 0);
  const known = Number.isFinite(most);
  return [
    {
      name,
      multiplier,
      real: known && angle !== null ? real : null,
      least: known ? least : null,
      most: known ? most : null,
    },
  ];
}
