import { describe, expect, it } from 'vitest';
import type { ChannelResult } from '../../src/audit/model/report.ts';
import { machines } from '../../src/tools/demo/station/station.ts';
import { auditedOn } from './files.ts';
import { ruleNames, rulesIn } from './ruleNames.ts';

const report = auditedOn('2026-12-01');

/** Rules that the demo leaves out, each with the reason. */
const leftOut: Readonly<Record<string, string>> = {
  'hidden-sheet': 'a reader of the demo must see both tables',
  'row-below-table': 'both tables of the demo are plain ranges, as most people keep them',
  ...Object.fromEntries(
    [
      'gap-outside-record',
      'record-as-left-of-another-day',
      'record-not-falling',
      'record-of-another-kind',
      'record-point-left-out',
      'record-sorted',
      'record-unit-missing',
      'record-without-channel',
      'record-without-gap-voltage',
      'record-without-tag',
      'records-of-one-point',
      'sensitivity-from-record',
    ].map((rule) => [rule, 'one slip of a record is enough for a demo; golden cases show the others']),
  ),
  'runout-large': 'shafts of the demo are true; a golden case shows one that is not',
  'vector-not-whole': 'the demo keeps no slow-roll vectors; a golden case shows one that lacks a part',
  'record-read-up-and-down':
    'the records of the demo were read one way, as most are; a golden case shows one read up and down',
  'monitor-gain-off':
    'a monitor that is off would hide the chains behind it in a demo about chains; a golden case shows it',
  'loop-ends-not-used':
    'the demo shows a loop whose ends were measured and are good; a golden case shows those that can’t be used',
  'as-left-zero-not-measured':
    'the demo shows a position channel whose zero was measured again; golden cases show the other',
  'detection-not-said': 'every set point of the demo says its detection; a golden case shows the other',
  'multiplied-outside-fault-limits':
    'the demo shows it at the plain set point; a golden case shows the other',
  'tables-contradict':
    'one value in the other table is enough for a demo; a golden case shows two that differ',
  'group-tripped':
    'the system of the demo lets no member out of service vote; a golden case shows one that does',
  'history-has-newer-reading':
    'a demo judged by old readings would tell its other stories wrongly; a golden case shows it',
  'history-without-channel': 'one slip in a history is enough for a demo; a golden case shows the other',
  ...Object.fromEntries(
    [
      'kind-against-unit',
      'left-aside',
      'lists-differ',
      'machine-not-said',
      'machine-of-list',
      'meaning-not-certain',
      'number-in-doubt',
      'record-of-several-machines',
      'said-blank',
      'share-of-full-scale',
      'share-without-full-scale',
      'unit-in-cell',
    ].map((rule) => [rule, 'the demo is kept in two standard tables; golden cases show other lists']),
  ),
  ...Object.fromEntries(
    [
      'not-replayed',
      'replay-acted-early',
      'replay-did-not-act',
      'replay-not-proven',
      'run-up-early',
      'run-up-not-judged',
      'run-up-row-left-out',
      'late-at-running-speed',
      'trend-columns-not-read',
      'trend-readings-unknown',
      'trend-rows-left-out',
      'trend-unit-assumed',
    ].map((rule) => [
      rule,
      'one event that was late and one run-up are enough for a demo; golden cases show the others',
    ]),
  ),
  'earlier-result': 'a demo that holds results already could not show its first audit',
};

function channel(tag: string): ChannelResult {
  const [only, ...more] = report.channels.filter((candidate) => candidate.tag === tag);
  if (!only || more.length > 0) throw new Error(`${tag} does not stand once in the report`);
  return only;
}

function threshold(tag: string, name: string, multiplier = 1) {
  const found = channel(tag).thresholds.find(
    (candidate) => candidate.name === name && candidate.multiplier === multiplier,
  );
  if (!found) throw new Error(`${tag} has no ${name}`);
  return found;
}

