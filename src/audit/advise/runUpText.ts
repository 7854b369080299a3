import type { RunUpChannel, RunUpThreshold } from '../model/runUp.ts';
import { trips } from '../model/threshold.ts';
import { level } from '../model/wording.ts';

/** A speed for people: `2,063 r/min`. */
export function speedText(speed: number): string {
  return `${Math.round(speed).toLocaleString('en-US')} r/min`;
}

/** A threshold and its multiplier as a run-up is told by it: `danger`, `danger × 3 below 2,800 r/min`. */
export function runUpName({ name, multiplier, multiplierSpeed }: RunUpThreshold): string {
  if (multiplier === 1) return name;
  return `${name} × ${multiplier}${multiplierSpeed === null ? '' : ` below ${speedText(multiplierSpeed)}`}`;
}

/** What a run-up says of one threshold. */
export function runUpText(
  { unit, peak, peakSpeed, points }: RunUpChannel,
  { outcome, acts, should, realAtTrip }: RunUpThreshold,
): string {
  const say = (value: number | null): string =>
    `${level(value ?? NaN, null)}${unit === '' ? '' : ` ${unit}`}`;
  const at = (speed: number | null): string => speedText(speed ?? NaN);
  switch (outcome) {
    case 'no action': {
      const shown = points.find(({ speed }) => speed === peakSpeed)?.shown ?? NaN;
      return `would not have acted, though really ${say(peak)} at ${at(peakSpeed)} (shown as ${say(shown)}); it was due at ${at(should)}`;
    }
    case 'late':
      return `acts at ${at(acts)} instead of ${at(should)}, by then really ${say(realAtTrip)}`;
    case 'early':
      return `acts early, at ${at(acts)} instead of ${at(should)}`;
    case 'false':
      return `acts at ${at(acts)}, and should not`;
    case 'as set':
      return `acts as set, at ${at(acts)}`;
    case 'not reached':
      return `not reached, and should not have been: really ${say(peak)} at most, at ${at(peakSpeed)}`;
  }
}

/** What a run-up says and what to do. */
export function ofRunUp(
  channel: RunUpChannel,
  threshold: RunUpThreshold,
): { readonly headline: string; readonly doNext: string } {
  return {
    headline: `${channel.tag} ${runUpName(threshold)} on the run-up: ${runUpText(channel, threshold)}.`,
    doNext:
      threshold.outcome === 'no action' && trips(threshold.name)
        ? 'Before the next start: correct the chain, or let the machinery engineer responsible decide.'
        : 'Correct the chain before the next start.',
  };
}
