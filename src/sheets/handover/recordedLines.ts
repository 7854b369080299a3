import { outcomeText } from '../../audit/advise/replayedText.ts';
import { tagKey } from '../../audit/read/tables/tagKey.ts';
import type { Report } from '../../audit/model/report.ts';
import type { Machine } from '../machines.ts';

/** What recorded readings say of a machine, in one line: the worst that happened; none where no setpoint was reached. */
export function recordedLines({ name }: Machine, { replay }: Report): readonly string[] {
  const [worst] = (replay?.channels ?? []).flatMap(({ tag, machine, thresholds }) =>
    tagKey(machine) === tagKey(name)
      ? thresholds.flatMap((threshold) => (threshold.outcome === 'not reached' ? [] : [{ tag, threshold }]))
      : [],
  );
  if (!worst) return [];
  return [`By recorded readings, ${worst.threshold.name} of ${worst.tag}: ${outcomeText(worst.threshold)}.`];
}
