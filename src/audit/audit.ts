import type { Workbook } from '../cells/sheet.ts';
import { nothingRead } from './advise/nothingRead.ts';
import type { AdvisedChannel } from './advise/advised.ts';
import { attentionOf } from './advise/attention.ts';
import { finished } from './advise/messages/messages.ts';
import { summarise } from './advise/summary.ts';
import { basisOf } from './evidence/basis.ts';
import { policyFingerprint } from './evidence/fingerprint.ts';
import { inputsFingerprint } from './evidence/inputsFingerprint.ts';
import type { Context, JudgedChannel } from './judge/channel/context.ts';
import { machineChances } from './judge/groups/machineChances.ts';
import { runUpBook } from './judge/runup/runUpBook.ts';
import { replayBook } from './judge/replay/replayBook.ts';
import { joinGroups } from './judge/channel/joinGroups.ts';
import { judgeChannel } from './judge/channel/judgeChannel.ts';
import {
  joinProblem,
  unmatchedSettings,
  type UnjudgedRow,
  type UnmatchedSettings,
  unjoinedChannel,
} from './judge/channel/unmatchedRows.ts';
import type { Member } from './judge/groups/members.ts';
import { caution } from './model/caution.ts';
import type { ColumnMap } from './model/columnMap.ts';
import type { PlacedFact } from './model/findings.ts';
import { worstFirst } from './model/order.ts';
import { defaultPolicy, type Policy } from './model/policy.ts';
import type { ChannelResult, Report } from './model/report.ts';
import type { Snapshot } from './model/snapshot.ts';
import { asPart, finish } from './model/steps.ts';
import type { TrendSource } from './model/trend.ts';
import { version } from './model/version.ts';
import { historyProblems } from './read/history/reading.ts';
import { unitWatch, watchChannelRow, watchSettingsRow } from './read/join/mixedUnits.ts';
import { assumedUnits, onlyTag, untaggedRows } from './read/join/problems.ts';
import { isOnlyTag, looksLikeHeading, tagAt } from './read/join/tagIndex.ts';
import { pairReader } from './read/pairedRows.ts';
import { readBook } from './read/readBook.ts';
import { recordProblems } from './read/records/rawRecord.ts';
import { readRunUps } from './read/runup/readRunUps.ts';
import type { AssumedUnit } from './read/rows/units.ts';
import { sheetSource } from './read/trend/findTrends.ts';
import { isSameTable, type Tables } from './read/tables/found.ts';
import type { Question } from './read/understand/questions/question.ts';
import type { Understand } from './read/understand/understand.ts';
import { byTag } from './since/byTag.ts';
import { changesInSteps } from './since/changesInSteps.ts';
import { snapshotOf } from './since/fromReport.ts';

/** A report with its questions as they were found. */
export type AuditedReport = Report<Question>;

export interface AuditOptions {
  readonly policy?: Policy;
  readonly map?: ColumnMap;
  /** Time of the audit; calibrations are as old as they are then. */
  readonly now?: Date;
  /** An earlier audit to compare this one with. */
  readonly before?: Snapshot;
  /** How the workbook is understood where its headers do not say it; a screen that also asks remembers what it understood. */
  readonly understandBy?: Understand;
  /** Recorded readings to replay, beside those in the workbook. */
  readonly replay?: TrendSource;
}

type Findings = Pick<ChannelResult, 'findings'>;

/** Rows between two reports of progress. */
const stride = 250;
/** Part of the work after which all channels are worked out; what is left are settings without one, and the groups. */
const channelsDone = 0.8;

/**
 * Audits a workbook: finds both tables, joins their rows by tag, works out every threshold and group, and applies every
 * rule. Nothing is dropped: a row that can't be used is in the report as incomplete, anything else in `problems`.
 * @throws NotUnderstood where nothing can be judged before a person has answered; it holds what to ask and a proposal.
 * @throws AuditRefused where the tables can't be told.
 */
export function audit(workbook: Workbook, options: AuditOptions = {}): AuditedReport {
  return finish(auditInSteps(workbook, options));
}

