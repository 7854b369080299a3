import { amount, capital } from '../model/wording.ts';
import { isSameNumber } from '../model/sameValue.ts';
import type { Quantity } from '../model/quantities.ts';
import type { Change } from '../model/since.ts';
import type { SnapshotChannel, SnapshotThreshold } from '../model/snapshot.ts';
import { timesAtStartUp, type ThresholdVerdict } from '../model/threshold.ts';

interface Compared {
  readonly before: SnapshotChannel | undefined;
  readonly earlier: SnapshotThreshold | undefined;
  /** Where it acted, in the unit of the channel now. */
  readonly was: number | null;
  readonly now: SnapshotChannel;
  readonly threshold: SnapshotThreshold;
  readonly causes: readonly Change[];
}

const actsNow: Readonly<Record<ThresholdVerdict, string>> = {
  unreachable: 'can’t be relied on to act',
  late: 'acts late',
  undetermined: 'can’t be told from the tolerance',
  early: 'acts early',
  incomplete: 'could not be audited',
  within: 'acts within tolerance',
};
const actedBefore: Readonly<Record<ThresholdVerdict, string>> = {
  unreachable: 'could not be relied on to act',
  late: 'acted late',
  undetermined: 'could not be told from the tolerance',
  early: 'acted early',
  incomplete: 'could not be audited',
  within: 'acted within tolerance',
};

/** How a threshold acts now, how it acted before, and what changed of its channel meanwhile, for people. */
export function thresholdMessage({ before, earlier, was, now, threshold, causes }: Compared): string {
  const { name, multiplier, verdict, effective } = threshold;
  const subject = `${capital(name)}${timesAtStartUp(multiplier)}`;
  const unit = now.unit ?? '';
  const is = `${subject} ${actsNow[verdict]}${at(effective, unit, verdict)}`;
  if (!before) return `${is}; the channel is new.`;
  if (!earlier) {
    const why = before.verdict === 'incomplete' ? 'could not be told' : 'was not set';
    return `${is}; it ${why} before.`;
  }
  const then =
    was === null && earlier.effective !== null
      ? at(earlier.effective, before.unit ?? '', earlier.verdict)
      : at(was, unit, earlier.verdict);
  const still = earlier.verdict === verdict;
  const same = was !== null && effective !== null && isSameNumber(was, effective);
  const ago = still
    ? `, as before${same || then === '' ? '' : ` (then${then})`}`
    : `; it ${actedBefore[earlier.verdict]}${then} before`;
  return `${is}${ago}.${meanwhile(causes.filter((cause) => concerns(cause, threshold)))}`;
}

function at(effective: number | null, unit: string, verdict: ThresholdVerdict): string {
  return effective === null || verdict === 'unreachable' ? '' : ` at ${amount(effective, unit)}`;
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
