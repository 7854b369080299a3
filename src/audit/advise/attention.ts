import {
  attentionCodes,
  noNumbers,
  type Attention,
  type AttentionCode,
  type ChannelResult,
  type GroupResult,
  type NotRead,
} from '../model/report.ts';
import { severityOf } from '../model/severity.ts';
import { trips, type ThresholdResult } from '../model/threshold.ts';
import type { PlacedFact } from '../model/findings.ts';
import { placesOf, type Advised, type AdvisedChannel, type UnjudgedSettings } from './advised.ts';
import { reportedRule } from './messages/messages.ts';
import { ofReplay } from './replayEntries.ts';
import { ofRunUps } from './runUpEntries.ts';
import { ofQuestion } from './questionEntry.ts';
import { sentencesOf, type EntryFacts } from './sentences.ts';

/**
 * What needs action, gravest first: readings that are past what was meant, then what is critical, then the rest; by kind,
 * and of one kind in the order of the channels. The one place where it is decided what needs action and how grave it is.
 */
export function attentionOf({
  channels,
  groups,
  unjudged,
  notRead,
  questions,
  replay,
  runUps,
  problems,
}: Advised): Attention[] {
  const all = [
    ...channels.flatMap(ofChannel),
    ...groups.flatMap(ofGroup),
    ...unjudged.map(ofUnjudged),
    ...notRead.map(ofNotRead),
    ...questions.filter(({ needed }) => needed).map((one) => ofQuestion(one, channels)),
    ...ofReplay(replay, channels),
    ...ofRunUps(runUps, channels),
    ...problems.flatMap(ofProblem),
  ];
  return all
    .toSorted((one, other) => byUrgency(one.entry, other.entry))
    .map((one): Attention => Object.assign(one.entry, sentencesOf(one)));
}

const codeAt = new Map(attentionCodes.map((code, at) => [code, at]));

/**
 * The order of what needs action, in one audit or in several: readings that are past what was meant, then what is critical,
 * then the rest; within each by the order of `attentionCodes`.
 */
export function byUrgency(one: Graded, other: Graded): number {
  return place(one) - place(other);
}

type Graded = Pick<Attention, 'severity' | 'code'>;

function place({ code, severity }: Graded): number {
  const grave = code === 'past-danger' || code === 'past-alert' ? 0 : severity === 'critical' ? 1 : 2;
  return grave * attentionCodes.length + (codeAt.get(code) ?? 0);
}

function ofChannel({ result, facts, invalid }: AdvisedChannel): EntryFacts[] {
  const entries: EntryFacts[] = [];
  const { thresholds, inBypass } = result;
  const danger = thresholds.find(({ name }) => name === 'danger');
  if (inBypass === true) entries.push(aboutChannel(result, 'in-bypass', 'critical'));
  for (const threshold of thresholds) {
    const { name, verdict, multiplier, obstacles } = threshold;
    const about = (code: AttentionCode, severity: Attention['severity']): void => {
      entries.push(aboutThreshold(result, threshold, code, severity, invalid));
    };
    if (threshold.alreadyThere === true && multiplier === 1)
      about(trips(name) ? 'past-danger' : 'past-alert', trips(name) ? 'critical' : 'warning');
    const severity = severityOf(name, verdict);
    const saidOfDanger =
      verdict === 'incomplete' &&
      threshold !== danger &&
      danger?.verdict === 'incomplete' &&
      String(danger.obstacles) === String(obstacles);
    if (verdict !== 'within' && severity !== null && !saidOfDanger) about(verdict, severity);
    if (threshold.beyondLimit === 'yes') about('beyond-limit', 'critical');
    else if (threshold.beyondLimit === 'may') about('may-be-beyond-limit', 'critical');
  }
  for (const fact of facts) {
    if (fact.severity === 'note' || invalid.includes(fact)) continue;
    entries.push(ofFinding(result, fact, fact.severity));
  }
  return entries;
}

