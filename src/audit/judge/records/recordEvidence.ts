import { atCoverage } from '../../../method/uncertainty.ts';
import type { Channel } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import type { DynamicResult, RecordResult, RecordThreshold } from '../../model/records.ts';
import type { Obstacle } from '../../model/threshold.ts';
import type { RawCheck, RawRecord } from '../../read/records/rawRecord.ts';
import { asLeft } from '../../read/records/recordCells.ts';
import { onCurve, type MeasuredCurve } from '../lines/curveLine.ts';
import type { Evidence } from '../lines/evidence.ts';
import { inOrder, setpointOf } from '../lines/line.ts';
import { chooseRecord, rank, type Chosen, type Usable } from './chooseRecord.ts';
import { evaluateCheck } from './evaluateCheck.ts';
import { evaluateRecord, type EvaluatedRecord } from './evaluateRecord.ts';

/** The records and checks of one channel as they were found in the workbook. */
export interface ChannelRecords {
  readonly chosen: Chosen;
  /** As found before any other series, as left last. */
  readonly checks: readonly RawCheck[];
  readonly all: readonly (RawRecord | RawCheck)[];
}

/** Which of a channel's records count; `undefined` where it has neither record nor check. */
export function recordsOf(found: readonly (RawRecord | RawCheck)[] | undefined): ChannelRecords | undefined {
  return (
    found && {
      chosen: chooseRecord(found.filter((one) => one.kind === 'record')),
      checks: found.filter((one) => one.kind === 'check').toSorted((one, other) => rank(one) - rank(other)),
      all: found,
    }
  );
}

/** The record by which what was found is judged: one marked as left tells nothing of it. */
export function recordAsFound(records: ChannelRecords | undefined): Usable | undefined {
  const used = records?.chosen.used;
  return used && used.raw.series !== asLeft ? used : undefined;
}

/** The check with a known vibration of what was found, or of what was left. */
export function checkOf(records: ChannelRecords | undefined, left: boolean): RawCheck | undefined {
  return records?.checks.find(({ series }) => (series === asLeft) === left);
}

/** What record and check say of a channel, as lines of evidence beside its listed sensitivity. */
export interface RecordEvidence {
  /** The channel with the reach of its record. */
  readonly channel: Channel;
  readonly curve: MeasuredCurve | null;
  readonly vibration: Evidence['vibration'];
  readonly record: RecordResult | null;
  readonly evaluated: EvaluatedRecord | undefined;
  readonly dynamic: DynamicResult | null;
  readonly obstacles: readonly Obstacle[];
}

/** A channel without record and check. */
function withoutEvidence(channel: Channel): RecordEvidence {
  return {
    channel,
    curve: null,
    vibration: null,
    record: null,
    evaluated: undefined,
    dynamic: null,
    obstacles: [],
  };
}

/** Works out the record and the check that count for a channel as it stood at one time. */
export function recordEvidence(
  usable: Usable | undefined,
  check: RawCheck | undefined,
  channel: Channel,
  policy: Policy,
  others: readonly Usable[],
): RecordEvidence {
  if (!usable && !check) return withoutEvidence(channel);
  const displacement = channel.kind === 'radial' || channel.kind === 'axial';
  const evaluated = displacement && usable ? evaluateRecord(usable, channel, policy) : undefined;
  const reach = evaluated?.reach ?? null;
  const reaching = reach === null ? channel : { ...channel, recordReach: reach };
  const dynamic = (check && evaluateCheck(check, channel)) ?? null;
  const curve = evaluated?.curve
    ? {
        curve: evaluated.curve,
        gapUnit: evaluated.gapUnit,
        operatingGap: evaluated.result.operatingGap,
      }
    : null;
  return {
    channel: reaching,
    curve,
    vibration: dynamic && vibrationOf(dynamic, policy),
    record: evaluated ? resultOf(evaluated, curve, reaching, others) : null,
    evaluated,
    dynamic,
    obstacles: displacement && usable && !curve ? ['the record can’t be used'] : [],
  };
}

/**
 * Its uncertainty is expanded at 95.45 %, which is a coverage factor of 2. Of 100 % or more it leaves open under the guarded
 * rule where the threshold acts; under the simple rule the value alone decides as ever.
 */
function vibrationOf(
  { sensitivity, uncertainty }: DynamicResult,
  { coverage, rule }: Policy,
): Evidence['vibration'] {
  const fraction = uncertainty === null ? null : atCoverage(uncertainty / sensitivity, 2, coverage);
  const decides = fraction !== null && (fraction < 1 || rule === 'guarded');
  return { sensitivity, uncertainty: decides ? fraction : null };
}

function resultOf(
  { result }: EvaluatedRecord,
  curve: MeasuredCurve | null,
  channel: Channel,
  others: readonly Usable[],
): RecordResult {
  return {
    ...result,
    thresholds: curve ? curveThresholds(curve, channel) : [],
    others: others.map(({ raw, slope }) => ({
      series: raw.series,
      temperature: raw.temperature,
      average: slope > 0 ? 1000 * slope : null,
      gapUnit: raw.gapUnit.text,
    })),
  };
}

/** Where the thresholds of a channel act on its record's curve, one for each that has a setpoint. */
function curveThresholds(curve: MeasuredCurve, channel: Channel): RecordThreshold[] {
  if (channel.kind !== 'axial' && curve.operatingGap === null) return [];
  const multipliers = channel.multiplier > 1 ? [1, channel.multiplier] : [1];
  return multipliers.flatMap((multiplier) =>
    inOrder.flatMap((name): RecordThreshold[] => {
      const setpoint = setpointOf(channel, name);
      const found = setpoint === null ? undefined : onCurve(curve, channel, { setpoint, multiplier }, 1);
      return found ? [{ name, multiplier, ...found }] : [];
    }),
  );
}
