import type { ThresholdVerdict } from '../model/threshold.ts';
import { inUnitOf } from '../model/sameValue.ts';
import type { Change, ChangeKind } from '../model/since.ts';
import type { SnapshotChannel, SnapshotThreshold } from '../model/snapshot.ts';
import { thresholdMessage } from './thresholdMessage.ts';

/**
 * Thresholds of a channel whose verdict is another than before, and those that are still not within tolerance. `before`
 * is `undefined` for a channel that the earlier audit had not. `causes` are the changes of its settings and readings.
 */
export function verdictChanges(
  before: SnapshotChannel | undefined,
  now: SnapshotChannel,
  causes: readonly Change[],
): Change[] {
  return now.thresholds.flatMap((threshold) => {
    const earlier = before?.thresholds.find(
      ({ name, multiplier }) => name === threshold.name && multiplier === threshold.multiplier,
    );
    const kind = kindOf(earlier?.verdict, threshold.verdict);
    if (kind === undefined) return [];
    const was = before && earlier ? effectiveIn(before, earlier, now) : null;
    return [
      {
        kind,
        tag: now.tag,
        machine: now.machine,
        location: now.location,
        threshold: threshold.name,
        multiplier: threshold.multiplier,
        quantity: null,
        before: was,
        now: threshold.effective,
        unit: now.unit,
        verdictBefore: earlier?.verdict ?? null,
        verdictNow: threshold.verdict,
        message: thresholdMessage({ before, earlier, was, now, threshold, causes }),
        source: now.source,
      },
    ];
  });
}

function kindOf(before: ThresholdVerdict | undefined, now: ThresholdVerdict): ChangeKind | undefined {
  if (now === 'within') {
    if (before === undefined || before === 'within') return undefined;
    return before === 'incomplete' ? 'completed' : 'cured';
  }
  return before === now ? `still ${now}` : `newly ${now}`;
}

/** Where a threshold acted, in the unit and detection that the channel has now; `null` where that can't be told. */
function effectiveIn(
  before: SnapshotChannel,
  { effective }: SnapshotThreshold,
  now: SnapshotChannel,
): number | null {
  if (effective === null || before.unit === null || now.unit === null) return null;
  const own = { amount: effective, unit: before.unit, detection: before.detection };
  return inUnitOf(own, { unit: now.unit, detection: now.detection });
}
