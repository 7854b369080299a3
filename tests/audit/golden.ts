import type { ThresholdResult, ThresholdVerdict } from '../../src/audit/model/threshold.ts';
import type { Finding, Place } from '../../src/audit/model/findings.ts';
import { parseColumnMap } from '../../src/audit/model/columnMap.ts';
import { expect } from 'vitest';
import type { Workbook } from '../../src/cells/sheet.ts';
import { audit } from '../../src/audit/audit.ts';
import { parsePolicy } from '../../src/audit/model/policy.ts';
import type {
  AsFoundResult,
  Attention,
  ChannelResult,
  DriftResult,
  DynamicResult,
  Exposure,
  GroupResult,
  NotRead,
  RecordResult,
  ReplayedThreshold,
  RunUpThreshold,
  Report,
  Summary,
} from '../../src/audit/model/report.ts';

/** Numbers and words of a threshold that a case knows; what it leaves out is not looked at. */
type ExpectedThreshold = Partial<ThresholdResult>;

interface ExpectedChannel {
  readonly tag: string;
  readonly verdict: ThresholdVerdict;
  /** By name, and ` ×3` for the entry with that multiplier; the entries must be just these, in any order, where given. */
  readonly thresholds?: Readonly<Record<string, ExpectedThreshold>>;
  /** Every finding, in any order, as `rule @ Sheet!F14`; none where left out. */
  readonly findings?: readonly string[];
  /** What is known of some of them, as they are written there. */
  readonly told?: Readonly<Record<string, Partial<Finding>>>;
  readonly is?: Partial<
    Pick<
      ChannelResult,
      'machine' | 'location' | 'kind' | 'unit' | 'detection' | 'state' | 'inBypass' | 'source'
    >
  >;
  readonly sensitivity?: Partial<ChannelResult['sensitivity']>;
  readonly inputs?: Partial<ChannelResult['inputs']>;
  /** Parts of the record, and its thresholds as `danger ×1` → acts at, or `[largest indication]`. */
  readonly record?: Partial<RecordResult> | null;
  readonly onCurve?: Readonly<Record<string, number | readonly [number | null]>>;
  readonly dynamic?: Partial<DynamicResult> | null;
  /** What was found where it was measured again: parts of it, and its thresholds like those of now. */
  readonly asFound?:
    | (Partial<Omit<AsFoundResult, 'thresholds' | 'sensitivity' | 'record'>> & {
        readonly record?: Partial<RecordResult> | null;
      })
    | null;
  readonly asFoundSensitivity?: Partial<ChannelResult['sensitivity']>;
  readonly asFoundThresholds?: Readonly<Record<string, ExpectedThreshold>>;
  /** All of it, in order, where given. */
  readonly exposure?: readonly Exposure[];
  readonly drift?: Partial<DriftResult> | null;
}

/** A small workbook and what its audit has to say, worked out by hand. */
export interface GoldenCase {
  /** The arithmetic or the source behind what is expected, with its grade. */
  readonly because: string;
  readonly book: Workbook;
  /** `false`: it has not two tables that are found by their standard headers. */
  readonly standard?: false;
  /** As they are parsed from JSON. */
  readonly policy?: unknown;
  readonly map?: unknown;
  /** Texts in the message with which the audit is refused. */
  readonly refused?: readonly string[];
  /** Every channel, worst first. */
  readonly channels?: readonly ExpectedChannel[];
  readonly groups?: readonly (Partial<Omit<GroupResult, 'findings'>> & {
    readonly findings?: readonly string[];
  })[];
  /** Every problem, in any order, as `rule @ Sheet!F14`. */
  readonly problems?: readonly string[];
  readonly summary?: Partial<Summary>;
  /** All that was not read, in any order, as `column full scale @ Sheet!F14`. */
  readonly notRead?: readonly string[];
  /** All that needs action, in its order, as `critical late V-1 danger`, where given. */
  readonly attention?: readonly string[];
  /** Recorded readings: what is known of each channel’s thresholds, by tag and name, late in s. */
  readonly replay?: Readonly<Record<string, Readonly<Record<string, Partial<ReplayedThreshold>>>>>;
  /** Run-ups: what is known of each channel’s thresholds, by tag and name. */
  readonly runUps?: Readonly<Record<string, Readonly<Record<string, Partial<RunUpThreshold>>>>>;
  /** Texts that must stand in some message of the report. */
  readonly says?: readonly RegExp[];
  /** Texts that must stand in some headline of what needs action. */
  readonly headlines?: readonly RegExp[];
}