describe('the demo station', () => {
  it('shows every rule of the audit but those left out for a reason', () => {
    const names = ruleNames();
    const silent = [...names].filter((name) => !rulesIn(report).has(name));
    expect(names.size).toBeGreaterThan(55);
    expect(silent.sort()).toEqual(Object.keys(leftOut).sort());
  });

  it('speaks by no rule that the search for rules does not know', () => {
    const known = ruleNames();
    const unknown = [...rulesIn(report)].filter((rule) => !known.has(rule.replace(/^multiplied-/, '')));
    expect(unknown).toEqual([]);
  });

  it('shows each reason for which a start-up multiplier can keep a threshold from acting', () => {
    for (const reason of ['above-full-scale', 'out-of-linear-reach', 'on-the-other-side-of-zero']) {
      expect(rulesIn(report)).toContain(`multiplied-${reason}`);
    }
  });

  it('is mostly sound', () => {
    const { channels, within } = report.summary;
    expect(channels).toBeGreaterThan(40);
    expect(within * 2).toBeGreaterThanOrEqual(channels);
  });

  it('tells in its remarks the story of every channel that is not within', () => {
    const told = new Set(
      machines.flatMap((machine) =>
        [...machine.channels, ...machine.settings].filter((row) => row.remarks).map((row) => row.tag),
      ),
    );
    const silent = report.channels.filter(({ verdict, tag }) => verdict !== 'within' && !told.has(tag));
    expect(silent.map(({ tag }) => tag)).toEqual([]);
  });

  it('says the same years later, and more only about the age of calibrations', () => {
    const later = auditedOn('2040-01-01');
    const findings = (of: typeof report) =>
      of.channels.flatMap(({ tag, verdict, findings }) =>
        findings.map(({ rule, sheet, row, column }) => [tag, verdict, rule, sheet, row, column].join(' ')),
      );
    const before = new Set(findings(report));
    const after = new Set(findings(later));
    // An overdue calibration needs action, and is counted there.
    expect({ ...later.summary, warnings: 0 }).toEqual({ ...report.summary, warnings: 0 });
    expect([...before].filter((finding) => !after.has(finding))).toEqual([]);
    const added = [...after].filter((finding) => !before.has(finding));
    expect(added.filter((finding) => !finding.includes('calibration-overdue'))).toEqual([]);
  });
});

