import { isLate } from '../../audit/judge/groups/groupFindings.ts';
import { mayBeLate } from '../../audit/model/change.ts';
import { rank } from '../../audit/model/order.ts';
import type {
  AsLeftThreshold,
  ChannelResult,
  Exposure,
  GroupResult,
  Report,
} from '../../audit/model/report.ts';
import { amount } from '../../audit/model/wording.ts';
import { plain, wrapped } from '../terminal.ts';
import { timesAtStartUp, trips } from '../../audit/model/threshold.ts';

/**
 * What was judged as left, for a terminal: how many, each channel that is late, unreachable or undetermined as left, and
 * each voting group that is late or cannot act as left.
 */
export function asLeftLines(
  { summary, channels, groups, policy }: Report,
  width: number,
  most: number,
): string[] {
  const { judged, cured, stillLate, newlyLate } = summary.asLeft;
  if (judged === 0) return [];
  const late = channels
    .filter(({ asLeft }) => asLeft && mayBeLate(asLeft.verdict))
    .toSorted((one, other) => rankAsLeft(one) - rankAsLeft(other));
  const votes = groups.flatMap((group) => groupLine(group, policy.tolerance));
  return [
    '',
    'As left',
    wrapped(
      `  ${judged} channels judged: ${cured} cured, ${stillLate} still late, unreachable or undetermined, ${newlyLate} newly so.`,
      width,
      '  ',
    ),
    ...late.slice(0, most).map((channel) => wrapped(line(channel), width, ' '.repeat(15))),
    ...(late.length > most ? [`  and ${late.length - most} more.`] : []),
    ...votes.slice(0, most).map((text) => wrapped(text, width, ' '.repeat(15))),
    ...(votes.length > most ? [`  and ${votes.length - most} groups more.`] : []),
  ];
}

function rankAsLeft({ asLeft }: ChannelResult): number {
  return rank(asLeft?.verdict ?? 'within');
}

function line(channel: ChannelResult): string {
  const { tag, asLeft, exposure } = channel;
  const worst = asLeft?.thresholds.filter(({ verdict }) => mayBeLate(verdict)) ?? [];
  const tripping = worst.filter(({ name }) => trips(name));
  const shown = tripping.length > 0 ? tripping : worst;
  const said = shown.map((threshold) => sentence(threshold, channel.unit ?? '')).join('; ');
  const since = exposure.find(
    ({ goesOn, from, name, multiplier }) =>
      goesOn &&
      from !== null &&
      shown.some((threshold) => threshold.name === name && threshold.multiplier === multiplier),
  );
  return `  ${(asLeft?.verdict ?? '').padEnd(12)} ${plain(tag, 40)}: ${said}${goesOnSince(since)}.`;
}

function sentence(threshold: AsLeftThreshold, unit: string): string {
  const { name, multiplier, setpoint, effective, change, unreachable } = threshold;
  const times = timesAtStartUp(multiplier);
  const acts =
    unreachable.length > 0 ? unreachable.join(' and ') : `at ${amount(effective ?? NaN, plain(unit))}`;
  return `${name} ${amount(setpoint ?? NaN, plain(unit))}${times} ${change}, ${acts}`;
}

function groupLine(
  { name, voting, threshold, unit, intended, asLeft }: GroupResult,
  tolerance: number,
): string[] {
  if (!asLeft) return [];
  const group = `group '${plain(name, 40)}' (${voting})`;
  if (!asLeft.canTrip) {
    const word = trips(threshold) ? 'trip' : 'act';
    return [`  ${'unreachable'.padEnd(12)} ${group} cannot ${word} on ${threshold} as left.`];
  }
  if (!isLate(Math.abs(asLeft.effective ?? NaN), Math.abs(intended ?? NaN), tolerance)) return [];
  const level = (value: number | null) => amount(value ?? NaN, plain(unit ?? ''));
  const by = asLeft.decidedBy.map((tag) => plain(tag, 40)).join(', ');
  return [
    `  ${'late'.padEnd(12)} ${group} acts on ${threshold} at ${level(asLeft.effective)} as left instead of ${level(intended)}; decided by ${by}.`,
  ];
}

function goesOnSince(exposure: Exposure | undefined): string {
  return exposure ? `; may have been so since ${exposure.from}, and goes on` : '';
}
