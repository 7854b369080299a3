import { type OutPolicies, outPolicyOf } from '../judge/groups/members.ts';
import { thresholdNames, type ThresholdName } from '../model/threshold.ts';
import type { ChannelInputs, ChannelResult, Report } from '../model/report.ts';
import type { Snapshot, SnapshotChannel, SnapshotThreshold, Value, Quantity } from '../model/snapshot.ts';

/** What a report says of every channel, kept to compare another audit with it. */
export function snapshotOf(report: Report): Snapshot {
  return {
    input: report.input,
    from: 'tables',
    sheet: null,
    audited: report.generated,
    rules: report.version,
    tolerance: report.policy.tolerance,
    rule: report.policy.rule,
    channels: report.channels.map((channel) => keptOf(channel, report.policy)),
    unknown: [],
    remarks: [],
  };
}

/** What is kept of a channel. */
export interface Kept extends Pick<
  ChannelResult,
  'tag' | 'machine' | 'location' | 'kind' | 'unit' | 'detection' | 'verdict' | 'source'
> {
  readonly sensitivity: Pick<ChannelResult['sensitivity'], 'configured' | 'measured' | 'unit'>;
  readonly thresholds: readonly SnapshotThreshold[];
  readonly inputs: Pick<ChannelInputs, KeptInput> & {
    readonly [Key in KeptSince]?: ChannelInputs[Key] | undefined;
  };
}

type KeptInput =
  | 'limit'
  | 'fullScale'
  | 'resolution'
  | 'zeroConfigured'
  | 'zeroMeasured'
  | 'direction'
  | 'alertDelay'
  | 'dangerDelay'
  | 'group'
  | 'voting'
  | 'bypass'
  | 'calibratedOn';

/** What reports have had from rules version 0.6.0 on. */
type KeptSince = 'gain' | 'zeroUncertainty' | 'loop' | 'batch' | 'sharedUncertainty' | 'chainLength';

/** A channel as it is kept to be compared; the policy is that by which it was judged, where it says what votes do. */
export function keptOf(channel: Kept, policy: OutPolicies | null): SnapshotChannel {
  const { tag, machine, location, unit, detection, verdict, thresholds, inputs, source } = channel;
  return {
    tag,
    machine,
    location,
    unit,
    detection,
    verdict,
    thresholds: thresholds.map(({ name, multiplier, setpoint, effective, verdict: own }) => ({
      name,
      multiplier,
      setpoint,
      effective,
      verdict: own,
    })),
    values: { ...valuesOf(channel), ...furtherOf(channel), ...votesOf(channel, policy) },
    calibratedOn: inputs.calibratedOn,
    source: source.channels,
  };
}

function valuesOf(channel: Kept): Partial<Record<Quantity, Value | null>> {
  const { kind, unit, detection, sensitivity, inputs, thresholds, verdict, source } = channel;
  const level = (amount: number | null) => amountIn(amount, unit, detection);
  const setpoint = (name: ThresholdName) =>
    level(thresholds.find((one) => one.name === name && one.multiplier === 1)?.setpoint ?? null);
  return {
    ...Object.fromEntries(thresholdNames.map((name) => [name, setpoint(name)])),
    'configured sensitivity': amountIn(sensitivity.configured, sensitivity.unit),
    'measured sensitivity': amountIn(sensitivity.measured, sensitivity.unit),
    'set-point multiplier':
      verdict === 'incomplete' ? null : amountIn(Math.max(1, ...thresholds.map((one) => one.multiplier)), ''),
    'full scale': level(inputs.fullScale),
    limit: level(inputs.limit),
    resolution: level(inputs.resolution),
    detection: word(detection),
    kind: word(kind),
    'configured zero voltage': amountIn(inputs.zeroConfigured, 'V'),
    'measured zero voltage': amountIn(inputs.zeroMeasured, 'V'),
    'positive direction': word(inputs.direction),
    'alert delay': amountIn(inputs.alertDelay, 's'),
    'danger delay': amountIn(inputs.dangerDelay, 's'),
    'voting group': word(inputs.group),
    voting: word(inputs.voting),
    bypass: inputs.bypass === null || source.settings === null ? null : word(inputs.bypass ? 'yes' : 'no'),
  };
}

/** What else was measured of the chain and its monitor; a gain of 1 where none was. */
function furtherOf({ inputs, verdict }: Kept): Partial<Record<Quantity, Value | null>> {
  const { gain = 1, zeroUncertainty = null, loop = null, batch = null } = inputs;
  const { sharedUncertainty = null, chainLength = null } = inputs;
  return {
    'monitor gain': verdict === 'incomplete' && gain === 1 ? null : amountIn(gain, ''),
    'zero voltage uncertainty': amountIn(zeroUncertainty, 'V'),
    'loop current at 0 %': amountIn(loop?.at0 ?? null, 'mA'),
    'loop current at 100 %': amountIn(loop?.at100 ?? null, 'mA'),
    batch: word(batch && batch.trim().replace(/\s+/gu, ' ')),
    'shared uncertainty': amountIn(sharedUncertainty && 100 * sharedUncertainty, '%'),
    'chain length': amountIn(chainLength, 'm'),
  };
}

/** What becomes of the vote of a member of a group that is out. */
function votesOf(
  { machine, inputs: { group } }: Kept,
  policy: OutPolicies | null,
): Partial<Record<Quantity, Value | null>> {
  if (group === null || policy === null) return {};
  const vote = (because: 'bypassed' | 'faulty') =>
    word(outPolicyOf({ machine, group }, because, policy).vote);
  return { 'vote when bypassed': vote('bypassed'), 'vote when faulty': vote('faulty') };
}

/** A number with its unit; `null` where either is not given. */
export function amountIn(
  amount: number | null,
  unit: string | null,
  detection: string | null = null,
): Value | null {
  return amount === null || unit === null ? null : { amount, unit, detection };
}

/** A word; `null` where there is none. */
export function word(text: string | null): Value | null {
  return text === null || text === '' ? null : { word: text };
}