// Expected values worked out by hand from the definitions of sensitivity and position; no other source.
describe('numbers of the demo station', () => {
  it('longer cable: 200/160 makes danger 25 % late, beyond the limit, 50 days later at 0.02 mil a day', () => {
    const danger = threshold('K101-1X', 'danger');
    expect(danger.verdict).toBe('late');
    expect(danger.effective).toBeCloseTo(5, 12);
    expect(danger.shiftFraction).toBeCloseTo(0.25, 12);
    expect(danger.daysLate).toBeCloseTo(50, 9);
    expect(channel('K101-1X').inputs.limit).toBe(4.8);
  });

  it('longer cable on both probes: the 1oo2 group is as late as the less late of the two', () => {
    const group = report.groups.find(({ name, threshold: of }) => name === 'K101 brg 1' && of === 'danger');
    expect(group?.effective).toBeCloseTo(800 / 161, 12);
    expect(group?.decidedBy).toEqual(['K101-1Y']);
  });

  it('thrust pair on 2oo2 with one in bypass: both good, and no trip', () => {
    expect([channel('T101-A1').verdict, channel('T101-A2').verdict]).toEqual(['within', 'within']);
    const group = report.groups.find(({ name, threshold: of }) => name === 'T101 thrust' && of === 'danger');
    expect(group).toMatchObject({ canTrip: false, effective: null });
  });

  it('zero 2.5 V off at 200 mV/mil: everything acts 12.5 mil to one side', () => {
    expect(threshold('G101-A1', 'danger').effective).toBeCloseTo(15 - 12.5, 12);
    expect(threshold('G101-A1', 'counter danger').effective).toBeCloseTo(-15 - 12.5, 12);
    expect(threshold('G101-A1', 'alert')).toMatchObject({ verdict: 'unreachable' });
  });

  it('multiplier 3 on 4.5 mil against a full scale of 10: out of reach at start-up only', () => {
    expect(threshold('T101-2X', 'danger', 3).unreachable).toEqual(['above full scale']);
    expect(threshold('T101-2X', 'danger').verdict).toBe('within');
    expect(threshold('T101-1X', 'danger', 2).verdict).toBe('within');
  });

  it('7.87 mV/µm typed as mV/mil: danger at a twenty-fifth', () => {
    expect(threshold('P301-2X', 'danger').effective).toBeCloseTo((7.5 * 7.87) / 199, 12);
  });

  it('a metric machine in its own units, a decimal comma included', () => {
    expect(channel('K201-2Y')).toMatchObject({ unit: 'µm', verdict: 'within' });
    expect(threshold('K201-2Y', 'danger').effective).toBeCloseTo((100 * 7.874) / 7.88, 12);
  });

  it('a record newer than the list: its lower sensitivity puts danger later, and it governs', () => {
    const danger = threshold('G101-LX', 'danger');
    expect(danger).toMatchObject({ verdict: 'late', governedBy: 'calibration record' });
    const [listed] = danger.lines.filter(({ by }) => by === 'listed sensitivity');
    expect(listed).toMatchObject({ effective: 4.5, verdict: 'within' });
    // 4.5·200/186 = 4.84 mil on a straight line; the record scatters by some millivolts.
    expect(danger.effective).toBeCloseTo((4.5 * 200) / 186, 1);
  });

  it('a reading that is past the alert meant: 2.4·200/161 = 2.98 of 2.8 mil', () => {
    expect(threshold('K101-1Y', 'alert').alreadyThere).toBe(true);
    expect(channel('K101-1Y').inputs.realReading).toBeCloseTo((2.4 * 200) / 161, 12);
    expect(report.attention[0]).toMatchObject({ code: 'past-alert', subject: { tag: 'K101-1Y' } });
  });

  it('a thrust bracket that had moved by 1.2 V, set back and its zero measured again', () => {
    const { state, verdict, asFound } = channel('K101-A1');
    expect({ state, verdict, was: asFound?.verdict }).toEqual({
      state: 'as left',
      verdict: 'within',
      was: 'late',
    });
    const found = asFound?.thresholds.find(({ name }) => name === 'danger');
    // 20 + (−10 + 11.2) V · 1000/200 mV/mil = 26 mil as found; 20·200/200.5 as left.
    expect(found?.effective).toBeCloseTo(26, 9);
    expect(threshold('K101-A1', 'danger').effective).toBeCloseTo((20 * 200) / 200.5, 9);
    expect(threshold('K101-A1', 'danger').change).toBe('corrected');
  });

  it('a channel made worse by its correction', () => {
    expect(channel('K101-2X')).toMatchObject({ verdict: 'late', asFound: { verdict: 'within' } });
    expect(threshold('K101-2X', 'danger').change).toBe('now late');
    expect(channel('K101-2X').findings.map(({ rule }) => rule)).toContain('danger-as-left-worse');
  });

  it('a limit that stands in the other table is used', () => {
    expect(channel('P303-1X').inputs.limit).toBe(8);
  });

  it('last night’s event: 4 mil shown is a real 5, and at 0.12 mil a minute the 0.8 mil between take 6 min 40 s', () => {
    const own = report.replay?.channels.find(({ tag }) => tag === 'K101-1X');
    const danger = own?.thresholds.find(({ name }) => name === 'danger');
    expect(danger).toMatchObject({ outcome: 'late', shouldActAt: 3.2 });
    // Readings are kept to a thousandth of a mil, which is half a second at that rate.
    expect(danger?.late).toBeCloseTo(400, 0);
    expect(danger?.acted.proven?.time.slice(0, 19)).toBe('2026-11-29T23:38:01');
  });

  it('the last run-up: 3.7 mil shown at the peak are 3.7·200/172 really, beyond the 4 of danger, which never acts', () => {
    const own = report.runUps?.channels.find(({ tag }) => tag === 'K101-2Y');
    const peak = Math.max(...(own?.points ?? []).map(({ shown }) => shown));
    expect(peak).toBeLessThan(4);
    expect(own?.peak).toBeCloseTo((peak * 200) / 172, 9);
    expect(own?.thresholds[0]).toMatchObject({ name: 'danger', acts: null, outcome: 'no action' });
    const other = report.runUps?.channels.find(({ tag }) => tag === 'K101-2X')?.thresholds[0];
    // Real 4 at 4,719 r/min, shown 4 at 4,948: read off the points of the run-up by hand.
    expect(other?.should).toBeCloseTo(4719, -1);
    expect(other?.acts).toBeCloseTo(4948, -1);
    const first = report.attention.find(({ code }) => code === 'run-up-no-action');
    expect(first).toMatchObject({ severity: 'critical', subject: { tag: 'K101-2Y', threshold: 'danger' } });
  });

  it('the sensitivities of an old year are not read, and that needs action', () => {
    expect(report.notRead).toContainEqual(
      expect.objectContaining({ what: 'column', text: 'Sensitivity 2019 (mV/mil)', severity: 'critical' }),
    );
  });
});
