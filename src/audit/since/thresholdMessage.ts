import { capital, level } from '../model/wording.ts';
import { isSameNumber } from '../model/sameValue.ts';
import type { Change } from '../model/since.ts';
import type { SnapshotChannel, SnapshotThreshold, Quantity } from '../model/snapshot.ts';
import { timesAtStartUp, trips, type ThresholdVerdict } from '../model/threshold.ts';

/** A verdict as what a subject does now and did before: `is late`, `was late`. */
export const verdictClauses: Readonly<
  Record<ThresholdVerdict, { readonly now: string; readonly before: string }>
> = {
  unreachable: { now: 'cannot act', before: 'could not act' },
  late: { now: 'is late', before: 'was late' },
  undetermined: { now: 'is uncertain', before: 'was uncertain' },
  early: { now: 'is early', before: 'was early' },
  incomplete: { now: 'is not known', before: 'was not known' },
  within: { now: 'is OK', before: 'was OK' },
};

interface Compared {
  readonly before: SnapshotChannel | undefined;
  readonly earlier: SnapshotThreshold | undefined;
  /** Where it acted, in the unit of the channel now. */
  readonly was: number | null;
  readonly now: SnapshotChannel;
  readonly threshold: SnapshotThreshold;
  readonly causes: readonly Change[];
}

/** How a threshold acts now, how it acted before, and what changed of its channel meanwhile, for people. */
export function thresholdMessage({ before, earlier, was, now, threshold, causes }: Compared): string {
  const { name, multiplier, verdict, effective } = threshold;
  const acts = trips(name) ? 'trips' : 'alarms';
  const step = stepOf(now);
  const subject = `${capital(name)}${timesAtStartUp(multiplier)}`;
  const where = at(effective, now.unit, step, verdict);
  const is = `${subject} ${verdictClauses[verdict].now}${where === '' ? '' : `: really ${acts}${where}`}`;
  if (!before) return `${is}; the channel is new.`;
  if (!earlier) {
    const why = before.verdict === 'incomplete' ? 'was not known' : 'was not set';
    return `${is}; it ${why} before.`;
  }
  const then =
    was === null && earlier.effective !== null
      ? at(earlier.effective, before.unit, null, earlier.verdict)
      : at(was, now.unit, step, earlier.verdict);
  const still = earlier.verdict === verdict;
  const same = was !== null && effective !== null && isSameNumber(was, effective);
  const ago = still
    ? `, as before${same || then === '' ? '' : ` (then${then})`}`
    : `; it ${verdictClauses[earlier.verdict].before}${then} before`;
  return `${is}${ago}.${meanwhile(causes.filter((cause) => concerns(cause, threshold)))}`;
}

/** Where a threshold acts, at the step of its instrument; nothing where it is not known to. */
function at(
  effective: number | null,
  unit: string | null,
  step: number | null,
  verdict: ThresholdVerdict,
): string {
  if (effective === null || verdict === 'unreachable' || verdict === 'incomplete') return '';
  return ` at ${level(effective, step)}${unit === null ? '' : ` ${unit}`}`;
}

function stepOf({ values }: SnapshotChannel): number | null {
  const step = values.resolution ?? null;
  return step !== null && 'amount' in step && step.amount > 0 ? step.amount : null;
}

/** Settings and readings on which every threshold of a channel depends, beside its own setpoint. */
const shared = new Set<Quantity | null>([
  'configured sensitivity',
  'measured sensitivity',
  'configured zero voltage',
  'measured zero voltage',
  'positive direction',
  'full scale',
  'detection',
  'kind',
]);

function concerns({ quantity }: Change, { name, multiplier }: SnapshotThreshold): boolean {
  if (quantity === name || shared.has(quantity)) return true;
  return quantity === 'set-point multiplier' && multiplier !== 1;
}

function meanwhile(causes: readonly Change[]): string {
  if (causes.length === 0) return '';
  const names = causes.map(({ quantity }) => quantity).filter((name) => name !== null);
  return ` Changed meanwhile: ${names.join(', ')}.`;
}
