import { reportedRule } from '../../audit/advise/messages/messages.ts';
import type { Finding } from '../../audit/model/findings.ts';
import type { RecordRules } from '../../audit/model/rules/recordRules.ts';
import type { ThresholdResult } from '../../audit/model/threshold.ts';
import { amount } from '../../audit/model/wording.ts';
import type { Policy } from '../../audit/model/policy.ts';
import type {
  ChannelResult,
  RecordResult,
  RecordSpread,
  Report,
  UpDownResult,
} from '../../audit/model/report.ts';
import { convert } from '../../units/unit.ts';
import { parseUnit } from '../../units/parse.ts';
import { isAxial } from '../results/column.ts';
import { lineOf } from '../results/line.ts';
import { divisorOf } from '../results/acting.ts';
import { zeroShift } from '../results/workings.ts';
import type { PointSpan, ShownRecord, ShownThreshold } from './shown.ts';

/** Every calibration record of a report, in the report's order of channels. */
export function shownRecords({ channels, policy }: Report): ShownRecord[] {
  return channels.flatMap((channel) =>
    channel.record ? [shownRecord(channel, channel.record, policy)] : [],
  );
}

/** Rules about records and what is compared with them, wherever they point. */
const recordRules = [
  'record-unusable',
  'record-of-another-kind',
  'record-sorted',
  'record-read-up-and-down',
  'several-records',
  'record-not-falling',
  'record-disagrees-with-list',
  'static-and-dynamic-disagree',
  'record-without-gap-voltage',
  'gap-outside-record',
  'gap-outside-straight-part',
  'curve-falls-short',
  'curve-differs',
] as const satisfies readonly (keyof RecordRules)[];

/** Whether a finding is about the record of its channel. */
function isAboutRecord({ rule, threshold }: Finding): boolean {
  return recordRules.some((own) => rule === reportedRule({ rule: own, threshold }));
}

/** A channel's record as the sheet and the pane show it. */
export function shownRecord(channel: ChannelResult, record: RecordResult, policy: Policy): ShownRecord {
  const { gapUnit: unit, points } = record;
  const { deviation } = policy.recordTolerance;
  return {
    tag: channel.tag,
    about: aboutOf(channel, record),
    unit,
    gaps: points.map(({ gap }) => gap),
    volts: points.map(({ volts }) => volts),
    rated: record.rated,
    tolerance: policy.recordTolerance.incremental,
    deviation: inUnit(deviation.value, deviation.unit, unit),
    fitted: spanOf(record),
    linear: record.linearRange,
    gapVoltage: channel.inputs.gapVoltage,
    operatingGap: record.operatingGap,
    thresholds: channel.thresholds.flatMap((threshold) => shownThreshold(channel, record, threshold, policy)),
    levelUnit: [channel.unit, channel.detection].filter((part) => part !== null).join(' '),
    others: othersOf(channel, record),
    findings: channel.findings
      .filter((finding) => finding.sheet === record.sheet || isAboutRecord(finding))
      .map(({ message }) => message),
  };
}

function aboutOf({ machine, location, kind }: ChannelResult, record: RecordResult): string[] {
  const taken = record.takenOn === null ? '' : `taken on ${record.takenOn}`;
  const where = `sheet '${record.sheet}' from row ${record.row}`;
  const temperature = record.temperature === '' ? '' : `temperature ${record.temperature}`;
  return [machine, location, kind ?? '', record.series, temperature, taken, where].filter(
    (text) => text !== '',
  );
}

function spanOf({ points, span }: RecordResult): PointSpan {
  const inside = ({ gap }: { readonly gap: number }) => gap >= span.from && gap <= span.to;
  return { first: points.findIndex(inside), last: points.findLastIndex(inside) };
}

/** The line of one threshold; none where it was not worked out. */
function shownThreshold(
  channel: ChannelResult,
  record: RecordResult,
  threshold: ThresholdResult,
  policy: Policy,
): ShownThreshold[] {
  const line = lineOf(channel, threshold, policy);
  const { configured, measured, unit } = channel.sensitivity;
  if (threshold.setpoint === null || configured === null || measured === null || unit === null) return [];
  const found = record.thresholds.find(
    ({ name, multiplier }) => name === threshold.name && multiplier === threshold.multiplier,
  );
  if (!found) return [];
  const here = `mV/${record.gapUnit}`;
  return [
    {
      name: threshold.name,
      multiplier: threshold.multiplier,
      setpoint: threshold.setpoint,
      configured: inUnit(divisorOf(channel) ?? configured, unit, here),
      isOfGain: channel.inputs.gain !== 1,
      measured: inUnit(measured, unit, here),
      zeroShift: isAxial(line) ? (zeroShift(line) ?? 0) : 0,
      simple: line.listed?.effective ?? null,
      onCurve: found.onCurve,
      largestIndicated: found.largestIndicated,
    },
  ];
}

/** What both directions of a record say, each a line. */
function upDownTexts(upDown: UpDownResult | null, gapUnit: string): string[] {
  if (!upDown) return [];
  const { cycles, hysteresis, repeatability, terminal, independent } = upDown;
  const line = (name: string, { volts, ofSpan, displacement }: RecordSpread): string =>
    `${name}: ${amount(volts, 'V')}, ${Number((100 * ofSpan).toPrecision(3))} % of the span, ${amount(displacement, gapUnit)}.`;
  return [
    `Read up and down, ${cycles === 1 ? 'one cycle' : `${cycles} cycles`}; the points are those of the mean curve.`,
    line('Hysteresis', hysteresis),
    ...(repeatability ? [line('Repeatability', repeatability)] : []),
    line('Off the line through its ends (terminal)', terminal),
    line('Off the best line (independent)', independent),
  ];
}

function othersOf(
  { dynamic, sensitivity }: ChannelResult,
  { others, upDown, gapUnit: own }: RecordResult,
): string[] {
  const both = upDownTexts(upDown, own);
  const records = others.map(({ series, temperature, average, gapUnit }) => {
    const at = temperature === '' ? '' : `temperature ${temperature}`;
    const name = [series, at].filter((text) => text !== '').join(', ') || 'without a name';
    const found = average === null ? 'no line can be fitted' : `average ${amount(average, `mV/${gapUnit}`)}`;
    return `Other record, ${name}: ${found}.`;
  });
  if (!dynamic) return [...both, ...records];
  const { levels, uncertainty } = dynamic;
  const unit = sensitivity.unit ?? '';
  const spread = uncertainty === null ? '' : ` ± ${amount(uncertainty, unit)}`;
  const from = levels === 1 ? '1 level' : `${levels} levels`;
  return [
    ...both,
    ...records,
    `Check with a known vibration, ${from}: ${amount(dynamic.sensitivity, unit)}${spread} (sheet '${dynamic.sheet}', row ${dynamic.row}).`,
  ];
}

/** A value in another unit of the same kind; as it is where either is no unit. */
function inUnit(value: number, from: string, to: string): number {
  const [one, other] = [parseUnit(from), parseUnit(to)];
  return one && other ? convert(value, one, other) : value;
}
