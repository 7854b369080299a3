import { factAt, factOf, factOfThreshold, type PlacedFact } from '../../model/findings.ts';
import type { Policy } from '../../model/policy.ts';
import {
  runUpOutcomes,
  runUpSeverity,
  type ResponseChannel,
  type RunUpChannel,
  type RunUpResult,
  type RunUpThreshold,
} from '../../model/runUp.ts';
import type { RunUpNotJudged } from '../../model/rules/runUpRules.ts';
import { severities } from '../../model/severity.ts';
import type { SpeedBook, SpeedSeries } from '../../read/runup/readRunUps.ts';
import { tagKey } from '../../read/tables/tagKey.ts';
import type { JudgedChannel } from '../channel/context.ts';
import { factorBetween } from '../replay/runningChannel.ts';
import { responseOf, type Response } from './responseOf.ts';
import { runUpChannel } from './runUpChannel.ts';
import { atRunningSpeed, lateAtSpeed } from './runningSpeed.ts';

/** Run-ups of judged channels; what is found of a channel is added to it. */
export function runUpBook(
  { runUps, responses, remarks }: SpeedBook,
  judged: readonly JudgedChannel[],
  policy: Policy,
): { readonly runUps: RunUpResult | null; readonly problems: readonly PlacedFact[] } {
  if (runUps.length + responses.length + remarks.length === 0) return { runUps: null, problems: [] };
  const problems: PlacedFact[] = [...remarks];
  const notJudged = (at: SpeedSeries, values: RunUpNotJudged): null => {
    problems.push(factAt(at, factOf('run-up-not-judged', 'warning', values)));
    return null;
  };
  const channelOf = (series: SpeedSeries): JudgedChannel | null => {
    const { tag, machine } = series;
    const named = judged.filter(({ result }) => tagKey(result.tag) === tagKey(tag));
    const own =
      machine === '' ? named : named.filter(({ result }) => tagKey(result.machine) === tagKey(machine));
    const [only] = own;
    if (!only) return notJudged(series, { kind: 'no channel', tag });
    return own.length > 1 ? notJudged(series, { kind: 'several machines', tag }) : only;
  };
  const known = new Map<JudgedChannel, { readonly series: SpeedSeries; readonly response: Response }>();
  const atSpeed: ResponseChannel[] = [];
  for (const series of responses) {
    const own = channelOf(series);
    if (!own || isOfUnknownUnit(series, own.result.sensitivity.unit, notJudged)) continue;
    const response = responseOf(own.result, series);
    if (typeof response === 'string') {
      const { tag } = series;
      const wanted = own.result.sensitivity.unit ?? '';
      notJudged(
        series,
        response === 'unit'
          ? { kind: 'unit', tag, unit: series.unit?.text ?? '', wanted }
          : { kind: response, tag },
      );
      continue;
    }
    known.set(own, { series, response });
    const running = atRunningSpeed(own.result, response);
    if (!running) continue;
    atSpeed.push(running);
    for (const fact of lateAtSpeed(own.result, running, policy)) own.facts.push(factAt(series, fact));
  }
  const channels: { readonly channel: RunUpChannel; readonly rank: number }[] = [];
  for (const series of runUps) {
    const own = channelOf(series);
    const channel = own && judgedRunUp(own, series, known.get(own)?.response, notJudged);
    if (!own || !channel) continue;
    for (const threshold of channel.thresholds) {
      const fact = factOfRunUp(own, channel, threshold);
      if (fact) own.ofVerdicts.push(fact);
    }
    channels.push({ channel, rank: rankOf(own, channel) });
  }
  const worstFirst = channels.toSorted((one, other) => one.rank - other.rank);
  return {
    runUps: { channels: worstFirst.map(({ channel }) => channel), responses: atSpeed },
    problems,
  };
}

function judgedRunUp(
  { result }: JudgedChannel,
  series: SpeedSeries,
  given: Response | undefined,
  notJudged: (at: SpeedSeries, values: RunUpNotJudged) => null,
): RunUpChannel | null {
  const { tag } = series;
  if (series.amplitudes === null) return notJudged(series, { kind: 'real or indicated', tag });
  if (result.kind === 'axial') return notJudged(series, { kind: 'position', tag });
  if (isOfUnknownUnit(series, result.unit, notJudged)) return null;
  const response = given ?? responseOf(result, undefined);
  if (typeof response === 'string' || result.sensitivity.configured === null)
    return notJudged(series, { kind: 'no sensitivity', tag });
  const { unit, detection, thresholds } = result;
  if (thresholds.every(({ setpoint }) => setpoint === null))
    return notJudged(series, { kind: 'no setpoint', tag });
  const factor = series.unit ? factorBetween(series.unit, unit, detection) : 1;
  if (factor === null)
    return notJudged(series, { kind: 'unit', tag, unit: series.unit?.text ?? '', wanted: unit ?? '' });
  const channel = runUpChannel(result, series, response, factor);
  if (!channel || channel.points.length < series.points.length)
    notJudged(series, { kind: 'beyond the record', tag });
  return channel;
}

/** Whether a unit in the headers of a series is not known, which is then said; `wanted` of its values. */
function isOfUnknownUnit(
  series: SpeedSeries,
  wanted: string | null,
  notJudged: (at: SpeedSeries, values: RunUpNotJudged) => null,
): boolean {
  const { tag, unknownUnit } = series;
  if (!unknownUnit) return false;
  notJudged(series, {
    kind: 'unit',
    tag,
    unit: unknownUnit.unit,
    wanted: unknownUnit.wanted ?? wanted ?? '',
  });
  return true;
}

function verdictOf({ result }: JudgedChannel, { name, multiplier }: RunUpThreshold) {
  return result.thresholds.find((one) => one.name === name && one.multiplier === multiplier)?.verdict;
}

function rankOf(own: JudgedChannel, { thresholds }: RunUpChannel): number {
  return Math.min(
    ...thresholds.map((threshold) => {
      const severity = runUpSeverity(threshold, verdictOf(own, threshold));
      const grave = severity === null ? severities.length : severities.indexOf(severity);
      return grave * runUpOutcomes.length + runUpOutcomes.indexOf(threshold.outcome);
    }),
  );
}

function factOfRunUp(
  own: JudgedChannel,
  channel: RunUpChannel,
  threshold: RunUpThreshold,
): PlacedFact | null {
  const { source, unit, peak, peakSpeed, points } = channel;
  const { setpoint, multiplier, multiplierSpeed, acts, should, realAtTrip, outcome } = threshold;
  const severity = runUpSeverity(threshold, verdictOf(own, threshold));
  if (severity === null) return null;
  const place = own.setpointPlace(threshold.name);
  const on = { source, setpoint, unit, multiplier, multiplierSpeed };
  if (outcome === 'no action' && should !== null) {
    const shownAtPeak = points.find(({ speed }) => speed === peakSpeed)?.shown ?? NaN;
    const values = { ...on, should, peak, peakSpeed, shownAtPeak };
    return factAt(place, factOfThreshold('run-up-no-action', severity, threshold, values));
  }
  if (outcome === 'late' && acts !== null && should !== null && realAtTrip !== null)
    return factAt(
      place,
      factOfThreshold('run-up-late', severity, threshold, { ...on, acts, should, realAtTrip }),
    );
  return acts === null
    ? null
    : factAt(place, factOfThreshold('run-up-early', severity, threshold, { ...on, acts }));
}
