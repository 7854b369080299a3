import { describe, expect, it } from 'vitest';
import { attentionCodes, type Attention, type Report } from '../../src/audit/model/report.ts';
import { trips } from '../../src/audit/model/threshold.ts';
import { auditCase } from './golden.ts';
import { goldenCases } from './goldenCases.ts';
import { audit } from '../../src/audit/audit.ts';
import { book } from './book.ts';

const reports: readonly (readonly [string, Report])[] = [...(await goldenCases())]
  .filter(([, { refused }]) => !refused)
  .map(([name, golden]) => [name, auditCase(golden)] as const);

function entriesOf(report: Report, code: Attention['code']): readonly Attention[] {
  return report.attention.filter((entry) => entry.code === code);
}

/** What an entry is about, for comparison. */
const about = ({ severity, subject }: Pick<Attention, 'severity' | 'subject'>): unknown => [
  severity,
  subject.machine,
  subject.group,
  subject.threshold,
  subject.multiplier,
];

describe('what needs action, over all golden cases', () => {
  it('has a code, a gravity, and the places that it is about', () => {
    for (const [name, { attention }] of reports)
      for (const { code, severity, places } of attention) {
        expect(attentionCodes).toContain(code);
        expect(['critical', 'warning']).toContain(severity);
        expect(places, `${name} ${code}`).not.toEqual([]);
        for (const { sheet, row, column } of places) {
          expect(sheet).not.toBe('');
          expect(row).toBeGreaterThanOrEqual(0);
          expect(column).toMatch(/^[A-Z]*$/);
        }
      }
  });

  it('names a channel’s rows in both tables, and its machine', () => {
    for (const [, { attention, channels }] of reports)
      for (const { code, subject, places } of attention) {
        const channel = channels.filter(({ tag }) => tag === subject.tag);
        if (channel.length !== 1 || code === 'finding') continue;
        const { source, machine } = channel[0]!;
        expect(subject.machine).toBe(machine);
        // What is asked is asked about a cell.
        if (code === 'question') continue;
        const rows = [source.channels, source.settings].flatMap((one) =>
          one ? [{ sheet: one.sheet, row: one.row, column: '' }] : [],
        );
        expect(places).toEqual(rows);
      }
  });

  it('says of a setpoint that is missing no number', () => {
    const missing = reports.flatMap(([, { attention, channels }]) =>
      attention.filter(({ subject, code }) =>
        channels
          .filter(({ tag }) => tag === subject.tag && code === 'incomplete')
          .some(({ thresholds }) =>
            thresholds.some(({ name, setpoint }) => name === subject.threshold && setpoint === null),
          ),
      ),
    );
    expect(missing.length).toBeGreaterThan(0);
    for (const { set } of missing) expect(set).toBeNull();
  });

  it('says of each thing not read where it stands, as grave as it is', () => {
    for (const [, report] of reports)
      expect(entriesOf(report, 'not-read').map(({ severity, places }) => [severity, places])).toEqual(
        report.notRead
          .toSorted(
            (one, other) => Number(one.severity > other.severity) - Number(one.severity < other.severity),
          )
          .map(({ severity, sheet, row, column }) => [severity, [{ sheet, row, column }]]),
      );
  });

  it('says of each group that can’t act, is late or beyond its limit, and of no other', () => {
    for (const [, { groups, ...report }] of reports) {
      const wanted = (those: Report['groups']): unknown[] =>
        those.map(({ machine, name, threshold, multiplier }) => [
          trips(threshold) ? 'critical' : 'warning',
          machine,
          name,
          threshold,
          multiplier,
        ]);
      const found = (code: Attention['code']): unknown[] =>
        report.attention.filter((entry) => entry.code === code).map(about);
      const able = groups.filter(({ canTrip }) => canTrip);
      const unable = groups.filter(({ canTrip }) => !canTrip);
      expect(found('group-late')).toEqual(expect.arrayContaining(wanted(able.filter(({ late }) => late))));
      expect(found('group-late')).toHaveLength(able.filter(({ late }) => late).length);
      expect(found('group-beyond-limit')).toEqual(wanted(able.filter(({ beyondLimit }) => beyondLimit)));
      const cannot = [...found('group-cannot-trip'), ...found('group-cannot-act')];
      expect(cannot).toHaveLength(unable.length);
      expect(cannot).toEqual(expect.arrayContaining(wanted(unable)));
    }
  });

  it('says of each problem that is no note what it is and where; danger without a channel is critical', () => {
    let unjudged = 0;
    for (const [name, { attention, problems }] of reports) {
      const grave = problems.filter(({ severity }) => severity !== 'note');
      for (const { rule, severity, values, sheet, row, column } of grave) {
        const found = attention.filter(
          (entry) =>
            entry.rule === rule &&
            entry.places.some(
              (at) => at.sheet === sheet && at.row === row && ['', column].includes(at.column),
            ),
        );
        if (found.length === 0) {
          // A tag of the channel list makes its channel incomplete, which is said; rows without one were not read.
          const tag = 'tag' in values ? String(values['tag']).toLowerCase() : '';
          const code = tag === '' ? 'not-read' : 'incomplete';
          const tags = attention.filter((entry) => entry.code === code).map(({ subject }) => subject.tag);
          expect(tags.map((one) => one.toLowerCase())).toContain(tag);
          continue;
        }
        expect(found, `${name} ${rule}`).toHaveLength(1);
        const [entry] = found;
        if (entry!.code === 'problem') {
          expect(entry).toMatchObject({
            severity,
            subject: { tag: '', machine: '', threshold: null, group: null },
          });
          expect(entry!.places).toEqual([{ sheet, row, column }]);
          continue;
        }
        unjudged++;
        expect(entry).toMatchObject({
          severity: 'critical',
          code: 'incomplete',
          subject: { machine: '', threshold: 'danger', multiplier: 1, group: null },
          places: [{ sheet, row, column: '' }],
        });
      }
      expect(attention.filter(({ code }) => code === 'problem').length).toBeLessThanOrEqual(grave.length);
    }
    expect(unjudged).toBeGreaterThan(0);
  });
});

describe('what was not read for want of a unit', () => {
  it('says that the unit is missing, not that the header is wrong', () => {
    const { attention } = audit(
      book(
        [
          'Channels',
          [
            ['Tag', 'Measured sensitivity'],
            ['V-1', 160],
          ],
        ],
        [
          'Monitor',
          [
            ['Tag', 'Configured sensitivity', 'Alert', 'Danger'],
            ['V-1', 200, 3, 5],
          ],
        ],
      ),
      { now: new Date('2025-03-14T08:05:00Z') },
    );
    const told = attention.filter(({ code }) => code === 'not-read');
    expect(told).not.toEqual([]);
    for (const { headline, doNext } of told) {
      expect(headline).toMatch(/, but nothing says its unit\.$/u);
      expect(doNext).toMatch(/^Write its unit in brackets in the header/u);
    }
  });
});
