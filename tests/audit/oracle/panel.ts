import { ownSign, type ChannelFacts, type PolicyFacts } from './facts.ts';
import type { Line } from './lines.ts';

/** A value on a step to within floating point counts as on it. */
const hair = 1e-9;

/** Towards the early side: down to the step of the monitor, or to two significant digits; `null`: nothing is left. */
export function early(amount: number, resolution: number | null): number | null {
  if (!(amount > 0)) return null;
  const step = resolution ?? 10 ** (Math.floor(Math.log10(amount * (1 + hair))) - 1);
  const steps = Math.floor((amount / step) * (1 + hair));
  return steps === 0 ? null : Number((steps * step).toPrecision(12));
}

/**
 * The reading that stands for a real displacement: what every line shows there, its uncertainty counted under the guarded
 * rule, the least of them and never above what the monitor can show, on the early side.
 */
export function panelOf(
  c: ChannelFacts,
  { rule }: PolicyFacts,
  lines: readonly Line[],
  meant: number,
): number | null {
  const own = ownSign(meant);
  const shown = lines.flatMap((line) => {
    return line.shown(meant, rule === 'guarded') ?? [];
  });
  if (shown.length === 0) return null;
  const least = early(Math.min(...shown.map((one) => own * one), c.fullScale ?? Infinity), c.resolution);
  return least === null ? null : own * least;
}

/** Never above the present setpoint or full scale, never where a line of evidence would still have it act late. */
export function interimOf(
  { fullScale }: ChannelFacts,
  setpoint: number,
  panel: number | null,
  wouldBeLate: (to: number) => boolean,
): number | null {
  if (panel === null || Math.abs(panel) > Math.min(Math.abs(setpoint), fullScale ?? Infinity)) return null;
  return wouldBeLate(panel) ? null : panel;
}
