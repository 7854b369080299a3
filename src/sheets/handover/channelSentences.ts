import { worstThreshold } from '../../audit/model/order.ts';
import type { Policy } from '../../audit/model/policy.ts';
import type { ChannelResult } from '../../audit/model/report.ts';
import { amount, capital, percent } from '../../audit/model/wording.ts';
import { lineOf } from '../results/line.ts';
import { thresholdSentence } from '../summary/sentence.ts';
import { isWrong } from './attention.ts';
import { channelAsLeft, withinSentence } from './asLeft.ts';
import { listed } from './clipped.ts';
import { onPanel, roundedForPanel } from './onPanel.ts';
import { trips, type ThresholdResult } from '../../audit/model/threshold.ts';

/** How things stand with a channel, in plain sentences: what trips first, then what only warns. */
export function channelSentences(channel: ChannelResult, policy: Policy): string {
  const left = channelAsLeft(channel);
  if (!left) return sentencesOf(channel, policy, true);
  const now =
    left.verdict === 'within' ? withinSentence(left) : `As left: ${sentencesOf(left, policy, true)}`;
  const found = sentencesOf(channel, policy, false) || 'It acts within the tolerance.';
  return `As found: ${found} ${now}`;
}

/** `holds`: the chain is as it was judged, so that the panel’s number can be converted. */
function sentencesOf(channel: ChannelResult, policy: Policy, holds: boolean): string {
  const wrong = channel.thresholds.filter((threshold) => isWrong(channel, threshold));
  const worst = worstThreshold(wrong);
  const tripping = wrong.filter(({ name, multiplier }) => trips(name) && multiplier === 1);
  const told =
    worst && !tripping.includes(worst) && (tripping.length === 0 || worst.multiplier === 1)
      ? [worst, ...tripping]
      : tripping;
  const multiplied =
    wrong.some(({ multiplier }) => multiplier !== 1) && told.every((one) => one.multiplier === 1);
  const others = wrong.filter((one) => !told.includes(one) && one.multiplier === 1).map(({ name }) => name);
  return [
    ...told.map((threshold) => sentenceOf(channel, threshold, policy, holds)),
    ...(others.length > 0
      ? [
          `Its ${listed(others)} ${others.length === 1 ? 'is' : 'are'} off as well, as the numbers below show.`,
        ]
      : []),
    ...(multiplied ? ['At start-up its multiplied setpoints are off too.'] : []),
    ...bypass(channel),
  ].join(' ');
}

/** What stands before the sentence of a multiplied setpoint. */
export const startUp = /^At start-up, with [^:]*: /u;

/** What is the matter with one threshold, and what its panel's number stands for until the chain is corrected. */
function sentenceOf(
  channel: ChannelResult,
  threshold: ThresholdResult,
  policy: Policy,
  holds: boolean,
): string {
  const words = thresholdSentence(channel, threshold).replace(startUp, '');
  const plain = words.charAt(0).toLowerCase() + words.slice(1);
  const start =
    threshold.multiplier === 1
      ? `${capital(threshold.name)} ${plain}`
      : `At start-up, multiplied by ${threshold.multiplier}, its ${threshold.name} ${plain}`;
  const spurious =
    threshold.verdict === 'early' ? `Expect ${trips(threshold.name) ? 'trips' : 'alarms'} without need.` : '';
  return [start, spurious, holds ? treatAs(channel, threshold, policy) : '']
    .filter((part) => part !== '')
    .join(' ');
}

/**
 * Which number on the panel stands for the level that a late threshold was meant for; with the uncertainty counted in
 * full, the chain may be less sensitive by that part: S·U·Km/Kc sooner. Rounded so that it comes before the level.
 */
function treatAs(channel: ChannelResult, threshold: ThresholdResult, policy: Policy): string {
  const { verdict, setpoint, multiplier } = threshold;
  if (setpoint === null || (verdict !== 'late' && verdict !== 'undetermined')) return '';
  const line = lineOf(channel, threshold, policy, '');
  const shown = onPanel(line);
  if (shown === null) return 'The panel’s number can’t be converted here: don’t lean on it near the limit.';
  const { configured, measured, uncertainty } = channel.sensitivity;
  const sign = Math.sign(setpoint);
  const level = (value: number) => amount(roundedForPanel(value, sign), channel.unit ?? '');
  const sooner =
    uncertainty === null || configured === null || measured === null
      ? null
      : shown - (multiplier * setpoint * uncertainty * measured) / configured;
  const limit = `the ${amount(multiplier * setpoint, channel.unit ?? '')} limit`;
  if (verdict === 'undetermined') {
    return sooner === null ? '' : `To be safe, treat ${level(sooner)} on the panel as ${limit}.`;
  }
  const counted =
    sooner === null
      ? ''
      : ` (${level(sooner)} with its uncertainty of ${percent(uncertainty ?? NaN)} counted in full)`;
  return `Treat ${level(shown)} on the panel as ${limit}${counted}.`;
}

function bypass({ inputs }: ChannelResult): string[] {
  if (inputs.bypass === true) return ['It is in bypass and trips nothing.'];
  return inputs.bypass === null ? ['Its bypass mark is not understood, so it may trip nothing.'] : [];
}

/** The sensitivities and the present reading that the numbers follow from. */
export function inputsSentence({ sensitivity, inputs, unit, kind, asLeft }: ChannelResult): string {
  const { configured, measured, error, uncertainty, coverage } = sensitivity;
  if (configured === null || measured === null) return '';
  const of = sensitivity.unit ?? '';
  const left = asLeft?.sensitivity;
  const parts = [
    `Sensitivity${asLeft ? ' as found' : ''}: configured ${amount(configured, of)}, measured ${amount(measured, of)}${sure(uncertainty, coverage)}: ${signed(error)}.`,
    left
      ? `As left measured ${amount(left.measured ?? NaN, of)}${sure(left.uncertainty, left.coverage)}: ${signed(left.error)}.`
      : '',
    kind === 'axial' && inputs.zeroConfigured !== null && inputs.zeroMeasured !== null
      ? `Zero configured ${amount(inputs.zeroConfigured, 'V')}, measured ${amount(inputs.zeroMeasured, 'V')}.`
      : '',
    inputs.reading === null
      ? 'No present reading is given.'
      : `The panel shows ${amount(inputs.reading, unit ?? '')} now${really(inputs.realReading, unit)}.`,
  ];
  return parts.filter((part) => part !== '').join(' ');
}

function sure(uncertainty: number | null, coverage: number | null): string {
  return uncertainty === null
    ? ', its uncertainty not given'
    : ` ± ${percent(uncertainty)} (k = ${amount(coverage ?? NaN, '')})`;
}

function signed(error: number | null): string {
  return `${(error ?? 0) > 0 ? '+' : ''}${percent(error ?? NaN)}`;
}

function really(real: number | null, unit: string | null): string {
  return real === null ? '' : `, which is really ${amount(real, unit ?? '')}`;
}
