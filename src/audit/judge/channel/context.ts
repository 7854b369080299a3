import type { Finding, PlacedFact } from '../../model/findings.ts';
import type { AssumedUnit } from '../../read/rows/units.ts';
import type { DriftSources } from '../drift/channelReadings.ts';
import type { Member } from '../groups/members.ts';
import type { Policy } from '../../model/policy.ts';
import type { ChannelResult } from '../../model/report.ts';
import type { RecordBook } from '../../read/records/rawRecord.ts';
import type { Tables } from '../../read/tables/found.ts';

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

/** A channel's result, still open for the findings of its group. */
export type OpenResult = Omit<ChannelResult, 'findings'> & { readonly findings: (PlacedFact | Finding)[] };

/** A channel's result and its seat in a voting group; `null` where its settings name none. */
export interface AuditedChannel {
  readonly result: OpenResult;
  readonly member: Member | null;
}
