import { parseColumnMap, type ColumnMap } from '../../src/audit/model/columnMap.ts';
import { describe, expect, it } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { defaultPolicy, parsePolicy } from '../../src/audit/model/policy.ts';
import { findTables } from '../../src/audit/read/tables/findTables.ts';
import { auditReducer, firstAuditState, type AuditAction } from '../../src/pane/audit/auditState.ts';
import { everything, filterChannels } from '../../src/pane/audit/channels/channelFilter.ts';
import { interimLine } from '../../src/pane/audit/channels/interimLine.ts';
import { nextCheck } from '../../src/pane/audit/channels/nextCheck.ts';
import { withMeaning, withPlace, withUnit } from '../../src/pane/audit/columns/corrections.ts';
import { understand, type TableUnderstood } from '../../src/pane/audit/columns/understood.ts';
import { readKept } from '../../src/pane/audit/kept.ts';
import { policyTexts, readPolicy } from '../../src/pane/audit/policy/policyForm.ts';
import { policyParts } from '../../src/pane/audit/policy/policyFields.ts';
import { auditRun } from '../../src/pane/audit/run/auditRun.ts';
import { exampleWorkbook } from '../../src/pane/example/exampleWorkbook.ts';
import { memoryPort } from '../../src/pane/example/memoryPort.ts';
import { book, oneChannel } from '../audit/book.ts';
import { largeWorkbook, unclearWorkbook } from './pages/workbooks.ts';

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

describe('columns as understood', () => {
  const table = (map: ColumnMap = {}, of = unclearWorkbook().workbook): TableUnderstood =>
    understand(of, map).channels!;

  it('names what both tables of a workbook are understood as', () => {
    const { channels, settings, refusal } = understand(workbook, {});
    expect(refusal).toBeNull();
    expect(channels).toMatchObject({ sheet: 'Channels', headerRow: 3 });
    expect(settings?.columns.find(({ letters }) => letters === 'D')).toMatchObject({
      header: 'Danger (mil)',
      meaning: 'danger',
      unit: 'mil',
    });
  });

  it('where a column is missing, shows the row that comes closest and what it lacks', () => {
    const { channels, refusal } = understand(unclearWorkbook().workbook, {});
    expect(refusal).toContain("no column 'measured sensitivity'");
    expect(channels?.missing).toEqual(['measured sensitivity']);
    expect(channels?.columns.find(({ letters }) => letters === 'C')).toMatchObject({
      meaning: null,
      header: 'Column7',
    });
  });

  it('a correction makes the audit find the table, and can be kept as JSON', () => {
    const before = table();
    const column = before.columns.find(({ header }) => header === 'Column7')!;
    let map = withMeaning({}, before, column, 'measured sensitivity');
    map = withUnit(map, 'channels', 'measured sensitivity', 'mV/mil');
    const kept = parseColumnMap(JSON.parse(JSON.stringify(map)));
    const found = findTables(unclearWorkbook().workbook, kept);
    expect(found.channels.columns.get('measured')).toMatchObject({ column: 3, unit: { text: 'mV/mil' } });
    // 5·200/160 by hand.
    const channel = audit(unclearWorkbook().workbook, { map: kept }).channels[0]!;
    expect(channel.thresholds.find(({ name }) => name === 'danger')?.effective).toBe(6.25);
  });

  it('leaving a column alone takes its meaning and its unit away', () => {
    const before = understand(workbook, {}).channels!;
    const limit = before.columns.find(({ meaning }) => meaning === 'limit')!;
    const map = withMeaning(withUnit({}, 'channels', 'limit', 'µm'), before, limit, null);
    expect(
      understand(workbook, map).channels?.columns.find(({ letters }) => letters === limit.letters)?.meaning,
    ).toBeNull();
    expect(map.channels?.units).toBeUndefined();
  });

  it('two columns that could be one are both open, and one can be chosen', () => {
    const clashing = book(
      [
        'Channels',
        [
          ['Tag', 'Measured sensitivity (mV/mil)', 'Reading (mil)', 'Indicated reading (mil)'],
          ['V-1', 160, 1, 2],
        ],
      ],
      [
        'Monitor',
        [
          ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
          ['V-1', 200, 3, 5],
        ],
      ],
    );
    const before = table({}, clashing);
    expect(before.clashes).toEqual(['present reading']);
    const second = before.columns.find(({ letters }) => letters === 'D')!;
    expect(second.meaning).toBeNull();
    expect(before.columns.find(({ letters }) => letters === 'C')?.meaning).toBeNull();
    const map = withMeaning({}, before, second, 'present reading');
    expect(understand(clashing, map).refusal).toBeNull();
  });

  it('a sheet and row can be said and taken back', () => {
    const map = withPlace({}, 'channels', 'Channels', 3);
    expect(map).toEqual({ channels: { sheet: 'Channels', headerRow: 3 } });
    expect(withPlace(map, 'channels', null, null)).toEqual({});
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
      expect(readPolicy(policyTexts(policy))).toEqual({ policy, complaints: {} });
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
    const { policy, complaints } = readPolicy({ ...policyTexts(defaultPolicy), [path]: text });
    expect(policy).toBeNull();
    expect(Object.keys(complaints).some((key) => key === path || key === path.replace('value', 'unit'))).toBe(
      true,
    );
  });
});

describe('channels of the list', () => {
  it('are filtered by verdict and by every word of the search, in their order', () => {
    expect(filterChannels(report.channels, everything)).toBe(report.channels);
    const late = filterChannels(report.channels, { verdict: 'late', search: '' });
    expect(late.length).toBe(report.summary.late);
    const found = filterChannels(report.channels, { verdict: null, search: ' compressor  THRUST a' });
    expect(found.map(({ tag }) => tag)).toEqual(['K1-TA']);
    expect(filterChannels(report.channels, { verdict: 'within', search: 'K1-1X' })).toEqual([]);
  });

  it('each have a next thing to check', () => {
    for (const channel of report.channels) expect(nextCheck(channel)).not.toBe('');
    const slip = audit(oneChannel({ measured: 0.2 })).channels[0]!;
    expect(nextCheck(slip)).toContain('slip of units');
    const low = audit(
      oneChannel({ measured: 160, channel: { 'Gap voltage (V)': -8, 'Reference gap voltage (V)': -10 } }),
    );
    expect(nextCheck(low.channels[0]!)).toContain('Check the extension cable length next');
    const above = audit(oneChannel({ settings: { 'Full scale (mil)': 4 } })).channels[0]!;
    expect(nextCheck(above)).toContain('full scale');
  });

  it('offer an interim setpoint only with its step, its headroom and the procedure', () => {
    const channel = audit(
      oneChannel({
        measured: 160,
        channel: { 'Present reading (mil)': 3.9 },
        settings: { 'Resolution (mil)': 0.1 },
      }),
    ).channels[0]!;
    const line = (name: string) =>
      interimLine(
        channel,
        channel.thresholds.find((one) => one.name === name)!,
      );
    // By hand: 5·160/200 = 4 mil, 0.1 above the reading of 3.9; 3·160/200 = 2.4 mil lies below it.
    expect(line('danger')).toMatch(/^Interim setpoint 4 mil \(rounded to steps of 0\.1 mil; 0\.1 mil above/u);
    expect(line('danger')).toContain('management of change');
    expect(line('alert')).toContain('it would act on entry');
    const early = audit(oneChannel({ measured: 240 })).channels[0]!;
    expect(interimLine(early, early.thresholds[0]!)).toBeNull();
  });
});
