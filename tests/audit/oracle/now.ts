import type { ChannelFacts, Evidence } from './facts.ts';
import { readings } from './readings.ts';

/**
 * The evidence by which a channel is judged now: as left where it was measured again. The uncertainty as found serves where
 * the reading as left has none, the gap voltage stays where it was not read again; a zero is one that was measured again.
 */
export function evidenceNow({ found, left }: ChannelFacts): Evidence {
  if (left === null) return found;
  const kept = readings.foundEvidenceServesAsLeft ? found : { record: null, check: null };
  return {
    sensitivity: left.sensitivity,
    uncertainty: left.uncertainty ?? found.uncertainty,
    gapVoltage: left.gapVoltage ?? found.gapVoltage,
    zero: left.zero,
    record: left.record ?? kept.record,
    check: left.check ?? kept.check,
  };
}