/** The day of every audit in these tests. */
export const now = new Date('2026-01-01T12:00:00Z');

export function auditCase({ book, policy = {}, map = {} }: GoldenCase): Report {
  return audit(book, { policy: parsePolicy(policy), map: parseColumnMap(map), now });
}

/** A finding or problem as the cases write it. */
export function at({ rule, sheet, row, column }: Place & { readonly rule: string }): string {
  return `${rule} @ ${sheet}!${column}${row}`;
}

/** Something that was not read, as the cases write it. */
function unread({ what, looksLike, sheet, row, column }: NotRead): string {
  return `${what} ${looksLike} @ ${sheet}!${column}${row}`;
}

/** An entry of what needs action, as the cases write it. */
function entry({ severity, code, subject: { tag, group, threshold, multiplier }, rule }: Attention): string {
  const times = multiplier === null || multiplier === 1 ? null : `×${multiplier}`;
  const words = [severity, code, tag === '' ? null : tag, group, threshold, times, rule];
  return words.filter((word) => word !== null).join(' ');
}

/** Checks a report against what a case knows. */
export function check(golden: GoldenCase): void {
  if (golden.refused) {
    let message = '(not refused)';
    try {
      auditCase(golden);
    } catch (error) {
      expect(error).toHaveProperty('name', 'AuditRefused');
      message = String(error);
    }
    for (const text of golden.refused) expect(message).toContain(text);
    return;
  }
  const report = auditCase(golden);
  const { channels = [], groups = [], problems = [], summary = {}, says = [] } = golden;
  expect(report.channels.map(({ tag, verdict }) => `${tag} ${verdict}`)).toEqual(
    channels.map(({ tag, verdict }) => `${tag} ${verdict}`),
  );
  channels.forEach((expected, index) => {
    checkChannel(report.channels[index]!, expected);
  });
  expect(report.groups.map(({ name, threshold }) => `${name} ${threshold}`)).toEqual(
    groups.map(({ name, threshold }) => `${name ?? ''} ${threshold ?? ''}`),
  );
  groups.forEach(({ findings = [], ...expected }, index) => {
    const { findings: found, ...group } = report.groups[index]!;
    expect(found.map(at).toSorted()).toEqual(findings.toSorted());
    checkNumbers(group, expected, `group ${group.name} ${group.threshold}`);
  });
  expect(report.problems.map(at).toSorted()).toEqual(problems.toSorted());
  checkNumbers(report.summary, summary, 'summary');
  expect(report.notRead.map(unread).toSorted()).toEqual((golden.notRead ?? []).toSorted());
  if (golden.attention) expect(report.attention.map(entry)).toEqual(golden.attention);
  if (golden.replay) checkReplay(report, golden.replay);
  if (golden.runUps) checkRunUps(report, golden.runUps);
  const messages = [
    ...report.channels.flatMap(({ findings }) => findings),
    ...report.groups.flatMap(({ findings }) => findings),
    ...report.problems,
  ].map(({ message }) => message);
  for (const text of says) expect(messages).toContainEqual(expect.stringMatching(text));
  const headlines = report.attention.map(({ headline }) => headline);
  for (const text of golden.headlines ?? []) expect(headlines).toContainEqual(expect.stringMatching(text));
}

function checkReplay({ replay }: Report, expected: NonNullable<GoldenCase['replay']>): void {
  expect(replay?.channels.map(({ tag }) => tag).toSorted()).toEqual(Object.keys(expected).toSorted());
  for (const { tag, thresholds } of replay?.channels ?? [])
    for (const [name, known] of Object.entries(expected[tag] ?? {}))
      checkNumbers(thresholds.find((one) => one.name === name) ?? {}, known, `${tag} ${name} in the record`);
}

