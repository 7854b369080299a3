import { mayBeLate } from '../../audit/report/change.ts';
import { rank } from '../../audit/report/order.ts';
import type { AsLeftThreshold, ChannelResult, Exposure, Report } from '../../audit/report/types.ts';
import { amount } from '../../audit/report/wording.ts';
import { plain, wrapped } from '../terminal.ts';

/** What was judged as left, for a terminal: how many, and each channel that is late, unreachable or undetermined as left. */
export function asLeftLines({ summary, channels }: Report, width: number, most: number): string[] {
  const { judged, cured, stillLate, newlyLate } = summary.asLeft;
  if (judged === 0) return [];
  const late = channels
    .filter(({ asLeft }) => asLeft && mayBeLate(asLeft.verdict))
    .toSorted((one, other) => rankAsLeft(one) - rankAsLeft(other));
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
  ];
}

function rankAsLeft({ asLeft }: ChannelResult): number {
  return rank(asLeft?.verdict ?? 'within');
}

function line(channel: ChannelResult): string {
  const { tag, asLeft, exposure } = channel;
  const worst = asLeft?.thresholds.filter(({ verdict }) => mayBeLate(verdict)) ?? [];
  const trips = worst.filter(({ name }) => name.endsWith('danger'));
  const shown = trips.length > 0 ? trips : worst;
  const said = shown.map((threshold) => sentence(threshold, channel.unit ?? '')).join('; ');
  const since = exposure.find(({ goesOn, from }) => goesOn && from !== null);
  return `  ${(asLeft?.verdict ?? '').padEnd(12)} ${plain(tag, 40)}: ${said}${goesOnSince(since)}.`;
}

function sentence({ name, multiplier, setpoint, effective, change }: AsLeftThreshold, unit: string): string {
  const times = multiplier === 1 ? '' : ` × ${multiplier} at start-up`;
  return `${name} ${amount(setpoint ?? NaN, plain(unit))}${times} ${change}, at ${amount(effective ?? NaN, plain(unit))}`;
}

function goesOnSince(exposure: Exposure | undefined): string {
  return exposure ? `; may have been so since ${exposure.from}, and goes on` : '';
}
