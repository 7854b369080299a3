import type { ChannelFacts, Evidence, PolicyFacts } from './facts.ts';
import { divisorOf, type Zero } from './lines.ts';

/** The shift of an axial channel's zero; `null`: where it acts is not known, for a zero or the direction is missing. */
export function zeroOf(c: ChannelFacts, e: Evidence): Zero | null {
  if (c.kind !== 'axial') return { moved: 0, side: 1 };
  if (c.zeroConfigured === null || e.zero === null) return null;
  const off = (c.zeroConfigured - e.zero) * 1000;
  if (c.direction === null) return off === 0 ? { moved: 0, side: 1 } : null;
  const side = c.direction === 'away' ? -1 : 1;
  return { moved: side * off, side };
}

/**
 * Whether a position reaches the voltage at which the setpoint acts, V0m + s·T·Km = V0c + s·S·Kc: inside the linear span
 * and the fault limits. With the direction not given both ways are looked at, and the worse counts.
 */
export function outOfVolts(c: ChannelFacts, policy: PolicyFacts, meant: number, hair: number): boolean {
  if (c.kind !== 'axial' || c.zeroConfigured === null || c.configured === null) return false;
  const sides = c.direction === null ? [1, -1] : [c.direction === 'away' ? -1 : 1];
  const swing = (meant * divisorOf(c)) / 1000;
  const highest = Math.min(policy.near, c.faultHigh ?? policy.near) + 20 * hair;
  const lowest = Math.max(policy.far, c.faultLow ?? policy.far) - 20 * hair;
  return sides.some((side) => {
    const volts = (c.zeroConfigured ?? NaN) + side * swing;
    return volts > highest || volts < lowest;
  });
}
