import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { audit } from '../../src/audit/audit.ts';
import { AuditRefused } from '../../src/audit/model/refused.ts';
import type { Report } from '../../src/audit/model/report.ts';
import { earlierAudit } from '../../src/cli/audit/auditFiles.ts';
import { summaryText } from '../../src/cli/audit/summary.ts';
import { readCsv } from '../../src/hosts/file/read/csv.ts';
import { temporaryFolder } from './run.ts';

/**
 * Written by rules version 0.3.1, which judged each channel as it was found and kept its judgement as left apart: eight
 * channels of two pumps, as the result sheets alone and as the report (schema 1). Measured 160 of 200 mV/mil is late.
 */
const older = (name: string) => join(import.meta.dirname, 'earlier', name);
const folder = temporaryFolder();
const silent = { show: () => undefined, clear: () => undefined };
const now = new Date('2026-04-01T08:00:00Z');

const headers =
  'Tag,Machine,Kind,Measured sensitivity (mV/mil),Configured sensitivity (mV/mil),Alert (mil),Danger (mil),Full scale (mil),Measured zero voltage (V),Configured zero voltage (V),Positive direction,Bypass,Calibrated on';
const rows = [
  'N-1X,North pump,radial,160,200,3,5,10,,,,no,2026-03-14',
  'N-1Y,North pump,radial,160,200,3,5,10,,,,no,2026-03-14',
  'N-2X,North pump,radial,200,200,3,5,10,,,,no,2026-03-14',
  'N-2Y,North pump,radial,200,200,3,5,10,,,,yes,2026-03-14',
  'N-A1,North pump,axial,200,200,15,20,40,-10,-10,toward,no,2026-03-14',
  'S-1X,South pump,radial,200,200,3,12,10,,,,no,2026-03-15',
  'S-1Y,South pump,radial,200,200,3,5,10,,,,no,2026-03-15',
];
const workbook = {
  name: 'pumps.csv',
  sheets: [readCsv('pumps.csv', new TextEncoder().encode([headers, ...rows].join('\n')))],
};

function since(name: string): Report {
  return audit(workbook, { now, before: earlierAudit(older(name), { now }, silent) });
}
/** Kinds of the changes of danger, and of channels, by tag. */
function dangers({ since: compared }: Report): readonly string[] {
  return (compared?.changes ?? [])
    .filter(({ threshold, quantity }) => quantity === null && threshold !== 'alert')
    .map(({ kind, tag }) => `${tag} ${kind}`)
    .toSorted();
}

describe('--since with result sheets of older rules', () => {
  let report: Report;
  beforeAll(() => {
    report = since('results-0.3.1.xlsx');
  });

  test('reads each channel, its thresholds and its settings', () => {
    expect(report.since?.before).toMatchObject({
      from: 'result sheet',
      sheet: 'Audit results',
      input: 'pumps.csv',
      audited: '2025-04-01T08:00:00.000Z',
      channels: 8,
    });
    expect(dangers(report)).toEqual([
      'N-1X still late',
      'N-1Y newly late',
      'N-2X cured',
      'S-1X still unreachable',
      'S-1Y completed',
      'S-2X gone',
    ]);
    const changed = report.since?.changes.filter(({ kind }) => kind === 'changed sensitivity') ?? [];
    expect(changed.map(({ tag, before, now: is, unit }) => [tag, before, is, unit])).toEqual(
      expect.arrayContaining([
        ['N-1Y', 200, 160, 'mV/mil'],
        ['N-2X', 160, 200, 'mV/mil'],
      ]),
    );
  });

  test('says what can’t be compared: older rules, as found alone, and what the sheet does not show', () => {
    const said = report.since?.remarks.map(({ message }) => message).join('\n') ?? '';
    expect(said).toMatch(/by rules version 0\.3\.1, this one by \d+\.\d+\.\d+: verdicts may differ/u);
    expect(said).toContain('Its results show each channel as it was found then');
    expect(said).toMatch(/do not show .*bypass/u);
    // The sheet does not show the bypass, so that is no change.
    expect(report.since?.changes.filter(({ quantity }) => quantity === 'bypass')).toEqual([]);
  });

  test('tells of it at the terminal in the words of today', () => {
    const text = summaryText(report).replaceAll(/\s+/gu, ' ');
    expect(text).toContain("Since pumps.csv (sheet 'Audit results', 2025-04-01)");
    expect(text).toContain(
      'now late N-1Y (North pump): Danger is late: really trips at 6.25 mil; it was OK at 5 mil before.',
    );
    expect(text).toMatch(/still cannot act S-1X \(South pump\): Danger cannot act, as before/u);
    expect(text).toContain('2 corrected');
  });
});

describe('--since with a report of schema 1', () => {
  test('reads each channel as it stood once it was left', () => {
    const report = since('report-0.3.1.json');
    expect(report.since?.before).toMatchObject({ from: 'report', sheet: null, channels: 8 });
    expect(dangers(report)).toEqual([
      'N-1X still late',
      'N-1Y newly late',
      'N-2Y cured',
      'S-1X still unreachable',
      'S-1Y completed',
      'S-2X gone',
    ]);
    // A report holds the bypass, unlike a sheet.
    expect(report.since?.changes.filter(({ quantity }) => quantity === 'bypass')).toMatchObject([
      { tag: 'N-2Y', before: 'no', now: 'yes' },
    ]);
    const said = report.since?.remarks.map(({ message }) => message) ?? [];
    expect(said).toEqual([
      expect.stringMatching(/do not show monitor gain, .*, so these were not compared/u),
      expect.stringMatching(/version 0\.3\.1, this one by .*: verdicts may differ/u),
    ]);
  });

  test('refuses what is no report, naming the file and the entry', () => {
    const path = join(folder, 'other.json');
    writeFileSync(path, '{"schema": "tripdrift-report/1", "version": 3}');
    expect(() => earlierAudit(path, { now }, silent)).toThrow(AuditRefused);
    expect(() => earlierAudit(path, { now }, silent)).toThrow(/other\.json: This is no report .* version/u);
  });
});
