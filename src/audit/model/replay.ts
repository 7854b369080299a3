import type { Severity } from './findings.ts';
import { trips, type ThresholdName, type ThresholdVerdict } from './threshold.ts';

/** A moment of a record: seconds from its first reading, and ISO 8601 with the offset of the clock it is told by. */
export interface Moment {
  readonly seconds: number;
  readonly time: string;
}

/** When a threshold acted first; `null` where it did not within the record. */
interface ActedAt {
  /** With what is unknown taken as not beyond. */
  readonly proven: Moment | null;
  /** With what is unknown taken as beyond. */
  readonly earliest: Moment | null;
}

/**
 * What a record says of a threshold, worst first: `did not act`, though it should have; `false`: it acted and should not
 * have; `not known`: unknown readings, or the end of the record, decide.
 */
export const replayOutcomes = [
  'did not act',
  'late',
  'not known',
  'early',
  'false',
  'as set',
  'not reached',
] as const;
export type ReplayOutcome = (typeof replayOutcomes)[number];

export interface ReplayedThreshold {
  readonly name: ThresholdName;
  /** In the channel's unit; the plain setpoint, start-up multiplication taken as off. */
  readonly setpoint: number;
  /** What the monitor shows when the shaft really moves as far as the setpoint. */
  readonly shouldActAt: number;
  /** s. */
  readonly delay: number;
  readonly acted: ActedAt;
  readonly should: ActedAt;
  /** Seconds from when it should have acted to when it did, both as proven; `null` where one of them is not. */
  readonly late: number | null;
  /** The real level was at the setpoint or beyond at the first reading already, so that it should have acted then or before. */
  readonly fromStart: boolean;
  readonly outcome: ReplayOutcome;
}

/**
 * How grave it is what a record says of a threshold: of a danger that did not act or acted late, critical, of an alert a
 * warning, as is what can't be told though it should have acted; late by no more than the tolerance allows, worth a note.
 * `null`: nothing to say.
 */
export function replaySeverity(
  { name, outcome, should }: Pick<ReplayedThreshold, 'name' | 'outcome' | 'should'>,
  verdict: ThresholdVerdict | undefined,
): Severity | null {
  const grave = trips(name) ? 'critical' : 'warning';
  if (outcome === 'did not act') return grave;
  if (outcome === 'late') return verdict === 'within' ? 'note' : grave;
  if (outcome === 'not known') return should.proven === null ? 'note' : 'warning';
  return outcome === 'early' || outcome === 'false' ? 'note' : null;
}

/** The threshold of a channel that a drawing is about: the first of its list that did anything, else the first. */
export function drawnThreshold({
  thresholds,
}: Pick<ReplayedChannel, 'thresholds'>): ReplayedThreshold | undefined {
  return thresholds.find(({ outcome }) => outcome !== 'not reached') ?? thresholds[0];
}

/** A reading as the monitor showed it and as it really was; `null` where it is unknown. */
interface TimelinePoint extends Moment {
  readonly shown: number | null;
  readonly real: number | null;
}

/** One channel of a record. */
export interface ReplayedChannel {
  readonly tag: string;
  readonly machine: string;
  readonly source: string;
  readonly unit: string;
  readonly configured: number;
  readonly measured: number;
  readonly sensitivityUnit: string;
  /** From when on another measured sensitivity held, and which held before; `null`: one throughout. */
  readonly corrected: { readonly from: string; readonly before: number } | null;
  readonly readings: number;
  readonly unknown: number;
  readonly first: string;
  readonly last: string;
  /** Usual time between readings, s; `null` with fewer than two. */
  readonly interval: number | null;
  /** s; readings farther apart leave what is between them unknown. */
  readonly maxGap: number | null;
  /** Readings come farther apart than the shortest delay: shorter exceedances are not seen. */
  readonly shortNotSeen: boolean;
  readonly thresholds: readonly ReplayedThreshold[];
  /** About what happened, or all of the record; thinned to its lowest and highest values where it is long. */
  readonly timeline: readonly TimelinePoint[];
}

/** A table of readings that was replayed. */
export interface ReplaySource {
  readonly name: string;
  readonly from: 'file' | 'workbook';
  readonly layout: 'long' | 'wide';
  /** What times that name no offset were read by; `null`: each names its own. */
  readonly zone: string | null;
  readonly rows: number;
  readonly rowsLeftOut: number;
  readonly notRead: readonly string[];
}

/** Recorded readings replayed: when alert and danger acted and when they should have. */
export interface ReplayResult {
  readonly between: 'line' | 'hold';
  readonly sources: readonly ReplaySource[];
  /** Worst first. */
  readonly channels: readonly ReplayedChannel[];
}
