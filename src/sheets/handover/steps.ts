import type { ChannelResult } from '../../audit/model/report.ts';
import { isBeyondLimit } from '../summary/sentence.ts';
import { needsAttention } from './attention.ts';
import { channelNow } from './asLeft.ts';
import { clipped, listed } from './clipped.ts';
import { idleSentence } from './tripBlocks.ts';
import type { Machine } from '../machines.ts';
import { trips, type ThresholdResult, type UnreachableReason } from '../../audit/model/threshold.ts';

/** What must be done before start-up, in order: what may explain the rest, trips, chains, measuring, rows to complete. */
export function stepsBeforeStartUp({ channels, groups }: Machine): readonly string[] {
  const judged = channels.filter(({ verdict }) => verdict !== 'incomplete').map(channelNow);
  const isCured = ({ asLeft }: ChannelResult) => asLeft?.verdict === 'within';
  const cured = judged.filter(isCured).map(({ tag }) => tag);
  const wrong = judged.filter((channel) => !isCured(channel) && needsAttention(channel));
  const which = (found: (channel: ChannelResult) => boolean) => judged.filter(found).map(({ tag }) => tag);
  const unreachable = (
    reason: UnreachableReason,
    concerned: (threshold: ThresholdResult) => boolean = () => true,
  ) =>
    which(({ thresholds }) => thresholds.some((one) => one.unreachable.includes(reason) && concerned(one)));
  const late = wrong.filter(({ thresholds }) => thresholds.some(({ verdict }) => verdict === 'late'));
  const incomplete = channels.filter(({ verdict }) => verdict === 'incomplete').map(({ tag }) => tag);
  const one = (tags: readonly string[], words: (names: string) => string) =>
    tags.length === 0 ? [] : [words(listed(tags))];
  return [
    ...one(
      which(({ findings }) => findings.some(({ rule }) => rule === 'unit-slip-suspected')),
      (tags) =>
        `Look up the units of ${tags} in the instruments themselves: a slip of units may explain what else is found there.`,
    ),
    ...idleGroups(groups),
    ...one(
      which(({ inputs }) => inputs.bypass === true),
      (tags) => `Take the bypass out of ${tags}: until then it protects nothing.`,
    ),
    ...one(
      which(({ inputs }) => inputs.bypass === null),
      (tags) => `Find out at the monitor whether ${tags} is in bypass, and enter yes or no.`,
    ),
    ...one(
      unreachable('above full scale', ({ name, multiplier }) => trips(name) && multiplier === 1),
      (tags) =>
        `Bring the danger setpoint of ${tags} below the full scale of the monitor, or change its range, under the site’s change procedure.`,
    ),
    ...one(
      unreachable('above full scale', ({ multiplier }) => multiplier !== 1),
      (tags) =>
        `Check the start-up multiplier of ${tags}: while it is on, the multiplied setpoint lies above full scale and can’t act.`,
    ),
    ...one(
      unreachable('out of the linear reach'),
      (tags) =>
        `Set the probe gap of ${tags} so that the swing at danger stays in the linear range, and check the gap voltage.`,
    ),
    ...one(
      unreachable('on the other side of zero'),
      (tags) =>
        `Measure the zero voltage of ${tags} at the mechanical zero, check which direction is positive, and correct the zero in the monitor.`,
    ),
    ...chains(wrong),
    ...one(
      which(withinBeyond),
      (tags) =>
        `Have the danger setpoint of ${tags} checked against the machine’s limit: it acts beyond it, though the chain is within the tolerance.`,
    ),
    ...one(
      which(({ thresholds }) => thresholds.some(({ verdict }) => verdict === 'undetermined')),
      (tags) => `Measure the sensitivity of ${tags} with less uncertainty: as it is, nothing can be decided.`,
    ),
    ...one(
      wrong.filter(isOff).map(({ tag }) => tag),
      (tags) => `Measure ${tags} again after that, enter the results and audit again.`,
    ),
    ...one(
      late.map(({ tag }) => tag),
      (tags) =>
        `For as long as ${tags} ${late.length === 1 ? 'is' : 'are'} not corrected, tell operations which numbers on the panel stand for the limits (below).`,
    ),
    ...one(
      cured,
      (tags) =>
        `Keep the as-left measurements of ${tags} with the machine; times below are as found: audit again with the as-left values as the measured ones.`,
    ),
    ...one(
      incomplete,
      (tags) =>
        `Complete the rows of ${tags} (see “Not judged”) and audit again: nothing is known about their protection.`,
    ),
  ];
}

function idleGroups(groups: Machine['groups']): string[] {
  const idle = groups.filter((group) => !(group.asLeft ?? group).canTrip && trips(group.threshold));
  const first = idle.filter((group, index) => idle.findIndex(({ name }) => name === group.name) === index);
  return first.map(
    (group) =>
      `Restore the vote of group ${clipped(group.name)}, which cannot trip the machine. ${clipped(idleSentence(group), 600)}`,
  );
}

/** Whether the chain itself is what must be put right, and so measured again. */
function isOff({ thresholds }: ChannelResult): boolean {
  return thresholds.some(
    ({ verdict, unreachable }) =>
      verdict === 'late' ||
      verdict === 'early' ||
      verdict === 'undetermined' ||
      unreachable.some((why) => why !== 'above full scale'),
  );
}

function withinBeyond({ inputs, thresholds }: ChannelResult): boolean {
  return (
    thresholds.some((threshold) => isBeyondLimit(inputs.limit, threshold)) &&
    thresholds.every(({ name, verdict }) => !trips(name) || verdict === 'within')
  );
}

const usual = 'Check that probe, cable and driver belong together in length and type.';
const zero = 'Measure the zero voltage at the mechanical zero, and correct the zero in the monitor.';

/** A zero that moved makes thresholds late whatever the sensitivity is. */
function usualFor({ kind, inputs }: ChannelResult): string {
  const moved =
    kind === 'axial' &&
    inputs.zeroMeasured !== null &&
    inputs.zeroConfigured !== null &&
    inputs.zeroMeasured !== inputs.zeroConfigured;
  return moved ? `${zero} ${usual}` : usual;
}

/** The chains to correct, those together whose readings point to the same. A hint stands as one, never as a verdict. */
function chains(wrong: readonly ChannelResult[]): string[] {
  const byHint = new Map<string, string[]>();
  for (const channel of wrong) {
    const off = channel.thresholds.some(({ verdict }) => verdict === 'late' || verdict === 'early');
    const hint = hintOf(channel);
    if (!off && hint === null) continue;
    const words = hint === null ? usualFor(channel) : `The readings point to this, as a hint only: ${hint}`;
    byHint.set(words, [...(byHint.get(words) ?? []), channel.tag]);
  }
  return [...byHint].map(
    ([words, tags]) =>
      `Correct the measuring ${tags.length === 1 ? 'chain' : 'chains'} of ${listed(tags)}. ${words}`,
  );
}

/** What sensitivity and gap voltage together point to, without the numbers before it. */
function hintOf({ findings }: ChannelResult): string | null {
  const found = findings.find(({ rule }) =>
    /^(readings-point-to-a-cause|gap-voltage-hides-fault)$/u.test(rule),
  );
  if (!found) return null;
  const colon = found.message.indexOf(': ');
  return colon < 0 ? found.message : found.message.slice(colon + 2);
}