/** The same in steps, so that a screen can stay alive or stop it: yields the part done, from 0 to 1. */
export function* auditInSteps(
  workbook: Workbook,
  options: AuditOptions = {},
): Generator<number, AuditedReport, void> {
  const { policy = defaultPolicy, map = {}, now = new Date(), before, replay: recorded } = options;
  const today = Math.floor(now.getTime() / 86_400_000);
  const book = yield* asPart(readBook(workbook, map, today, options.understandBy), () => 0);
  if ('refusal' in book) throw nothingRead(book);
  const { tables, records, history, notRead: unread } = book;
  const { channels: channelIndex, settings: settingsIndex } = book.index;
  const isTag = (key: string): boolean => channelIndex.hasTag(key);
  const questions = book.understood?.understanding.questions ?? [];
  const inputs = yield* asPart(inputsFingerprint(book, map), () => 0);

  const assumed = new Map<string, AssumedUnit>();
  const context: Context = {
    tables,
    policy,
    records,
    readings: { history, before: before ? byTag(before) : new Map() },
    today,
    assume: (unit) => {
      const key = `${unit.table} ${unit.column}`;
      if (!assumed.has(key)) assumed.set(key, unit);
    },
  };
  const apart = !isSameTable(tables.channels, tables.settings);
  const problems: PlacedFact[] = [...book.remarks];
  const watches = { channels: unitWatch(tables.channels), settings: unitWatch(tables.settings) };
  const reader = pairReader(tables);
  const judged: JudgedChannel[] = [];
  const joined = new Set<number>();

  for (const [done, row] of channelIndex.tagged.entries()) {
    if (done % stride === 0) yield (channelsDone * done) / channelIndex.tagged.length;
    const tag = tagAt(tables.channels, row);
    const key = channelIndex.keyOf(row);
    const settingsRows = settingsIndex.rowsOf(key);
    if (isHeading(tables, row, tag, settingsRows)) {
      problems.push(onlyTag(tables.channels, row, tag));
      continue;
    }
    const trouble = joinProblem(row, tag, channelIndex.rowsOf(key), settingsRows, tables);
    const [settingsRow] = settingsRows;
    if (trouble || settingsRow === undefined) {
      const channelRow = reader.channelRow(row);
      watchChannelRow(watches.channels, channelRow);
      judged.push(unjoinedChannel(channelRow, trouble, tables));
      continue;
    }
    const pair = reader.pair(row, settingsRow);
    joined.add(settingsRow);
    watchChannelRow(watches.channels, pair.row);
    watchSettingsRow(watches.settings, pair.settings);
    judged.push(judgeChannel(pair, context));
  }

  const unmatched = yield* unmatchedInSteps(tables, settingsIndex, channelIndex, joined, reader.settingsRow);
  problems.push(...recordProblems(records, isTag));
  problems.push(...historyProblems(history, isTag));
  problems.push(...watches.channels.problems(), ...watches.settings.problems());
  problems.push(...assumedUnits(tables, assumed.values()));
  const joinedGroups = yield* asPart(
    joinGroups(judged, apart ? unmatched.members : [], policy),
    (part) => channelsDone + (1 - channelsDone) * part,
  );
  problems.push(...joinedGroups.problems);
  const groups = joinedGroups.groups.map(({ result, facts }) => withFindings(result, facts));
  const machines = machineChances(
    joinedGroups.groups.flatMap(({ result: { machine, multiplier, chance }, correctable: group }) =>
      group && multiplier === 1 ? [{ machine, group, uncertain: chance !== null }] : [],
    ),
  );
  const sources = [...book.trends.map(sheetSource), ...(recorded ? [recorded] : [])];
  const { replay, problems: ofTrends } = yield* asPart(replayBook(sources, judged, policy), () => 1);
  problems.push(...ofTrends);
  const { runUps, problems: ofRunUps } = runUpBook(readRunUps(book.againstSpeed), judged, policy);
  problems.push(...ofRunUps);
  yield 1;
  const advised = judged.map(({ result, ofVerdicts, facts, invalid }): AdvisedChannel => ({
    result: withFindings(result, [...ofVerdicts, ...facts]),
    facts,
    invalid,
  }));
  const byResult = new Map(advised.map((channel) => [channel.result, channel]));
  const channels = worstFirst([...byResult.keys()]);
  const attention = attentionOf({
    channels: channels.flatMap((result) => byResult.get(result) ?? []),
    groups,
    unjudged: apart ? unmatched.unjudged : [],
    notRead: unread,
    questions,
    replay,
    runUps,
    problems,
  });
  yield 1;
  const untagged = [
    ...untaggedRows(tables.channels, channelIndex),
    ...(apart ? untaggedRows(tables.settings, settingsIndex) : []),
  ];
  const report: AuditedReport = {
    schema: 'tripdrift-report/2',
    version,
    input: workbook.name,
    generated: now.toISOString(),
    policy,
    fingerprint: { inputs, policy: policyFingerprint(policy) },
    basis: basisOf(workbook, book, map, before, recorded?.name ?? null),
    summary: summarise(channels, groups, unread, attention),
    attention,
    channels,
    groups,
    machines,
    notRead: unread,
    problems: finished([...problems, ...untagged, ...(apart ? unmatched.problems : [])]),
    questions,
    proposal: book.understood?.understanding.proposal ?? null,
    columns: book.columns,
    runUps,
    replay,
    since: null,
    caution,
  };
  if (!before) return report;
  return { ...report, since: yield* asPart(changesInSteps(before, snapshotOf(report)), () => 1) };
}

/** A result completed in place: a copy of so many fields takes several times the time and room, which large workbooks feel. */
function withFindings<T extends object>(result: T, facts: readonly PlacedFact[]): T & Findings {
  return Object.assign(result, { findings: finished(facts) });
}

/** As `unmatchedSettings`, some rows at a time. */
function* unmatchedInSteps(
  ...[tables, settings, ...rest]: Parameters<typeof unmatchedSettings>
): Generator<number, UnmatchedSettings, void> {
  const problems: PlacedFact[] = [];
  const unjudged: UnjudgedRow[] = [];
  const members: Member[] = [];
  for (let from = 0; from < settings.tagged.length; from += stride) {
    const some = { ...settings, tagged: settings.tagged.slice(from, from + stride) };
    const found = unmatchedSettings(tables, some, ...rest);
    problems.push(...found.problems);
    unjudged.push(...found.unjudged);
    members.push(...found.members);
    yield channelsDone;
  }
  return { problems, unjudged, members };
}

/** Whether a row of the channel list is a heading or remark: nothing but a text in the tag column, and no settings for it. */
function isHeading(tables: Tables, row: number, tag: string, settingsRows: readonly number[]): boolean {
  if (tables.channels.origin || !isOnlyTag(tables.channels, row)) return false;
  if (!settingsRows.every((other) => isOnlyTag(tables.settings, other))) return false;
  const inOther = settingsRows.length > 0 && !isSameTable(tables.channels, tables.settings);
  return looksLikeHeading(tag, inOther);
}
