import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isCritical } from '../../src/audit/advise/summary.ts';
import type { Report } from '../../src/audit/model/report.ts';
import { summaryText } from '../../src/cli/audit/summary.ts';
import { plain } from '../../src/cli/terminal.ts';
import { criticalSubjects } from '../audit/oracle/truth.ts';
import { mutatedBook, randomBook } from '../audit/stations/randomBook.ts';
import { reportOf } from '../audit/truthOfReport.ts';

const clean = 'Nothing needs action.';
const flat = (text: string) => text.replaceAll(/\s+/gu, ' ');
const shown = (report: Report, details = false) => flat(summaryText(report, { details }));
const seed = Number(process.env['SEED'] ?? 20_260_101);

/** The critical entries of the oracle's truth, by what people call them. */
function namesOf(subjects: readonly string[]): readonly string[] {
  return subjects.flatMap((subject) => {
    const [, of = '', ...more] = subject.split(' / ');
    return more.length > 0 ? [of.replace(/^group /u, '')] : of === '' ? [] : [of];
  });
}

describe('the terminal, for any workbook', () => {
  it('shows each critical entry, or counts it among those that --details lists', () => {
    const property = fc.property(fc.gen(), (gen) => {
      const report = reportOf(randomBook(gen));
      if (!report) return;
      const [short, long] = [shown(report), shown(report, true)];
      const critical = report.attention.filter(({ severity }) => severity === 'critical');
      for (const { headline, doNext } of report.attention) {
        expect(long).toContain(flat(plain(headline, 600)));
        expect(long).toContain(flat(plain(doNext, 600)));
      }
      const hidden = critical.filter(({ headline }) => !short.includes(flat(plain(headline, 600))));
      const told = [...short.matchAll(/and (\d+) more(?:, (\d+) of them critical)?: --details/gu)];
      const counted = told.reduce((sum, [, , count = '0']) => sum + Number(count), 0);
      expect(counted).toBeGreaterThanOrEqual(hidden.length);
    });
    fc.assert(property, { seed, numRuns: 60 });
  });

  it('says that nothing needs action only where nothing does and all was read', () => {
    const property = fc.property(fc.gen(), (gen) => {
      const report = reportOf(randomBook(gen));
      if (!report) return;
      const settled = { ...report, attention: [], notRead: [] };
      const unread = { ...report, attention: [] };
      for (const one of [report, settled, unread]) {
        const nothing = one.attention.length === 0 && one.notRead.length === 0;
        for (const details of [false, true]) expect(shown(one, details).includes(clean)).toBe(nothing);
      }
    });
    fc.assert(property, { seed, numRuns: 60 });
  });

  it('names the channel whose danger was spoilt, is critical, and says so by the exit code', () => {
    const property = fc.property(fc.gen(), (gen) => {
      const mutated = mutatedBook(gen);
      const report = mutated && !mutated.closeCall ? reportOf(mutated) : undefined;
      if (!mutated || !report) return;
      expect(isCritical(report), mutated.mutation).toBe(true);
      const text = shown(report, true);
      for (const name of namesOf(criticalSubjects(mutated.truth))) {
        expect(text.toLowerCase(), mutated.mutation).toContain(name.toLowerCase());
      }
      expect(shown(report)).not.toContain(clean);
    });
    fc.assert(property, { seed, numRuns: 60 });
  });
});