function aboutThreshold(
  channel: ChannelResult,
  threshold: ThresholdResult,
  code: AttentionCode,
  severity: Attention['severity'],
  invalid: readonly PlacedFact[],
): EntryFacts {
  const { name, multiplier, setpoint, effective, low, high, panel } = threshold;
  const past = code === 'past-danger' || code === 'past-alert';
  const { machine, tag, unit, inputs } = channel;
  return {
    channel,
    threshold,
    invalid,
    entry: {
      severity,
      code,
      subject: { machine, tag, threshold: name, multiplier, group: null },
      set: setpoint === null ? null : multiplier * setpoint,
      real: past ? threshold.real : effective,
      low: past ? null : low,
      high: past ? null : high,
      panel: past ? inputs.reading : panel,
      limit: trips(name) ? inputs.limit : null,
      unit,
      rule: null,
      places: placesOf(channel),
    },
  };
}

function aboutChannel(
  channel: ChannelResult,
  code: AttentionCode,
  severity: Attention['severity'],
): EntryFacts {
  const { machine, tag, unit } = channel;
  return {
    channel,
    entry: {
      set: null,
      real: null,
      low: null,
      high: null,
      panel: null,
      limit: null,
      unit,
      rule: null,
      severity,
      code,
      subject: { machine, tag, threshold: null, multiplier: null, group: null },
      places: placesOf(channel),
    },
  };
}

function ofFinding(channel: ChannelResult, fact: PlacedFact, severity: Attention['severity']): EntryFacts {
  const { entry, ...of } = aboutChannel(channel, 'finding', severity);
  const { threshold, multiplier, sheet, row, column } = fact;
  const subject = { ...entry.subject, threshold, multiplier };
  return {
    ...of,
    fact,
    entry: { ...entry, subject, rule: reportedRule(fact), places: [{ sheet, row, column }] },
  };
}

function ofGroup(group: GroupResult): EntryFacts[] {
  const { machine, name, threshold, multiplier, intended, effective, limit, unit } = group;
  const grave = trips(threshold) ? 'critical' : 'warning';
  const about = (code: AttentionCode): EntryFacts => ({
    group,
    entry: {
      ...noNumbers,
      severity: grave,
      code,
      subject: { machine, tag: '', threshold, multiplier, group: name },
      set: intended,
      real: effective,
      limit,
      unit,
      places: group.findings.map(({ sheet, row, column }) => ({ sheet, row, column })),
    },
  });
  if (!group.canTrip) return [about(trips(threshold) ? 'group-cannot-trip' : 'group-cannot-act')];
  if (group.liveVoting === 'tripped')
    return [{ ...about('group-tripped'), entry: { ...about('group-tripped').entry, severity: 'warning' } }];
  return [
    ...(group.late ? [about('group-late')] : []),
    ...(group.beyondLimit ? [about('group-beyond-limit')] : []),
  ];
}

function ofUnjudged({ tag, machine, danger, unit, place: at, fact }: UnjudgedSettings): EntryFacts {
  return {
    fact,
    entry: {
      ...noNumbers,
      severity: 'critical',
      code: 'incomplete',
      subject: { machine, tag, threshold: 'danger', multiplier: 1, group: null },
      set: danger,
      unit,
      rule: reportedRule(fact),
      places: [{ ...at, column: '' }],
    },
  };
}

function ofNotRead(notRead: NotRead): EntryFacts {
  const { severity, sheet, row, column } = notRead;
  return {
    notRead,
    entry: {
      ...noNumbers,
      severity,
      code: 'not-read',
      subject: { machine: '', tag: '', threshold: null, multiplier: null, group: null },
      places: [{ sheet, row, column }],
    },
  };
}

function ofProblem(fact: PlacedFact): EntryFacts[] {
  const { severity, sheet, row, column } = fact;
  if (severity === 'note') return [];
  return [
    {
      fact,
      entry: {
        ...noNumbers,
        severity,
        code: 'problem',
        subject: { machine: '', tag: '', threshold: null, multiplier: null, group: null },
        rule: reportedRule(fact),
        places: [{ sheet, row, column }],
      },
    },
  ];
}
