import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import type { Attention } from '../../src/audit/model/report.ts';
import { defaultPolicy, parsePolicy } from '../../src/audit/model/policy.ts';
import { auditReducer, firstAuditState, type AuditAction } from '../../src/pane/audit/auditState.ts';
import { noFilter, filterChannels } from '../../src/pane/audit/channels/channelFilter.ts';
import { readKept } from '../../src/pane/audit/kept.ts';
import { policyTexts, readPolicy } from '../../src/pane/audit/policy/policyForm.ts';
import { policyParts } from '../../src/pane/audit/policy/policyFields.ts';
import { bySubject } from '../../src/pane/audit/results/bySubject.ts';
import { auditRun } from '../../src/pane/audit/run/auditRun.ts';
import { exampleWorkbook } from '../../src/pane/example/exampleWorkbook.ts';
import { memoryPort } from '../../src/pane/example/memoryPort.ts';
import { oneChannel } from '../audit/book.ts';
import { largeWorkbook } from './pages/workbooks.ts';

const { workbook } = exampleWorkbook;
const report = audit(workbook, { now: new Date('2026-11-25T12:00:00Z') });

function after(...actions: AuditAction[]) {
  return actions.reduce(auditReducer, firstAuditState);
}

describe('state of the audit view', () => {
  const audited: AuditAction[] = [
    { type: 'started' },
    { type: 'read', workbook },
    { type: 'audited', report },
  ];

  it('keeps the last result when the next run fails or is cancelled', () => {
    const refused = after(...audited, { type: 'started' }, { type: 'refused', message: 'No sheet.' });
    expect(refused).toMatchObject({ report, work: null, refusal: 'No sheet.' });
    const cancelled = after(...audited, { type: 'started' }, { type: 'cancelled' });
    expect(cancelled).toMatchObject({ report, work: null, cancelled: true });
  });

  it('is stale after a change of the workbook, until it is audited again', () => {
    const stale = after(...audited, { type: 'workbook changed' });
    expect(stale.stale).toBe(true);
    expect(audited.reduce(auditReducer, stale).stale).toBe(false);
  });

  it('is stale at once where the workbook changed while it was audited', () => {
    const [started, read, done] = audited as [AuditAction, AuditAction, AuditAction];
    expect(after(started, read, { type: 'workbook changed' }, done).stale).toBe(true);
  });

  it('is not stale where there was nothing to go stale', () => {
    expect(after({ type: 'workbook changed' }).stale).toBe(false);
  });

  it('says that a result is older than the columns or the policy', () => {
    expect(after(...audited, { type: 'map', map: {} }).unsettled).toBe(true);
    expect(after(...audited, { type: 'policy', policy: defaultPolicy }).unsettled).toBe(true);
    expect(after({ type: 'policy', policy: defaultPolicy }).unsettled).toBe(false);
  });

  it('shows no progress of a run that has ended', () => {
    expect(after(...audited, { type: 'progress', work: { step: 'auditing', part: 1 } }).work).toBeNull();
  });
});

describe('audit in slices', () => {
  it('comes to the same result as the audit in one go', async () => {
    const now = new Date('2026-11-25T12:00:00Z');
    const parts: number[] = [];
    const sliced = await auditRun(workbook, { now }, (part) => parts.push(part), { cancelled: false });
    expect(sliced).toEqual(report);
    expect(parts.at(-1)).toBe(1);
  });

  it('ends between two slices once it is cancelled', async () => {
    const cancel = { cancelled: false };
    const large = largeWorkbook().workbook;
    const result = await auditRun(large, {}, () => (cancel.cancelled = true), cancel);
    expect(result).toBeNull();
  });
});

describe('what is kept in the workbook', () => {
  it('is read back, and left out with a word where it can not be used', async () => {
    const port = memoryPort(exampleWorkbook);
    await port.writeSetting('tripdrift.columns', { channels: { sheet: 'Channels' } });
    await port.writeSetting('tripdrift.policy', { tolerance: 7 });
    const kept = await readKept(port);
    expect(kept.map).toEqual({ channels: { sheet: 'Channels' } });
    expect(kept.policy).toEqual(defaultPolicy);
    expect(kept.remarks).toEqual([expect.stringContaining('tolerance')]);
    await port.writeSetting('tripdrift.columns', { tables: 'none' });
    const [answers] = (await readKept(port)).remarks;
    expect(answers).toMatch(/answers kept in this workbook can’t be read.*asked again/);
    expect(answers).not.toMatch(/column map|JSON/i);
  });
});

