import type { Place, PlacedFact } from '../../model/findings.ts';
import type { ThresholdName } from '../../model/threshold.ts';
import type { Policy } from '../../model/policy.ts';
import type { ChannelResult } from '../../model/report.ts';
import type { RecordBook } from '../../read/records/rawRecord.ts';
import type { AssumedUnit } from '../../read/rows/units.ts';
import type { Tables } from '../../read/tables/found.ts';
import type { DriftSources } from '../drift/channelReadings.ts';
import type { Member } from '../groups/members.ts';

/** What every channel of one audit is audited with. */
export interface Context {
  readonly tables: Tables;
  readonly policy: Policy;
  /** Calibration records and checks with a known vibration. */
  readonly records: RecordBook;
  /** Dated readings beside the channel list. */
  readonly readings: DriftSources;
  /** Day of the audit, counted from 1970-01-01. */
  readonly today: number;
  readonly assume: (assumed: AssumedUnit) => void;
}

/** A judged channel with all that was found of it. */
export interface JudgedChannel {
  readonly result: Omit<ChannelResult, 'findings'>;
  /** What follows from the verdicts of its thresholds, and of its voting group. */
  readonly ofVerdicts: PlacedFact[];
  /** What else was found. */
  readonly facts: PlacedFact[];
  /** Those of `facts` that keep it, or its thresholds, from being judged. */
  readonly invalid: readonly PlacedFact[];
  /** As a member of its voting group; `null` where its settings name none. */
  readonly member: Member | null;
  /** Where a setpoint of it stands; its tag where it has no settings. */
  readonly setpointPlace: (name: ThresholdName) => Place;
}
