import type { ThresholdResult } from '../../../audit/model/threshold.ts';
import type { AsLeftResult, ChannelResult, Exposure } from '../../../audit/model/report.ts';
import { amount, percent } from '../../../audit/model/wording.ts';
import { thresholdSentence } from '../../../sheets/summary/sentence.ts';
import { interimLine } from './interimLine.ts';

/** What was read as left, in one line. */
export function asLeftReadingsLine({ sensitivity, sensitivityFrom, gapVoltage }: AsLeftResult): string {
  const { measured, unit, error, uncertainty } = sensitivity;
  const off = `${percent(error ?? NaN)} off the configured one`;
  const band =
    uncertainty === null ? 'no uncertainty of its own' : `with an uncertainty of ${percent(uncertainty)}`;
  const gap = gapVoltage === null ? '' : `; gap voltage ${amount(gapVoltage, 'V')}`;
  const record = sensitivityFrom === 'calibration record' ? ', from its calibration record' : '';
  return `Sensitivity ${amount(measured ?? NaN, unit ?? '')}${record}, ${off}, ${band}${gap}.`;
}

/** Where a threshold acts as left and what changed, to stand below what was found; `null` where it was not judged as left. */
export function asLeftLine(channel: ChannelResult, found: ThresholdResult): string | null {
  const now = nowOf(channel, found);
  return now && `As left, ${now.left.change}: ${thresholdSentence(now.channel, now.left)}`;
}

/** The interim setpoint that is called for now: that of the chain as left where it was judged, as found would no longer fit. */
export function interimNow(channel: ChannelResult, found: ThresholdResult): string | null {
  const now = nowOf(channel, found);
  return now ? interimLine(now.channel, now.left) : interimLine(channel, found);
}

/** A channel and its threshold as left; the present reading is one as found. */
function nowOf(channel: ChannelResult, found: ThresholdResult) {
  const { asLeft, inputs } = channel;
  const left = asLeft?.thresholds[channel.thresholds.indexOf(found)];
  if (!asLeft || !left) return null;
  return {
    left,
    channel: { ...channel, inputs: { ...inputs, linearReach: asLeft.linearReach, reading: null } },
  };
}

/** How long a threshold that was found late or unreachable may have been so; `null` where it was not. */
export function exposureLine({ exposure }: ChannelResult, found: ThresholdResult): string | null {
  const own = exposure.find(({ name, multiplier }) => name === found.name && multiplier === found.multiplier);
  if (!own || (own.from === null && own.to === null && own.goesOn !== true)) return null;
  const { from, to, days } = own;
  const since = from === null ? 'from when on can’t be told' : `from ${from}`;
  const until = to === null ? '' : `, found on ${to}`;
  const long = days === null ? '' : `, up to ${days} days`;
  return `May have been so ${since}${until}${long}${ending(own)}.`;
}

function ending({ goesOn }: Exposure): string {
  if (goesOn === null) return '';
  return goesOn ? ', and goes on' : '';
}