describe('policy form', () => {
  it('gives back the policy it was filled with', () => {
    const other = parsePolicy({
      tolerance: 0.075,
      rule: 'simple',
      delays: { alert: 2 },
      ratedSensitivity: { axial: null },
    });
    for (const policy of [defaultPolicy, other]) {
      expect(readPolicy(policyTexts(policy))).toEqual({ policy, faults: {} });
    }
  });

  it('has a field for every entry of the policy', () => {
    const paths = (value: unknown, path: string): string[] =>
      typeof value === 'object' && value !== null
        ? Object.entries(value).flatMap(([key, one]) => paths(one, path === '' ? key : `${path}.${key}`))
        : [path];
    const fields = policyParts.flatMap((part) => part.fields.map((field) => field.path));
    for (const path of paths(defaultPolicy, '')) {
      if (path === 'rule') continue;
      expect(fields.some((field) => field === path || field.startsWith(`${path}.`))).toBe(true);
    }
  });

  it.each([
    ['tolerance', '0'],
    ['tolerance', '100'],
    ['tolerance', ''],
    ['tolerance', 'five'],
    ['coverage', '11'],
    ['coverage', '2 %'],
    ['calibrationIntervalDays', '-1'],
    ['minimumLinearRange.unit', 'mV'],
    ['ratedSensitivity.radial.unit', 'mil'],
    ['ratedSensitivity.loop.value', '4'],
    ['linearVolts.far', '-1'],
    ['delays.danger', '-0.5'],
  ])('complains at %s about “%s” and gives no policy', (path, text) => {
    const { policy, faults } = readPolicy({ ...policyTexts(defaultPolicy), [path]: text });
    expect(policy).toBeNull();
    expect(Object.keys(faults).some((key) => key === path || key === path.replace('value', 'unit'))).toBe(
      true,
    );
  });
});

describe('channels of the list', () => {
  it('are filtered by verdict and by every word of the search, in their order', () => {
    expect(filterChannels(report.channels, noFilter)).toBe(report.channels);
    const late = filterChannels(report.channels, { standing: 'late', search: '' });
    expect(late.length).toBe(report.summary.late);
    const found = filterChannels(report.channels, { standing: null, search: ' compressor  THRUST a' });
    expect(found.map(({ tag }) => tag)).toEqual(['K1-TA']);
    expect(filterChannels(report.channels, { standing: 'within', search: 'K1-1X' })).toEqual([]);
  });

  it('in bypass are listed apart, never among those that are OK', () => {
    const bypassed = audit(oneChannel({ settings: { Bypass: 'yes' } }));
    expect(bypassed.summary).toMatchObject({ within: 0, inBypass: 1 });
    expect(filterChannels(bypassed.channels, { standing: 'within', search: '' })).toEqual([]);
    expect(filterChannels(bypassed.channels, { standing: 'in bypass', search: '' })).toHaveLength(1);
  });
});

describe('what needs action, by what it is about', () => {
  it('is found with each channel and group in the order of the whole list, none left over', () => {
    const { attention, channels, groups } = report;
    const subjects = bySubject(attention);
    const found = [
      ...channels.flatMap((channel) => subjects.ofChannel(channel)),
      ...groups.flatMap((group) => subjects.ofGroup(group)),
    ];
    const ofNone = attention.filter(({ subject }) => subject.tag === '' && subject.group === null);
    expect(found.length + ofNone.length).toBe(attention.length);
    expect(new Set([...found, ...ofNone]).size).toBe(attention.length);
    const [first] = attention;
    const worst = channels.find(({ tag }) => tag === first!.subject.tag)!;
    expect(subjects.ofChannel(worst)[0]).toBe(first);
  });

  it('keeps groups of the same name on two machines apart', () => {
    const entry = (machine: string): Attention => ({
      ...report.attention[0]!,
      subject: { machine, tag: '', group: 'A', threshold: 'danger', multiplier: 1 },
    });
    const subjects = bySubject([entry('M-1'), entry('M-2')]);
    const group = {
      ...report.groups[0]!,
      machine: 'M-2',
      name: 'A',
      threshold: 'danger',
      multiplier: 1,
    } as const;
    expect(subjects.ofGroup(group)).toHaveLength(1);
    expect(subjects.placeOfGroup(group)).toBe(1);
    expect(subjects.ofGroup({ ...group, multiplier: 3 })).toEqual([]);
  });
});
