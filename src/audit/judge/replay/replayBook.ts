import { factAt, factOfThreshold, type PlacedFact } from '../../model/findings.ts';
import type { Policy } from '../../model/policy.ts';
import {
  replayOutcomes,
  replaySeverity,
  type ReplayedChannel,
  type ReplayedThreshold,
  type ReplayResult,
} from '../../model/replay.ts';
import { severities } from '../../model/severity.ts';
import type { TrendSource } from '../../model/trend.ts';
import type { Steps } from '../../model/steps.ts';
import type { JudgedChannel } from '../channel/context.ts';
import { replayTrend } from './replayTrends.ts';

/** Recorded readings replayed over judged channels; what is found of a channel is added to it. */
export function* replayBook(
  sources: readonly TrendSource[],
  judged: readonly JudgedChannel[],
  policy: Policy,
): Steps<void, { readonly replay: ReplayResult | null; readonly problems: readonly PlacedFact[] }> {
  if (sources.length === 0) return { replay: null, problems: [] };
  const byResult = new Map(judged.map((channel) => [channel.result, channel]));
  const results = [...byResult.keys()];
  const problems: PlacedFact[] = [];
  const channels: { readonly channel: ReplayedChannel; readonly rank: number }[] = [];
  const read: ReplayResult['sources'][number][] = [];
  for (const source of sources) {
    const found = yield* replayTrend(source, results, policy.replay);
    problems.push(...found.problems);
    if (found.source) read.push(found.source);
    for (const { of, result } of found.channels) {
      const own = byResult.get(of);
      for (const threshold of result.thresholds) {
        const fact = own && factOf(own, result, threshold);
        if (fact) own.ofVerdicts.push(fact);
      }
      channels.push({ channel: result, rank: rankOf(own, result) });
    }
  }
  const { between } = policy.replay;
  const worstFirst = channels.toSorted((one, other) => one.rank - other.rank);
  return { replay: { between, sources: read, channels: worstFirst.map(({ channel }) => channel) }, problems };
}

/** Verdict of a channel's plain threshold. */
function verdictOf({ result }: JudgedChannel, { name }: ReplayedThreshold) {
  return result.thresholds.find((one) => one.name === name && one.multiplier === 1)?.verdict;
}

/** Gravest first; of equals the worse outcome. */
function rankOf(own: JudgedChannel | undefined, { thresholds }: ReplayedChannel): number {
  return Math.min(
    ...thresholds.map((threshold) => {
      const severity = replaySeverity(threshold, own && verdictOf(own, threshold));
      const grave = severity === null ? severities.length : severities.indexOf(severity);
      return grave * replayOutcomes.length + replayOutcomes.indexOf(threshold.outcome);
    }),
  );
}

function factOf(
  own: JudgedChannel,
  { source, unit }: ReplayedChannel,
  threshold: ReplayedThreshold,
): PlacedFact | null {
  const { name, setpoint, shouldActAt, acted, should, late, outcome } = threshold;
  const severity = replaySeverity(threshold, verdictOf(own, threshold));
  if (severity === null) return null;
  const about = { name, multiplier: 1 };
  const levels = { source, setpoint, shouldActAt, unit };
  const place = own.setpointPlace(name);
  const due = should.proven?.time ?? null;
  const then = acted.proven?.time ?? null;
  if (outcome === 'did not act' && due !== null)
    return factAt(place, factOfThreshold('replay-did-not-act', severity, about, { ...levels, should: due }));
  if (outcome === 'late' && due !== null && then !== null && late !== null)
    return factAt(
      place,
      factOfThreshold('replay-acted-late', severity, about, { ...levels, late, acted: then, should: due }),
    );
  if (outcome === 'not known')
    return factAt(place, factOfThreshold('replay-not-proven', severity, about, { ...levels, should: due }));
  return then === null
    ? null
    : factAt(place, factOfThreshold('replay-acted-early', severity, about, { ...levels, acted: then }));
}
