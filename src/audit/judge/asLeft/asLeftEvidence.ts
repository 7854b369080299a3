import type { Channel, MeasuredLoop } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import type { Obstacle } from '../../model/threshold.ts';
import { lacksDirection } from '../lines/axialLine.ts';
import type { Evidence } from '../lines/evidence.ts';
import { recordEvidence, type RecordEvidence } from '../records/recordEvidence.ts';
import type { Usable } from '../records/chooseRecord.ts';
import type { AsLeftReadings, LeftRecords } from './readings.ts';

/** A channel as it was left: its evidence, and what record and check say of it. */
export interface LeftEvidence {
  readonly evidence: Evidence;
  readonly ofRecords: RecordEvidence;
  /** Whether the check with a known vibration of what was found still counts: the sensitivity was not measured again. */
  readonly keepsCheck: boolean;
}

/**
 * All there is to judge a channel by as it was left. What was not read again stays as found: the sensitivity, the gap
 * voltage with the reach about it, the uncertainty, which belongs to the method of measuring; but not the zero voltage of a
 * position, of which nothing is known until it is measured again. The present reading is read through the chain as it is now.
 */
export function asLeftEvidence(
  found: Evidence,
  readings: AsLeftReadings,
  left: LeftRecords,
  others: readonly Usable[],
  policy: Policy,
): LeftEvidence {
  const { channel: asFound } = found;
  const { sensitivity, uncertainty, gapVoltage, zero } = readings;
  const axial = asFound.kind === 'axial';
  const measuredAgain = sensitivity !== null;
  const channel: Channel = {
    ...asFound,
    measured: sensitivity ?? asFound.measured,
    uncertainty: uncertainty ?? asFound.uncertainty,
    gapVoltage: gapVoltage ?? asFound.gapVoltage,
    zeroMeasured: axial ? zero : asFound.zeroMeasured,
    loop: asFound.loop && loopAsLeft(asFound.loop, asFound, readings),
    recordReach: gapVoltage === null ? asFound.recordReach : null,
  };
  const ofRecords = recordEvidence(left.record, left.check, channel, policy, others);
  const kept = found.obstacles.filter((obstacle) => !judgedAnew.has(obstacle));
  const zeros: Obstacle[] = [];
  if (axial && zero === null) zeros.push('the zero voltage was not measured again');
  if (axial && channel.zeroConfigured === null) zeros.push('the configured zero voltage is missing');
  if (lacksDirection(channel)) zeros.push('the direction is missing');
  const keepsCurve = !measuredAgain && left.record === undefined;
  const keepsCheck = !measuredAgain && ofRecords.vibration === null;
  return {
    evidence: {
      channel: ofRecords.channel,
      curve: ofRecords.curve ?? (keepsCurve && gapVoltage === null ? found.curve : null),
      vibration: keepsCheck ? found.vibration : ofRecords.vibration,
      obstacles: [...kept, ...zeros, ...ofRecords.obstacles],
    },
    ofRecords,
    keepsCheck,
  };
}

/**
 * The ends of a loop of which the sensitivity was measured again: the lower one as found, as it was not, the upper one where
 * the sensitivity puts it. An uncertainty as left is that of their distance, and no less than the lower end's.
 */
function loopAsLeft(
  loop: MeasuredLoop,
  { unitsPerVolt }: Pick<Channel, 'unitsPerVolt'>,
  { sensitivity, uncertainty }: Pick<AsLeftReadings, 'sensitivity' | 'uncertainty'>,
): MeasuredLoop {
  if (sensitivity === null || !loop.isAll) return loop;
  const width = (loop.span * sensitivity) / unitsPerVolt;
  const rest = (uncertainty ?? 0) ** 2 * width ** 2 - (loop.at0Uncertainty ?? 0) ** 2;
  return {
    ...loop,
    at100: loop.at0 + width,
    at100Uncertainty: uncertainty === null ? loop.at100Uncertainty : Math.sqrt(Math.max(0, rest)),
  };
}

/** Obstacles as found that say nothing of the chain as it was left. */
const judgedAnew: ReadonlySet<Obstacle> = new Set<Obstacle>([
  'the zero voltage was not measured',
  'the zero voltage was not measured again',
  'the configured zero voltage is missing',
  'the direction is missing',
  'the record can’t be used',
]);
