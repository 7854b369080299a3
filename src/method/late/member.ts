import { positive } from '../range.ts';

/**
 * A member of a group with what is known of where it acts. Km = measured·(1 + shared·z_b + own·z), both z standard
 * normal, z_b common to a batch: given the reading, the true sensitivity is uncertain.
 */
export interface LateMember {
  /**
   * Best value of its effective threshold, m·S·Kc/Km, in the unit of the limit, counted on the setpoint's own side: below
   * 0 where it acts at rest; `Infinity` where it cannot act, is incomplete or is out without a vote: late for certain.
   */
  readonly threshold: number;
  /** Relative standard uncertainty of Km that the batch shares, 0 or above. */
  readonly shared: number;
  /** Relative standard uncertainty of Km of this member alone, 0 or above. */
  readonly own: number;
  /** Standard uncertainty of the threshold's numerator over Km, in the unit of the threshold (a zero voltage); 0 if left out. */
  readonly offset?: number;
  /** Standard covariance of numerator and Km, over Km², in the unit of the threshold (the ends of a loop); 0 if left out. */
  readonly both?: number;
  /** What it was calibrated with or made from; `null`: a batch of its own. */
  readonly batch: string | null;
}

/** Whether a member's numbers can be used. */
export function usable({ threshold, shared, own, offset = 0, both = 0 }: LateMember): boolean {
  return (
    !Number.isNaN(threshold) && Number.isFinite(both) && isSpread(shared) && isSpread(own) && isSpread(offset)
  );
}

function isSpread(part: number): boolean {
  return part >= 0 && part < Infinity;
}

/** A member against one limit, in parts of the limit: late where 1 + shared·z + spread·z′ falls short of `reach`. */
export interface AgainstLimit {
  readonly reach: number;
  readonly shared: number;
  readonly spread: number;
  readonly batch: string | null;
}

/** A member held against a limit above 0, in the unit of its threshold. */
export function againstLimit(member: LateMember, limit: number): AgainstLimit {
  const { threshold, shared, own, offset = 0, both = 0, batch } = member;
  if (!positive(limit)) return { reach: NaN, shared, spread: own, batch };
  const square = own * own + (offset / limit) ** 2 - (2 * both) / limit;
  const spread = both === 0 ? Math.hypot(own, offset / limit) : Math.sqrt(Math.max(0, square));
  return { reach: threshold / limit, shared, spread, batch };
}
