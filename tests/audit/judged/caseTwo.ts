import type { ChannelFacts, PolicyFacts, Verdict } from '../oracle/facts.ts';
import type { GroupTruth } from '../oracle/groups.ts';
import type { LineTruth, ThresholdName, ThresholdTruth } from '../oracle/judge.ts';
import type { NeedsAction } from '../oracle/needsAction.ts';
import { plainChannel } from '../oracle/plainChannel.ts';
import type { Truth, Unread } from '../oracle/truth.ts';
import type { Page, PlainCell } from '../stations/write.ts';

export type ExpectedThreshold = Partial<Omit<ThresholdTruth, 'lines'>> & {
  /** By line of evidence; the lines must be just these. */
  readonly lines?: Readonly<Record<string, Partial<LineTruth>>>;
};

interface ExpectedNow {
  readonly verdict: Verdict;
  readonly state?: 'as found' | 'as left';
  readonly inBypass?: boolean;
  /** Verdict of what was found; `null`: it was not measured again. */
  readonly asFound?: Verdict | null;
  /** By name, and ` ×3` for the entry with that multiplier; others are not looked at. */
  readonly thresholds?: Readonly<Record<string, ExpectedThreshold>>;
}

/** A small workbook and what a report of schema 2 has to say of it, worked out by hand. */
export interface CaseTwo {
  /** The arithmetic behind what is expected. */
  readonly because: string;
  readonly sheets: readonly Page[];
  readonly policy?: Partial<PolicyFacts>;
  /** The same for the oracle, which reads no sheets. */
  readonly facts: readonly ChannelFacts[];
  readonly notRead?: readonly Unread[];
  /** Every channel, by tag. */
  readonly channels: Readonly<Record<string, ExpectedNow>>;
  /** Groups that must be there; none where left out. */
  readonly groups?: readonly Partial<GroupTruth>[];
  /** All that is critical, each subject once: `machine / tag`, `machine / group name / danger ×1`, `not read`. */
  readonly critical: readonly string[];
  /** Entries that must be among those that need action, with their numbers. */
  readonly attention?: readonly ExpectedAttention[];
  readonly summary?: Partial<Truth['summary']>;
}

interface ExpectedAttention extends Partial<Pick<NeedsAction, 'severity' | 'tag' | 'multiplier'>> {
  readonly threshold?: ThresholdName;
  readonly set?: number;
  readonly real?: number;
  readonly panel?: number;
  readonly limit?: number;
}

type Rows = readonly (readonly PlainCell[])[];

/** A channel list and its settings, a sheet each. */
export function pair(list: Rows, settings: Rows): Page[] {
  return [
    { name: 'Channels', rows: list },
    { name: 'Monitor', rows: settings },
  ];
}

export function facts(...some: readonly Partial<ChannelFacts>[]): ChannelFacts[] {
  return some.map((one) => ({ ...plainChannel, ...one }));
}
