import type { ThresholdResult } from '../../model/threshold.ts';
import type { Finding, Place, PlacedFact, Severity } from '../../model/findings.ts';
import { stepNotFalling } from '../../../method/record/calibrationRecord.ts';
import { convert } from '../../../units/convert.ts';
import type { Channel } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import type { DynamicResult, RecordResult } from '../../model/report.ts';
import { amount, percent } from '../../model/wording.ts';
import type { EvaluatedRecord } from './evaluateRecord.ts';
import type { Chosen, Usable } from './chooseRecord.ts';
import { curveFindings } from './curveFindings.ts';
import { perGap } from './evaluateRecord.ts';
import { faultMessage } from './faultMessage.ts';
import type { RawCheck, RawRecord } from '../../read/records/rawRecord.ts';
import { asLeft } from '../../read/records/series.ts';

/** The records of one channel, looked at before its thresholds are worked out. */
export interface ChannelRecords {
  readonly chosen: Chosen;
  readonly evaluated: EvaluatedRecord | undefined;
  readonly checks: readonly RawCheck[];
  readonly remarks: readonly PlacedFact[];
}

/** What there is to look at. */
export interface Looked {
  readonly records: ChannelRecords;
  readonly record: RecordResult | null;
  readonly dynamic: DynamicResult | null;
  readonly channel: Channel;
  readonly thresholds: readonly ThresholdResult[];
  readonly policy: Policy;
}

type Say = (rule: string, severity: Severity, message: string, place: Place) => void;

/** Everything to be said about the records of one channel, each at its place. */
export function recordFindings(looked: Looked): Finding[] {
  const findings: Finding[] = [];
  const say: Say = (rule, severity, message, { sheet, row, column }) => {
    findings.push({ rule, severity, message, sheet, row, column });
  };
  const { chosen } = looked.records;
  unusable(chosen, say);
  if (chosen.used) ofUsed(looked, chosen.used, say);
  otherChecks(looked.records.checks, say);
  dynamicDisagrees(looked, say);
  return findings;
}

function unusable({ faults }: Chosen, say: Say): void {
  for (const { raw, fault } of faults) {
    say('record-unusable', 'warning', faultMessage(raw, fault), placeOfPoint(raw, fault.at));
  }
}

function placeOfPoint(raw: RawRecord, at: number): Place {
  return { sheet: raw.sheet, row: raw.points[at]?.row ?? raw.row, column: raw.column };
}

function ofUsed(looked: Looked, { raw, record }: Usable, say: Say): void {
  const { channel, policy, records } = looked;
  const { kind } = channel;
  if (kind !== 'radial' && kind !== 'axial') {
    const message = `A calibration record of gaps and volts belongs to a displacement channel; this one is of another kind (${kind}), so the record was not looked at.`;
    say('record-of-another-kind', 'note', message, raw);
    return;
  }
  if (record.sorted) {
    say(
      'record-sorted',
      'note',
      'The points of the record do not stand in the order of their gaps; they were sorted.',
      raw,
    );
  }
  otherRecords(raw, records.chosen.others, say);
  const rising = stepNotFalling(record);
  if (rising !== undefined) {
    const [from, to] = [record.gaps[rising] ?? NaN, record.gaps[rising + 1] ?? NaN];
    const message = `From ${amount(from, raw.gapUnit.text)} to ${amount(to, raw.gapUnit.text)} the voltage does not fall although the gap grows, so the record has no curve on which thresholds can be found. Check these readings, or leave out points where the probe is at the end of its range.`;
    say('record-not-falling', 'warning', message, raw);
  }
  if (!looked.record || raw.series === asLeft) return;
  disagreesWithList(looked.record, channel, policy, raw, say);
  curveFindings(looked.record, channel, looked.thresholds, policy, (rule, severity, message) => {
    say(rule, severity, message, raw);
  });
}

function name({ series, temperature }: RawRecord | RawCheck): string {
  return temperature === '' ? series : `${series}, ${temperature}°`;
}

function otherChecks([used, ...others]: readonly RawCheck[], say: Say): void {
  if (!used || others.length === 0) return;
  const names = others.map((other) => `'${name(other)}'`).join(', ');
  const message = `Of several checks with a known vibration '${name(used)}' was looked at: as found before others. Also there: ${names}.`;
  say('several-records', 'note', message, used);
}

function otherRecords(raw: RawRecord, others: readonly Usable[], say: Say): void {
  if (others.length === 0) return;
  const names = others.map((other) => `'${name(other.raw)}'`).join(', ');
  const message = `Of several records '${name(raw)}' was looked at: as found before others, and of several temperatures the one with the lowest sensitivity. Also there: ${names}.`;
  say('several-records', 'note', message, raw);
}

function disagreesWithList(
  { average, gapUnit }: RecordResult,
  { measured, sensitivityUnit }: Channel,
  { tolerance }: Policy,
  raw: RawRecord,
  say: Say,
): void {
  const ofList = convert(measured, sensitivityUnit, perGap(raw.gapUnit));
  const off = average / ofList - 1;
  if (!(Math.abs(off) > tolerance)) return;
  const unit = `mV/${gapUnit}`;
  const message = `The record gives ${amount(average, unit)}, ${percent(off)} off the measured sensitivity of the channel list, ${amount(ofList, unit)}. One of them belongs to another probe, date or target: find out which before either is used.`;
  say('record-disagrees-with-list', 'warning', message, raw);
}

function dynamicDisagrees(looked: Looked, say: Say): void {
  const { dynamic, records, channel, policy } = looked;
  const [check] = records.checks;
  if (!dynamic || !check) return;
  const unit = channel.sensitivityUnit.text;
  const { from, value, expanded } = staticSensitivity(looked);
  const off = dynamic.sensitivity - value;
  const together = Math.hypot(expanded, dynamic.uncertainty ?? 0);
  if (!(Math.abs(off) > together) || !(Math.abs(off) > policy.tolerance * value)) return;
  const message = `The check with a known vibration gives ${amount(dynamic.sensitivity, unit)}, ${from} ${amount(value, unit)}: ${percent(off / value)} apart, more than both uncertainties and the tolerance. Find out whether both were taken on the same target, with the same cable.`;
  say('static-and-dynamic-disagree', 'warning', message, check);
}

/** What a check is compared with: the record's sensitivity, else the list's, in the channel's unit, with its uncertainty. */
function staticSensitivity({ record, records, channel }: Looked) {
  const { measured, uncertainty, sensitivityUnit } = channel;
  const { used } = records.chosen;
  if (!record || !used)
    return { from: 'the channel list', value: measured, expanded: (uncertainty ?? 0) * measured };
  const here = (value: number): number => convert(value, perGap(used.raw.gapUnit), sensitivityUnit);
  return {
    from: 'the calibration record',
    value: here(record.average),
    expanded: 2 * here(record.averageUncertainty ?? 0),
  };
}