function checkRunUps({ runUps }: Report, expected: NonNullable<GoldenCase['runUps']>): void {
  expect(runUps?.channels.map(({ tag }) => tag).toSorted()).toEqual(Object.keys(expected).toSorted());
  for (const { tag, thresholds } of runUps?.channels ?? [])
    for (const [name, known] of Object.entries(expected[tag] ?? {})) {
      const found = thresholds.find(
        (one) => name === `${one.name}${one.multiplier === 1 ? '' : ` ×${one.multiplier}`}`,
      );
      checkNumbers(found ?? {}, known, `${tag} ${name} on its run-up`);
    }
}

function checkChannel(channel: ChannelResult, expected: ExpectedChannel): void {
  const { tag, thresholds, findings = [], is = {}, sensitivity = {}, inputs = {} } = expected;
  expect(channel.findings.map(at).toSorted(), `findings of ${tag}`).toEqual(findings.toSorted());
  for (const [where, known] of Object.entries(expected.told ?? {}))
    checkNumbers(channel.findings.find((one) => at(one) === where) ?? {}, known, `${tag} ${where}`);
  checkNumbers(channel, is, tag);
  checkNumbers(channel.sensitivity, sensitivity, `${tag} sensitivity`);
  checkNumbers(channel.inputs, inputs, `${tag} inputs`);
  checkPart(channel.record, expected.record, `record of ${tag}`);
  checkPart(channel.dynamic, expected.dynamic, `check of ${tag}`);
  checkPart(channel.drift, expected.drift, `drift of ${tag}`);
  if (expected.onCurve) {
    const acts = channel.record!.thresholds.map(({ name, multiplier, onCurve, largestIndicated }) => [
      `${name} ×${multiplier}`,
      onCurve ?? [largestIndicated],
    ]);
    expect(acts.map(([name]) => name)).toEqual(Object.keys(expected.onCurve));
    checkNumbers(Object.fromEntries(acts) as object, expected.onCurve, `${tag} on its curve`);
  }
  checkPart(channel.asFound, expected.asFound, `${tag} as found`);
  checkPart(channel.asFound?.sensitivity ?? null, expected.asFoundSensitivity, `${tag} sensitivity as found`);
  if (expected.exposure) expect(channel.exposure, `exposure of ${tag}`).toEqual(expected.exposure);
  if (expected.asFoundThresholds)
    checkThresholds(channel.asFound?.thresholds ?? [], expected.asFoundThresholds, `${tag} as found`);
  if (thresholds) checkThresholds(channel.thresholds, thresholds, tag);
}

function checkThresholds(
  actual: readonly ThresholdResult[],
  thresholds: Readonly<Record<string, ExpectedThreshold>>,
  tag: string,
): void {
  const named = new Map(actual.map((threshold) => [nameOf(threshold), threshold]));
  expect([...named.keys()].toSorted()).toEqual(Object.keys(thresholds).toSorted());
  for (const [name, numbers] of Object.entries(thresholds)) {
    checkNumbers(named.get(name)!, numbers, `${tag} ${name}`);
  }
}

function checkPart(actual: object | null, expected: object | null | undefined, what: string): void {
  if (expected === undefined) return;
  if (expected === null) expect(actual, what).toBeNull();
  else checkNumbers(actual ?? {}, expected, what);
}

function nameOf({ name, multiplier }: ThresholdResult): string {
  return multiplier === 1 ? name : `${name} ×${multiplier}`;
}

/** Numbers agree to 1e-9 of the expected one, anything else exactly. */
function checkNumbers(actual: object, expected: object, what: string): void {
  const given = new Map(Object.entries(actual));
  for (const [key, value] of Object.entries(expected) as [string, unknown][]) {
    const found: unknown = given.get(key);
    if (typeof value === 'number' && typeof found === 'number') {
      const off = Math.abs(found - value);
      expect(off, `${what}: ${key} is ${found}, not ${value}`).toBeLessThanOrEqual(1e-9 * Math.abs(value));
    } else if (typeof value === 'object' && value !== null && typeof found === 'object' && found !== null) {
      checkNumbers(found, value, `${what}: ${key}`);
      expect(Object.keys(found).toSorted()).toEqual(expect.arrayContaining(Object.keys(value).toSorted()));
    } else {
      expect(found, `${what}: ${key}`).toEqual(value);
    }
  }
}
