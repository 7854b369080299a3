import type { ThresholdResult } from '../../model/threshold.ts';
import type { Finding, PlacedFact } from '../../model/findings.ts';
import type { Channel } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import type { DynamicResult, RecordResult } from '../../model/report.ts';
import { chooseRecord, type Chosen, rank } from './chooseRecord.ts';
import { curveThresholds } from './curveThresholds.ts';
import { evaluateCheck } from './evaluateCheck.ts';
import { type EvaluatedRecord, evaluateRecord } from './evaluateRecord.ts';
import type { RawCheck, RawRecord } from '../../read/records/rawRecord.ts';
import { recordFindings, type ChannelRecords } from './recordFindings.ts';

/** Which of a channel's records counts; `undefined` where it has none. */
export function recordsOf(found: readonly (RawRecord | RawCheck)[] | undefined): Chosen | undefined {
  return found && chooseRecord(found.filter((one) => one.kind === 'record'));
}

/** Works out the record that counts, for a channel of which gaps and volts mean something. */
export function lookAtRecords(
  found: readonly (RawRecord | RawCheck)[],
  chosen: Chosen,
  channel: Channel,
  policy: Policy,
): ChannelRecords {
  const displacement = channel.kind === 'radial' || channel.kind === 'axial';
  const { used } = chosen;
  return {
    chosen,
    evaluated: displacement && used ? evaluateRecord(used, channel, policy) : undefined,
    checks: found.filter((one) => one.kind === 'check').toSorted((one, other) => rank(one) - rank(other)),
    remarks: found.flatMap(({ remarks }) => remarks),
  };
}

export interface AuditedRecords {
  readonly record: RecordResult | null;
  readonly dynamic: DynamicResult | null;
  readonly findings: readonly (PlacedFact | Finding)[];
}

/** The record and the check of a channel beside its thresholds, with what is to be said about them. */
export function auditRecords(
  records: ChannelRecords,
  channel: Channel,
  thresholds: readonly ThresholdResult[],
  policy: Policy,
): AuditedRecords {
  const { chosen, evaluated, checks, remarks } = records;
  const record = evaluated ? resultOf(chosen, evaluated, channel, thresholds) : null;
  const [check] = checks;
  const dynamic = (check && evaluateCheck(check, channel)) ?? null;
  return {
    record,
    dynamic,
    findings: [...remarks, ...recordFindings({ records, record, dynamic, channel, thresholds, policy })],
  };
}

function resultOf(
  { others }: Chosen,
  { result, curve, gapUnit }: EvaluatedRecord,
  channel: Channel,
  thresholds: readonly ThresholdResult[],
): RecordResult {
  return {
    ...result,
    thresholds: curve ? curveThresholds(channel, thresholds, curve, gapUnit, result.operatingGap) : [],
    others: others.map(({ raw, slope }) => ({
      series: raw.series,
      temperature: raw.temperature,
      average: slope > 0 ? 1000 * slope : null,
      gapUnit: raw.gapUnit.text,
    })),
  };
}
